import java.awt.geom.Area;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A round hand drawn for these windows: each letter is a few pen strokes, written with a broad nib held at one angle. Letters are in units
 * of the x-height, base line at 0, up is positive.
 */
final class Uncial {
    private record Letter(double width, List<Curve> strokes) {
    }

    private static final double NIB = 0.21;
    private static final double HAIR = 0.05;
    private static final double PEN_DEG = 24;
    private static final double GAP = 0.17;
    private static final double SPACE = 0.5;

    private final Map<Character, Letter> letters = new LinkedHashMap<>();

    Uncial() {
        add('a', 0.78, Curve.through(0.16, 0.88, 0.26, 0.92, 0.38, 0.76, 0.58, 0.3, 0.68, 0.1, 0.78, 0.07),
                Curve.through(0.48, 0.5, 0.24, 0.46, 0.08, 0.26, 0.16, 0.08, 0.36, 0.1, 0.58, 0.3));
        add('c', 0.72, Curve.through(0.7, 0.8, 0.46, 0.92, 0.18, 0.78, 0.1, 0.46, 0.22, 0.16, 0.46, 0.07, 0.72, 0.22));
        add('d', 0.86, Curve.through(0.06, 1.34, 0.3, 1.26, 0.62, 0.98, 0.8, 0.62, 0.76, 0.26, 0.54, 0.08, 0.26, 0.12, 0.1, 0.42, 0.22, 0.76, 0.48, 0.86, 0.7, 0.74));
        add('e', 0.76, Curve.through(0.11, 0.46, 0.4, 0.49, 0.72, 0.56, 0.66, 0.82, 0.44, 0.92, 0.18, 0.78, 0.1, 0.46, 0.22, 0.16, 0.46, 0.07, 0.76, 0.24));
        add('g', 0.78, Curve.through(0.72, 0.82, 0.46, 0.92, 0.18, 0.78, 0.1, 0.48, 0.22, 0.2, 0.44, 0.14, 0.64, 0.28, 0.7, 0.48),
                Curve.through(0.7, 0.5, 0.72, 0.1, 0.58, -0.24, 0.3, -0.34, 0.06, -0.26));
        add('h', 0.82, stem(0.13, 1.36), Curve.through(0.13, 0.64, 0.34, 0.86, 0.58, 0.86, 0.72, 0.62, 0.72, 0.3, 0.68, 0.02));
        add('i', 0.27, stem(0.13, 0.93));
        add('n', 0.84, stem(0.13, 0.93), Curve.through(0.13, 0.64, 0.34, 0.88, 0.58, 0.88, 0.71, 0.64, 0.71, 0.34, 0.71, 0.06, 0.84, 0.05));
        add('o', 0.86, Curve.loop(0.43, 0.92, 0.16, 0.78, 0.08, 0.48, 0.18, 0.18, 0.43, 0.07, 0.7, 0.2, 0.79, 0.5, 0.7, 0.8));
        add('p', 0.82, Curve.through(0.13, 0.93, 0.13, 0.3, 0.12, -0.36), Curve.through(0.13, 0.7, 0.34, 0.9, 0.6, 0.86, 0.74, 0.54, 0.64, 0.2, 0.42, 0.07, 0.16, 0.16));
        add('r', 0.62, stem(0.13, 0.93), Curve.through(0.13, 0.6, 0.3, 0.86, 0.5, 0.88, 0.64, 0.78));
        add('s', 0.62, Curve.through(0.6, 0.8, 0.38, 0.92, 0.15, 0.78, 0.2, 0.6, 0.48, 0.42, 0.58, 0.24, 0.4, 0.08, 0.06, 0.18));
        add('t', 0.7, Curve.through(0.02, 0.86, 0.2, 0.92, 0.44, 0.88, 0.7, 0.93), Curve.through(0.34, 0.88, 0.26, 0.5, 0.3, 0.18, 0.48, 0.07, 0.7, 0.2));
        add('u', 0.86, Curve.through(0.04, 0.9, 0.14, 0.86, 0.13, 0.4, 0.26, 0.1, 0.5, 0.1, 0.72, 0.36), Curve.through(0.73, 0.94, 0.73, 0.5, 0.74, 0.06, 0.86, 0.05));
        add('v', 0.76, Curve.through(0.04, 0.92, 0.16, 0.86, 0.28, 0.4, 0.4, 0.06), Curve.through(0.4, 0.06, 0.62, 0.42, 0.7, 0.72, 0.62, 0.93));
        add('y', 0.78, Curve.through(0.04, 0.92, 0.16, 0.86, 0.28, 0.44, 0.44, 0.12), Curve.through(0.74, 0.93, 0.62, 0.5, 0.42, 0, 0.22, -0.32, 0.02, -0.34));
    }

    private void add(char letter, double width, Curve... strokes) {
        letters.put(letter, new Letter(width, List.of(strokes)));
    }

    private static Curve stem(double x, double top) {
        return Curve.through(x - 0.04, top - 0.02, x, top - 0.3, x, 0.3, x + 0.01, 0.04);
    }

    double width(String text, double xHeightMm) {
        double width = -GAP;
        for (char c : text.toCharArray()) {
            width += c == ' ' ? SPACE : letters.get(c).width + GAP;
        }
        return width * xHeightMm;
    }

    /** Writes a line from x on the base line y. */
    void write(Layer layer, String text, double x, double y, double xHeightMm) {
        double at = x;
        for (char c : text.toCharArray()) {
            if (c == ' ') {
                at += SPACE * xHeightMm;
                continue;
            }
            Letter letter = letters.get(c);
            Area ink = new Area();
            for (Curve stroke : letter.strokes) {
                ink.add(Brush.pen(stroke.map(xHeightMm, 0, 0, -xHeightMm, at, y), NIB * xHeightMm, PEN_DEG, HAIR * xHeightMm));
            }
            layer.solid(ink);
            at += (letter.width + GAP) * xHeightMm;
        }
    }
}
