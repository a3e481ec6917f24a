package saddlebar.artwork.drawing;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Objects;
import java.util.Optional;

/** One shape, filled or stroked or both. */
public final class Figure implements Item {
    /** Strokes are made at this many units a mm: the platform's stroker takes its units for device pixels and is as fine as those. */
    private static final double STROKE_UNITS_PER_MM = 100;

    private final Origin origin;
    private final Shape outline;
    private final AffineTransform toMm;
    private final Optional<Tint> fill;
    private final Optional<Line> line;
    private final boolean lineFirst;
    private final boolean letters;
    private final Rectangle2D boundsMm;
    private volatile Path2D fillMm;
    private volatile Shape strokeMm;

    /**
     * @param outline   in units of its own, with its fill rule
     * @param toMm      from those units to mm of the page
     * @param lineFirst whether the stroke is painted before the fill
     * @param letters   whether this was text: it is painted, but nobody cuts glass along the letters of a label
     */
    public Figure(Origin origin, Shape outline, AffineTransform toMm, Optional<Tint> fill, Optional<Line> line, boolean lineFirst,
            boolean letters) {
        this.origin = Objects.requireNonNull(origin, "origin");
        this.outline = outline;
        this.toMm = new AffineTransform(toMm);
        this.fill = fill;
        this.line = line;
        this.lineFirst = lineFirst;
        this.letters = letters;
        this.boundsMm = bounds();
    }

    public Origin origin() {
        return origin;
    }

    Shape outline() {
        return outline;
    }

    AffineTransform toMm() {
        return toMm;
    }

    public Optional<Tint> fill() {
        return fill;
    }

    public Optional<Line> line() {
        return line;
    }

    boolean lineFirst() {
        return lineFirst;
    }

    boolean letters() {
        return letters;
    }

    @Override
    public Rectangle2D boundsMm() {
        return boundsMm;
    }

    /** The outline in mm of the page. Not to be changed. */
    Path2D fillMm() {
        Path2D path = fillMm;
        if (path == null) {
            path = new Path2D.Double(outline, toMm);
            fillMm = path;
        }
        return path;
    }

    /** The area that the stroke covers, in mm of the page. Not to be changed. */
    Shape strokeMm() {
        Shape path = strokeMm;
        if (path == null) {
            path = stroked(line.orElseThrow());
            strokeMm = path;
        }
        return path;
    }

    private Shape stroked(Line drawn) {
        Shape shape = drawn.fixedWidth() ? fillMm() : outline;
        AffineTransform placed = drawn.fixedWidth() ? new AffineTransform() : new AffineTransform(toMm);
        double perMm = drawn.fixedWidth() ? 1 : Math.sqrt(Math.abs(toMm.getDeterminant()));
        double units = perMm * STROKE_UNITS_PER_MM;
        if (!(units > 0)) {
            return new Path2D.Double(); // squeezed flat: nothing shows
        }
        double penUnits = drawn.fixedWidth() ? drawn.penMm() * STROKE_UNITS_PER_MM : units;
        Shape large = AffineTransform.getScaleInstance(units, units).createTransformedShape(shape);
        placed.scale(1 / units, 1 / units);
        return placed.createTransformedShape(enlarged(drawn.pen(), penUnits).createStrokedShape(large));
    }

    private static BasicStroke enlarged(BasicStroke pen, double scale) {
        float[] dashes = pen.getDashArray();
        if (dashes != null) {
            for (int i = 0; i < dashes.length; i++) {
                dashes[i] *= (float) scale;
            }
        }
        return new BasicStroke((float) (pen.getLineWidth() * scale), pen.getEndCap(), pen.getLineJoin(), pen.getMiterLimit(), dashes,
                (float) (pen.getDashPhase() * scale));
    }

    private Rectangle2D bounds() {
        Rectangle2D box = outline.getBounds2D();
        Rectangle2D around = toMm.createTransformedShape(box).getBounds2D();
        if (line.isPresent()) {
            Line drawn = line.get();
            double scale = drawn.fixedWidth()
                    ? drawn.penMm()
                    : Math.sqrt(toMm.getScaleX() * toMm.getScaleX() + toMm.getShearX() * toMm.getShearX() + toMm.getScaleY() * toMm.getScaleY()
                            + toMm.getShearY() * toMm.getShearY()); // Frobenius norm, at least the greatest stretch
            double reach = drawn.pen().getLineJoin() == BasicStroke.JOIN_MITER ? Math.max(drawn.pen().getMiterLimit(), 1.5) : 1.5; // square cap: 1.41
            double out = drawn.pen().getLineWidth() / 2 * reach * scale;
            around.setRect(around.getX() - out, around.getY() - out, around.getWidth() + 2 * out, around.getHeight() + 2 * out);
        }
        return around;
    }
}
