package saddlebar.artwork.drawing;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Curves as straight steps of equal parameter, so many that none lies farther than a tolerance from its curve.
 *
 * <p>For a Bezier curve of degree d with M = max |P(i+2) - 2 P(i+1) + P(i)|, n = ceil(sqrt(d (d-1) / 8 * M / tolerance)) steps are enough
 * (Wang, G. (1984), The subdivision method for finding the intersection between two Bezier curves or surfaces; in the course notes of
 * Goldman and Sederberg). For a whole circle of radius r, n = ceil(pi / acos(1 - tolerance / r)): the sagitta of one step.
 */
public final class CurveSteps {
    /** A step count beyond this is a curve of kilometres. */
    private static final int MOST_STEPS = 1_000_000;

    /**
     * One part of a shape, from one move to the next.
     *
     * @param xy     x0, y0, x1, y1, …
     * @param closed whether the last point joins the first, which is not repeated
     */
    public record Part(double[] xy, boolean closed) {
    }

    private CurveSteps() {
    }

    static int ofBezier(int degree, double mostSecondDifference, double tolerance) {
        return (int) Math.min(MOST_STEPS, Math.max(1, Math.ceil(Math.sqrt(degree * (degree - 1) / 8.0 * mostSecondDifference / tolerance))));
    }

    static int ofCircle(double radius, double tolerance) {
        return tolerance >= radius ? 4 : (int) Math.min(MOST_STEPS, Math.max(4, Math.ceil(Math.PI / Math.acos(1 - tolerance / radius))));
    }

    /** All parts of a shape with two points or more. */
    public static List<Part> of(Shape shape, AffineTransform transform, double tolerance) {
        if (shape instanceof Ellipse2D circle && circle.getWidth() == circle.getHeight() && isSimilarity(transform)) {
            return List.of(circle(circle, transform, tolerance));
        }
        Collector parts = new Collector();
        double[] c = new double[6];
        for (PathIterator path = shape.getPathIterator(transform); !path.isDone(); path.next()) {
            switch (path.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> parts.move(c[0], c[1]);
                case PathIterator.SEG_LINETO -> parts.add(c[0], c[1]);
                case PathIterator.SEG_QUADTO -> quadratic(parts, c, tolerance);
                case PathIterator.SEG_CUBICTO -> cubic(parts, c, tolerance);
                default -> parts.close();
            }
        }
        parts.end(false);
        return parts.done;
    }

    private static boolean isSimilarity(AffineTransform t) {
        double size = Math.abs(t.getScaleX()) + Math.abs(t.getShearY());
        return Math.abs(Math.abs(t.getScaleX()) - Math.abs(t.getScaleY())) <= 1e-9 * size
                && Math.abs(Math.abs(t.getShearX()) - Math.abs(t.getShearY())) <= 1e-9 * size
                && Math.abs(t.getScaleX() * t.getShearX() + t.getShearY() * t.getScaleY()) <= 1e-9 * size * size;
    }

    private static Part circle(Ellipse2D circle, AffineTransform transform, double tolerance) {
        double r = circle.getWidth() / 2;
        int n = ofCircle(r * Math.sqrt(Math.abs(transform.getDeterminant())), tolerance);
        double[] xy = new double[2 * n];
        for (int i = 0; i < n; i++) {
            double turn = 2 * Math.PI * i / n;
            xy[2 * i] = circle.getCenterX() + r * Math.cos(turn);
            xy[2 * i + 1] = circle.getCenterY() + r * Math.sin(turn);
        }
        transform.transform(xy, 0, xy, 0, n);
        return new Part(xy, true);
    }

    private static void quadratic(Collector parts, double[] c, double tolerance) {
        double x0 = parts.x();
        double y0 = parts.y();
        double bendX = x0 - 2 * c[0] + c[2];
        double bendY = y0 - 2 * c[1] + c[3];
        int n = ofBezier(2, Math.hypot(bendX, bendY), tolerance);
        for (int i = 1; i < n; i++) {
            double t = (double) i / n;
            double s = 1 - t;
            parts.add(s * s * x0 + 2 * s * t * c[0] + t * t * c[2], s * s * y0 + 2 * s * t * c[1] + t * t * c[3]);
        }
        parts.add(c[2], c[3]);
    }

    private static void cubic(Collector parts, double[] c, double tolerance) {
        double x0 = parts.x();
        double y0 = parts.y();
        double first = Math.hypot(x0 - 2 * c[0] + c[2], y0 - 2 * c[1] + c[3]);
        double second = Math.hypot(c[0] - 2 * c[2] + c[4], c[1] - 2 * c[3] + c[5]);
        int n = ofBezier(3, Math.max(first, second), tolerance);
        for (int i = 1; i < n; i++) {
            double t = (double) i / n;
            double s = 1 - t;
            double a = s * s * s;
            double b = 3 * s * s * t;
            double d = 3 * s * t * t;
            double e = t * t * t;
            parts.add(a * x0 + b * c[0] + d * c[2] + e * c[4], a * y0 + b * c[1] + d * c[3] + e * c[5]);
        }
        parts.add(c[4], c[5]);
    }

    /** Points gathered into parts; points that repeat the one before are left out. */
    private static final class Collector {
        private final List<Part> done = new ArrayList<>();
        private double[] xy = new double[32];
        private int n;

        void move(double x, double y) {
            end(false);
            add(x, y);
        }

        void add(double x, double y) {
            if (n >= 2 && xy[n - 2] == x && xy[n - 1] == y) {
                return;
            }
            if (n == xy.length) {
                xy = Arrays.copyOf(xy, 2 * n);
            }
            xy[n++] = x;
            xy[n++] = y;
        }

        double x() {
            return xy[n - 2];
        }

        double y() {
            return xy[n - 1];
        }

        void close() {
            double x = n > 0 ? xy[0] : 0;
            double y = n > 0 ? xy[1] : 0;
            end(true);
            add(x, y); // what follows without a move starts here
        }

        void end(boolean closed) {
            boolean joined = closed;
            int count = n;
            if (count >= 6 && xy[0] == xy[count - 2] && xy[1] == xy[count - 1]) {
                joined = true;
                count -= 2;
            }
            if (count >= 4) {
                done.add(new Part(Arrays.copyOf(xy, count), joined && count >= 6));
            }
            n = 0;
        }
    }
}
