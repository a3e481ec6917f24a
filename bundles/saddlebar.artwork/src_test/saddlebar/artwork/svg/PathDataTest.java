package saddlebar.artwork.svg;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import saddlebar.artwork.drawing.CurveSteps;

/** The path grammar of SVG 1.1, second edition (2011), 8.3, with the examples of that text, and the arcs of its appendix F.6. */
class PathDataTest {
    private static String segments(String data) {
        return segments(PathData.parse(data, Path2D.WIND_NON_ZERO).path());
    }

    private static String segments(Path2D path) {
        StringBuilder text = new StringBuilder();
        double[] c = new double[6];
        for (PathIterator it = path.getPathIterator(null); !it.isDone(); it.next()) {
            int kind = it.currentSegment(c);
            text.append("MLQCZ".charAt(kind));
            int n = kind == PathIterator.SEG_CLOSE ? 0 : kind == PathIterator.SEG_CUBICTO ? 6 : kind == PathIterator.SEG_QUADTO ? 4 : 2;
            for (int i = 0; i < n; i++) {
                text.append(i == 0 ? "" : " ").append(Math.rint(c[i] * 1000) / 1000);
            }
        }
        return text.toString().replace(".0", "");
    }

    /** What may run together (8.3.9: "the superfluous white space and separators can be eliminated"). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "M.5.5 1-2                           | M0.5 0.5L1 -2",
            "M 100 100 L 200 200                 | M100 100L200 200",
            "M100 100L200 200                    | M100 100L200 200",
            "M 100 200 L 200 100 L -100 -200     | M100 200L200 100L-100 -200",
            "M 100 200 L 200 100 -100 -200       | M100 200L200 100L-100 -200",
            "M100-200                            | M100 -200",
            "m 1 2 3 4                           | M1 2L4 6",
            "M1 2 3 4 5 6                        | M1 2L3 4L5 6",
            "M1e1-1E+1L5e-1.25                   | M10 -10L0.5 0.25",
            "M0 0h5v5h-5z                        | M0 0L5 0L5 5L0 5Z",
            "M0,0 H 3 4 V 5 6                    | M0 0L3 0L4 0L4 5L4 6",
            "M1 1zl2 2                           | M1 1ZM1 1L3 3",
            "M0 0Q1 1 2 0T4 0                    | M0 0Q1 1 2 0Q3 -1 4 0",
            "M0 0T4 0                            | M0 0Q0 0 4 0",
            "M0 0C0 1 1 2 2 2S4 1 4 0            | M0 0C0 1 1 2 2 2C3 2 4 1 4 0",
            "M1 1S4 1 4 0                        | M1 1C1 1 4 1 4 0",
            "M0 0a0 5 0 0 1 3 4                  | M0 0L3 4",
            "M0 0a5 5 0 0 1 0 0L1 1              | M0 0L1 1",
            "M0 0 L 1 1 M 5 5                    | M0 0L1 1M5 5",
    })
    void grammar(String data, String expected) {
        assertEquals(expected, segments(data));
        assertTrue(PathData.parse(data, Path2D.WIND_NON_ZERO).fault().isEmpty());
    }

    /** F.2: "the path shall be rendered up to (not including) the command containing the first error". */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "M0 0L1 1L2          | M0 0L1 1    | 11",
            "M0 0L1 1X5 5        | M0 0L1 1    | 9",
            "M0 0 L1 1,L2 2      | M0 0L1 1    | 11",
            "L5 5                | ''          | 1",
            "M0 0C1 1 2 2 3      | M0 0        | 15",
            "M0 0L1 1A5 5 0 2 1 9 9 | M0 0L1 1 | 16",
            "M10 10 20           | M10 10      | 10",
            "M0 0z 5             | M0 0Z       | 7",
    })
    void drawnUpToTheError(String data, String expected, int character) {
        PathData.Read read = PathData.parse(data, Path2D.WIND_NON_ZERO);
        assertEquals(expected, segments(read.path()));
        assertEquals(character, read.fault().orElseThrow().character());
        assertFalse(read.fault().orElseThrow().broken());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"M0 0L NaN 3", "M0 0L5 -Infinity", "MNaN,NaN", "M0 0 inf 3"})
    void noNumbersAreBroken(String data) {
        assertTrue(PathData.parse(data, Path2D.WIND_NON_ZERO).fault().orElseThrow().broken());
    }

    /** "a1 1 0 0110 10": flags are one digit each; flags 0 and 1, then x 10, y 10. */
    @Test
    void arcFlagsNeedNoSeparator() {
        assertEquals(segments("M0 0a1 1 0 0 1 10 10"), segments("M0 0a1 1 0 0110 10"));
        assertEquals(segments("M0 0A10 10 0 1 0 15 -5"), segments("M0 0A10 10 0 1015-5"));
    }

    private static List<double[]> points(String data) {
        List<double[]> all = new ArrayList<>();
        for (CurveSteps.Part part : CurveSteps.of(PathData.parse(data, Path2D.WIND_NON_ZERO).path(), new java.awt.geom.AffineTransform(), 0.001)) {
            for (int i = 0; i < part.xy().length; i += 2) {
                all.add(new double[] {part.xy()[i], part.xy()[i + 1]});
            }
        }
        return all;
    }

    /** The pie slice of SVG 1.1, 8.3.8: its arc has centre (300, 200) and radius 150. */
    @Test
    void exampleOfThePie() {
        List<double[]> arc = points("M300,200 h-150 a150,150 0 1,0 150,-150 z").stream().skip(1).toList();
        for (double[] p : arc) {
            assertEquals(150, Math.hypot(p[0] - 300, p[1] - 200), 150 * 2.8e-4); // cubics lie at most 2.73e-4 r outside
        }
        double highest = arc.stream().mapToDouble(p -> p[1]).max().orElseThrow();
        assertEquals(350, highest, 0.05); // the large arc goes round below
    }

    /** The first wiggle of 8.3.8: radii of 25 are too small for its chord, lambda = 1.25, so r = 27.95085 and the centre is its middle. */
    @Test
    void radiiTooSmallAreEnlarged() {
        for (double[] p : points("M650,325 a25,25 -30 0,1 50,-25")) {
            assertEquals(27.95085, Math.hypot(p[0] - 675, p[1] - 312.5), 27.95085 * 2.8e-4);
        }
    }

    /** The second: radii 25 and 50 turned by -30 degrees become 27.9132 and 55.8264 about (775, 262.5). */
    @Test
    void turnedEllipseIsEnlarged() {
        double cos = Math.cos(Math.toRadians(-30));
        double sin = Math.sin(Math.toRadians(-30));
        for (double[] p : points("M750,275 a25,50 -30 0,1 50,-25")) {
            double u = (cos * (p[0] - 775) + sin * (p[1] - 262.5)) / 27.9132;
            double v = (-sin * (p[0] - 775) + cos * (p[1] - 262.5)) / 55.8264;
            assertEquals(1, Math.hypot(u, v), 3e-4);
        }
    }

    /** The figure of 8.3.8 with all four arcs between the same ends: large and sweep each decide as written there. */
    @ParameterizedTest
    @CsvSource({"0,0,-1,1", "0,1,1,1", "1,0,-1,-1", "1,1,1,-1"})
    void flagsChooseTheArc(int large, int sweep, int side, int small) {
        List<double[]> arc = points("M0,0 a100,50 0 " + large + "," + sweep + " 100,50");
        double across = 0; // signed distance from the chord, and total length
        double length = 0;
        for (int i = 1; i < arc.size(); i++) {
            across += (100 * arc.get(i)[1] - 50 * arc.get(i)[0]) / Math.hypot(100, 50);
            length += Math.hypot(arc.get(i)[0] - arc.get(i - 1)[0], arc.get(i)[1] - arc.get(i - 1)[1]);
        }
        assertEquals(-side, Math.signum(across), "which side"); // y points down: a positive-angle sweep from the start bulges up here
        assertTrue(small > 0 ? length < 242 : length > 242, "length " + length + ", half the ellipse is 242.2");
    }

    @Test
    void pointsOfLines() {
        PathData.Read open = PathData.points("0,0 10,0,10 10", false, Path2D.WIND_NON_ZERO);
        assertEquals("M0 0L10 0L10 10", segments(open.path()));
        PathData.Read odd = PathData.points("0 0 10 0 5", true, Path2D.WIND_EVEN_ODD);
        assertEquals("M0 0L10 0Z", segments(odd.path()));
        assertTrue(odd.fault().isPresent());
        assertEquals("", segments(PathData.points("  ", true, Path2D.WIND_NON_ZERO).path()));
    }

    /** Any arc passes through its ends and keeps the distance that its equation demands. */
    @Property(tries = 300)
    void arcsLieOnTheirEllipse(@ForAll @DoubleRange(min = -50, max = 50) double x, @ForAll @DoubleRange(min = -50, max = 50) double y,
            @ForAll @DoubleRange(min = 1, max = 80) double rx, @ForAll @DoubleRange(min = 1, max = 80) double ry,
            @ForAll @DoubleRange(min = 0, max = 360) double turn, @ForAll boolean large, @ForAll boolean sweep) {
        if (Math.hypot(x, y) < 0.01) {
            return;
        }
        String data = "M0 0A" + rx + " " + ry + " " + turn + (large ? " 1" : " 0") + (sweep ? " 1 " : " 0 ") + x + " " + y;
        List<double[]> arc = points(data);
        assertArrayEquals(new double[] {0, 0}, arc.get(0), 1e-12);
        assertArrayEquals(new double[] {x, y}, arc.get(arc.size() - 1), 1e-12);
        // turned back and squeezed to a circle, all points have one distance from one centre: three points give it, the others must agree
        double cos = Math.cos(Math.toRadians(turn));
        double sin = Math.sin(Math.toRadians(turn));
        List<double[]> round = arc.stream().map(p -> new double[] {(cos * p[0] + sin * p[1]) / rx, (-sin * p[0] + cos * p[1]) / ry}).toList();
        int n = round.size();
        if (n < 7) {
            return;
        }
        double[] c = centre(round.get(0), round.get(n / 2), round.get(n - 1));
        double r = Math.hypot(round.get(0)[0] - c[0], round.get(0)[1] - c[1]);
        if (r > 1e3) {
            return; // nearly a line
        }
        for (double[] p : round) {
            assertEquals(1, Math.hypot(p[0] - c[0], p[1] - c[1]) / r, 2e-3);
        }
    }

    private static double[] centre(double[] a, double[] b, double[] c) {
        double d = 2 * (a[0] * (b[1] - c[1]) + b[0] * (c[1] - a[1]) + c[0] * (a[1] - b[1]));
        double aa = a[0] * a[0] + a[1] * a[1];
        double bb = b[0] * b[0] + b[1] * b[1];
        double cc = c[0] * c[0] + c[1] * c[1];
        return new double[] {(aa * (b[1] - c[1]) + bb * (c[1] - a[1]) + cc * (a[1] - b[1])) / d,
                (aa * (c[0] - b[0]) + bb * (a[0] - c[0]) + cc * (b[0] - a[0])) / d};
    }
}
