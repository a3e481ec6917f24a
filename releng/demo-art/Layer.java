import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * One painted layer: filled shapes, kept inside a region. {@link #within} and {@link #outside} give a layer that paints onto the same
 * sheet through a mask.
 */
final class Layer {
    /** A share of the way along a gradient and how dense the paint is there, 0 to 1. */
    private static final String STOP = "<stop offset=\"%s\" stop-color=\"#000\" stop-opacity=\"%s\"/>";

    private static final double FINE_MM = 0.01;
    /** Soft shading needs no finer outline. */
    private static final double SOFT_MM = 0.1;
    private static final double CRUMB_MM = 2;

    private final String key;
    private final List<String> marks;
    private final List<String> gradients;
    private final Area mask;
    private final double strength;

    /** @param strength share of every density that is laid on, so that a whole layer can be made paler */
    Layer(String key, Shape mask, double strength) {
        this(key, new ArrayList<>(), new ArrayList<>(), new Area(mask), strength);
    }

    private Layer(String key, List<String> marks, List<String> gradients, Area mask, double strength) {
        this.strength = strength;
        this.key = key;
        this.marks = marks;
        this.gradients = gradients;
        this.mask = mask;
    }

    Layer within(Shape region) {
        Area narrowed = new Area(mask);
        narrowed.intersect(new Area(region));
        return new Layer(key, marks, gradients, narrowed, strength);
    }

    Layer outside(Shape region) {
        Area narrowed = new Area(mask);
        narrowed.subtract(new Area(region));
        return new Layer(key, marks, gradients, narrowed, strength);
    }

    Area mask() {
        return new Area(mask);
    }

    List<String> marks() {
        return marks;
    }

    List<String> gradients() {
        return gradients;
    }

    void solid(Shape shape) {
        mark(shape, "");
    }

    /** The same shape in many places: defined once, then used. */
    void repeated(String id, Shape shape, List<java.awt.geom.AffineTransform> places) {
        gradients.add("<path id=\"" + id + "\" d=\"" + data(shape.getPathIterator(null)) + "\"/>");
        for (java.awt.geom.AffineTransform t : places) {
            marks.add("<use xlink:href=\"#" + id + "\" transform=\"matrix(" + SvgNumber.ofMillionths(t.getScaleX()) + " " + SvgNumber.ofMillionths(t.getShearY()) + " "
                    + SvgNumber.ofMillionths(t.getShearX()) + " " + SvgNumber.ofMillionths(t.getScaleY()) + " " + SvgNumber.of(t.getTranslateX()) + " "
                    + SvgNumber.of(t.getTranslateY()) + ")\"/>");
        }
    }

    void stroke(double[] widths, double... points) {
        solid(Brush.stroke(Curve.through(points), widths));
    }

    void stroke(double[] widths, Curve line) {
        solid(Brush.stroke(line, widths));
    }

    /** An even tone. */
    void flat(Shape shape, double density) {
        mark(shape, " opacity=\"" + SvgNumber.ofThousandths(density * strength) + "\"");
    }

    /** A tone that changes along the way from (x1, y1) to (x2, y2); stops are share, density, share, density ... */
    void linear(Shape shape, double x1, double y1, double x2, double y2, double... stops) {
        String id = key + "-" + (gradients.size() + 1);
        gradients.add("<linearGradient id=\"" + id + "\" gradientUnits=\"userSpaceOnUse\" x1=\"" + SvgNumber.of(x1) + "\" y1=\"" + SvgNumber.of(y1)
                + "\" x2=\"" + SvgNumber.of(x2) + "\" y2=\"" + SvgNumber.of(y2) + "\">" + stops(stops, strength) + "</linearGradient>");
        mark(shape, " fill=\"url(#" + id + ")\"");
    }

    /** A tone that changes from the middle of an ellipse to its rim. */
    void radial(Shape shape, double cx, double cy, double rx, double ry, double turnDeg, double... stops) {
        String id = key + "-" + (gradients.size() + 1);
        double c = StrictMath.cos(StrictMath.toRadians(turnDeg));
        double s = StrictMath.sin(StrictMath.toRadians(turnDeg));
        gradients.add("<radialGradient id=\"" + id + "\" gradientUnits=\"userSpaceOnUse\" cx=\"0\" cy=\"0\" r=\"1\" gradientTransform=\"matrix("
                + SvgNumber.of(c * rx) + " " + SvgNumber.of(s * rx) + " " + SvgNumber.of(-s * ry) + " " + SvgNumber.of(c * ry) + " "
                + SvgNumber.of(cx) + " " + SvgNumber.of(cy) + ")\">" + stops(stops, strength) + "</radialGradient>");
        mark(shape, " fill=\"url(#" + id + ")\"");
    }

    /** A soft breath of paint: densest in the middle, gone at the rim. */
    void breath(double cx, double cy, double rx, double ry, double turnDeg, double density) {
        radial(Curve.ellipse(cx, cy, rx, ry, turnDeg).path(), cx, cy, rx, ry, turnDeg, 0, density, 0.35, density * 0.78, 0.7, density * 0.26, 1, 0);
    }

    private static String stops(double[] stops, double strength) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < stops.length; i += 2) {
            out.append(String.format(STOP, SvgNumber.of(stops[i]), SvgNumber.ofThousandths(stops[i + 1] * strength)));
        }
        return out.toString();
    }

    private void mark(Shape shape, String paint) {
        double unit = key.equals("matt") ? SOFT_MM : FINE_MM;
        String data;
        if (mask.contains(shape.getBounds2D()) || inside(shape)) {
            data = data(shape.getPathIterator(null), unit);
        } else {
            Area seen = new Area(shape);
            seen.intersect(mask);
            Rectangle2D box = seen.getBounds2D();
            // what is left of a stroke at the edge of its region must still be a mark, not a crumb
            data = Math.max(box.getWidth(), box.getHeight()) < CRUMB_MM ? "" : data(seen.getPathIterator(null), unit);
        }
        if (!data.isEmpty()) {
            marks.add("<path" + paint + " d=\"" + data + "\"/>");
        }
    }

    private boolean inside(Shape shape) {
        Area over = new Area(shape);
        over.subtract(mask);
        return over.isEmpty();
    }

    static String data(PathIterator it) {
        return data(it, FINE_MM);
    }

    /** Path data with relative commands, rounded to the unit given without the rounding adding up. */
    static String data(PathIterator it, double unitMm) {
        StringBuilder out = new StringBuilder();
        double[] c = new double[6];
        long x = 0;
        long y = 0;
        long startX = 0;
        long startY = 0;
        char last = ' ';
        for (; !it.isDone(); it.next()) {
            int kind = it.currentSegment(c);
            int pairs = new int[] {1, 1, 2, 3, 0}[kind];
            char command = "MlqcZ".charAt(kind);
            if (kind == PathIterator.SEG_CLOSE) {
                out.append('z');
                last = 'z';
                x = startX;
                y = startY;
                continue;
            }
            StringBuilder step = new StringBuilder();
            boolean still = true;
            for (int i = 0; i < pairs; i++) {
                long px = hundredths(c[2 * i], unitMm);
                long py = hundredths(c[2 * i + 1], unitMm);
                boolean absolute = kind == PathIterator.SEG_MOVETO;
                append(step, absolute ? px : px - x);
                append(step, absolute ? py : py - y);
                still &= px == x && py == y;
            }
            if (still && kind != PathIterator.SEG_MOVETO) {
                continue;
            }
            x = hundredths(c[2 * pairs - 2], unitMm);
            y = hundredths(c[2 * pairs - 1], unitMm);
            if (kind == PathIterator.SEG_MOVETO) {
                startX = x;
                startY = y;
            }
            if (command != last) {
                out.append(command);
                out.append(step.charAt(0) == ' ' ? step.substring(1) : step);
            } else {
                out.append(step);
            }
            last = command;
        }
        return out.toString();
    }

    private static long hundredths(double mm, double unitMm) {
        return Math.round(mm / unitMm) * Math.round(unitMm * 100);
    }

    private static void append(StringBuilder out, long hundredths) {
        String text = SvgNumber.ofHundredths(hundredths);
        if (text.charAt(0) != '-') {
            out.append(' ');
        }
        out.append(text);
    }
}
