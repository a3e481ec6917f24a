package saddlebar.artwork.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.CubicCurve2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.QuadCurve2D;
import java.util.List;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/**
 * Step counts by the rule of Wang (1984); counts and true errors were computed from the rule outside this program, the errors by dense sampling.
 */
class CurveStepsTest {
    private static final AffineTransform NONE = new AffineTransform();

    private static int steps(CurveSteps.Part part) {
        return part.xy().length / 2 - (part.closed() ? 0 : 1);
    }

    /** Greatest distance of a curve's points from the steps. */
    private static double trueError(java.util.function.DoubleFunction<double[]> curve, double[] xy) {
        double worst = 0;
        for (int i = 0; i <= 20_000; i++) {
            double[] p = curve.apply(i / 20_000.0);
            double best = Double.MAX_VALUE;
            for (int s = 0; s + 3 < xy.length; s += 2) {
                best = Math.min(best, Line2D.ptSegDist(xy[s], xy[s + 1], xy[s + 2], xy[s + 3], p[0], p[1]));
            }
            worst = Math.max(worst, best);
        }
        return worst;
    }

    private static double[] cubic(double t, double... p) {
        double s = 1 - t;
        double a = s * s * s;
        double b = 3 * s * s * t;
        double c = 3 * s * t * t;
        double d = t * t * t;
        return new double[] {a * p[0] + b * p[2] + c * p[4] + d * p[6], a * p[1] + b * p[3] + c * p[5] + d * p[7]};
    }

    @Test
    void cubicOfTheSquare() {
        CubicCurve2D curve = new CubicCurve2D.Double(0, 0, 0, 100, 100, 100, 100, 0); // M = 141.4214
        CurveSteps.Part fine = CurveSteps.of(curve, NONE, 0.01).get(0);
        CurveSteps.Part coarse = CurveSteps.of(curve, NONE, 0.1).get(0);
        assertEquals(103, steps(fine));
        assertEquals(33, steps(coarse));
        assertEquals(0.00707, trueError(t -> cubic(t, 0, 0, 0, 100, 100, 100, 100, 0), fine.xy()), 5e-5);
        assertEquals(0.0689, trueError(t -> cubic(t, 0, 0, 0, 100, 100, 100, 100, 0), coarse.xy()), 5e-4);
    }

    @Test
    void quadraticOfTheTent() {
        CurveSteps.Part part = CurveSteps.of(new QuadCurve2D.Double(0, 0, 50, 100, 100, 0), NONE, 0.01).get(0); // M = 200
        assertEquals(71, steps(part));
        assertEquals(0.00992, trueError(t -> new double[] {100 * t, 200 * t * (1 - t)}, part.xy()), 5e-5);
    }

    @Test
    void wholeCircles() {
        assertEquals(223, steps(CurveSteps.of(new Ellipse2D.Double(-100, -100, 200, 200), NONE, 0.01).get(0)));
        assertEquals(71, steps(CurveSteps.of(new Ellipse2D.Double(-10, -10, 20, 20), NONE, 0.01).get(0)));
        // turned, mirrored and enlarged it is still a circle, of its size on the page
        AffineTransform placed = AffineTransform.getRotateInstance(0.3);
        placed.scale(10, -10);
        assertEquals(223, steps(CurveSteps.of(new Ellipse2D.Double(-10, -10, 20, 20), placed, 0.01).get(0)));
    }

    /** k(90 degrees) = 0.5522847498; the cubic lies 2.7253e-4 r outside at most, and never inside. */
    @Test
    void quarterArcsAsCubics() {
        double k = 4.0 / 3 * Math.tan(Math.PI / 8);
        assertEquals(0.5522847498, k, 1e-10);
        double most = 0;
        double least = 1;
        for (int i = 0; i <= 100_000; i++) {
            double[] p = cubic(i / 100_000.0, 1, 0, 1, k, k, 1, 0, 1);
            most = Math.max(most, Math.hypot(p[0], p[1]) - 1);
            least = Math.min(least, Math.hypot(p[0], p[1]) - 1);
        }
        assertEquals(2.7253e-4, most, 1e-8);
        assertTrue(least > -1e-15, "inside by " + least);
        // and the arcs that drawings use are these: control points of a quarter circle of radius 1000
        double[] c = new double[6];
        java.awt.geom.PathIterator arc = new Arc2D.Double(-1000, -1000, 2000, 2000, 0, -90, Arc2D.OPEN).getPathIterator(null);
        arc.next();
        arc.currentSegment(c);
        assertEquals(1000 * k, c[1], 1e-6);
    }

    @Property(tries = 200)
    void neverFartherThanAllowed(@ForAll @Size(8) List<@DoubleRange(min = -200, max = 200) Double> xy,
            @ForAll @DoubleRange(min = 0.02, max = 2) double tolerance) {
        double[] p = xy.stream().mapToDouble(Double::doubleValue).toArray();
        List<CurveSteps.Part> parts = CurveSteps.of(new CubicCurve2D.Double(p[0], p[1], p[2], p[3], p[4], p[5], p[6], p[7]), NONE, tolerance);
        if (parts.isEmpty()) {
            return; // all in one point
        }
        double[] steps = parts.get(0).xy();
        for (int i = 0; i <= 500; i++) {
            double[] q = cubic(i / 500.0, p);
            double best = Double.MAX_VALUE;
            for (int s = 0; s + 3 < steps.length; s += 2) {
                best = Math.min(best, Line2D.ptSegDist(steps[s], steps[s + 1], steps[s + 2], steps[s + 3], q[0], q[1]));
            }
            assertTrue(best <= tolerance * (1 + 1e-9) + 1e-12, "distance " + best + " with tolerance " + tolerance);
        }
    }

    @Test
    void partsOfAPath() {
        Path2D path = new Path2D.Double();
        path.moveTo(0, 0);
        path.lineTo(5, 0);
        path.lineTo(5, 5);
        path.closePath();
        path.lineTo(-3, -3); // without a move: starts where the part before did
        path.moveTo(9, 9); // alone: nothing
        path.moveTo(1, 1);
        path.lineTo(2, 2);
        path.lineTo(1, 2);
        path.lineTo(1, 1); // ends where it began
        List<CurveSteps.Part> parts = CurveSteps.of(path, NONE, 0.01);
        assertEquals(3, parts.size());
        assertTrue(parts.get(0).closed());
        assertEquals(6, parts.get(0).xy().length);
        assertEquals(List.of(0.0, 0.0, -3.0, -3.0), java.util.Arrays.stream(parts.get(1).xy()).boxed().toList());
        assertTrue(parts.get(2).closed());
        assertEquals(6, parts.get(2).xy().length);
    }
}
