import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A smooth line through chosen points: a chain of cubic Bezier segments in mm, y downwards.
 *
 * <p>{@link #through} lays a centripetal Catmull-Rom spline through its points (Yuksel, Schaefer, Keyser 2011, "Parameterization and
 * applications of Catmull-Rom curves", Computer-Aided Design 43(7)): it makes no loops and no cusps between points, so that a line
 * drawn with few points flows as a hand would draw it. The ends run out like a parabola.
 */
final class Curve {
    private static final double SAMPLE_MM = 0.7;

    /** x and y of the start, then of two controls and an end for every segment. */
    private final double[] xy;

    private Curve(double[] xy) {
        this.xy = xy;
    }

    /** An open smooth line through the points x0, y0, x1, y1 ... */
    static Curve through(double... points) {
        return spline(points, false);
    }

    /** A closed smooth line through the points; the first is not repeated. */
    static Curve loop(double... points) {
        return spline(points, true);
    }

    /** Straight runs through the points. */
    static Curve straight(double... points) {
        List<Curve> runs = new ArrayList<>();
        for (int i = 0; i + 3 < points.length; i += 2) {
            runs.add(through(Arrays.copyOfRange(points, i, i + 4)));
        }
        return join(runs);
    }

    /** Part of a circle from one angle to another, in degrees clockwise from the x axis as seen on the sheet. */
    static Curve arc(double cx, double cy, double r, double fromDeg, double toDeg) {
        int n = Math.max(1, (int) StrictMath.ceil(Math.abs(toDeg - fromDeg) / 45 - 1e-9));
        double step = StrictMath.toRadians((toDeg - fromDeg) / n);
        double k = 4.0 / 3 * StrictMath.tan(step / 4) * r;
        double[] out = new double[2 + 6 * n];
        for (int i = 0; i <= n; i++) {
            double a = StrictMath.toRadians(fromDeg) + i * step;
            double x = cx + r * StrictMath.cos(a);
            double y = cy + r * StrictMath.sin(a);
            out[6 * i] = x;
            out[6 * i + 1] = y;
            double dx = -StrictMath.sin(a) * k;
            double dy = StrictMath.cos(a) * k;
            if (i > 0) {
                out[6 * i - 2] = x - dx;
                out[6 * i - 1] = y - dy;
            }
            if (i < n) {
                out[6 * i + 2] = x + dx;
                out[6 * i + 3] = y + dy;
            }
        }
        return new Curve(out);
    }

    static Curve circle(double cx, double cy, double r) {
        return arc(cx, cy, r, -90, 270);
    }

    /** An ellipse turned by the angle. */
    static Curve ellipse(double cx, double cy, double rx, double ry, double turnDeg) {
        double c = StrictMath.cos(StrictMath.toRadians(turnDeg));
        double s = StrictMath.sin(StrictMath.toRadians(turnDeg));
        return circle(0, 0, 1).map(c * rx, s * rx, -s * ry, c * ry, cx, cy);
    }

    /** Lines that follow one another; the end of one is the start of the next. */
    static Curve join(List<Curve> runs) {
        int n = runs.stream().mapToInt(Curve::segments).sum();
        double[] out = new double[2 + 6 * n];
        int at = 2;
        out[0] = runs.get(0).xy[0];
        out[1] = runs.get(0).xy[1];
        for (Curve run : runs) {
            System.arraycopy(run.xy, 2, out, at, run.xy.length - 2);
            at += run.xy.length - 2;
        }
        return new Curve(out);
    }

    private static Curve spline(double[] p, boolean closed) {
        int n = p.length / 2;
        int segments = closed ? n : n - 1;
        double[] out = new double[2 + 6 * segments];
        out[0] = p[0];
        out[1] = p[1];
        for (int i = 0; i < segments; i++) {
            for (int axis = 0; axis < 2; axis++) {
                out[2 + 6 * i + 4 + axis] = p[2 * ((i + 1) % n) + axis];
            }
            boolean before = closed || i > 0;
            boolean after = closed || i + 2 < n;
            double[] c1 = before ? control(p, n, (i + n - 1) % n, i, (i + 1) % n) : null;
            double[] c2 = after ? control(p, n, (i + 2) % n, (i + 1) % n, i) : null;
            double[] a = {p[2 * i], p[2 * i + 1]};
            double[] b = {p[2 * ((i + 1) % n)], p[2 * ((i + 1) % n) + 1]};
            for (int axis = 0; axis < 2; axis++) {
                double third = (b[axis] - a[axis]) / 3;
                double one = c1 != null ? c1[axis] : c2 == null ? a[axis] + third : a[axis] + (b[axis] + 1.5 * (c2[axis] - b[axis]) - a[axis]) * 2 / 3;
                double two = c2 != null ? c2[axis] : c1 == null ? b[axis] - third : b[axis] + (a[axis] + 1.5 * (c1[axis] - a[axis]) - b[axis]) * 2 / 3;
                out[2 + 6 * i + axis] = one;
                out[2 + 6 * i + 2 + axis] = two;
            }
        }
        return new Curve(out);
    }

    /** The control point that follows point b on the way to c, when a came before b. */
    private static double[] control(double[] p, int n, int a, int b, int c) {
        double d1 = StrictMath.sqrt(StrictMath.hypot(p[2 * b] - p[2 * a], p[2 * b + 1] - p[2 * a + 1]));
        double d2 = StrictMath.sqrt(StrictMath.hypot(p[2 * c] - p[2 * b], p[2 * c + 1] - p[2 * b + 1]));
        double[] out = new double[2];
        for (int axis = 0; axis < 2; axis++) {
            out[axis] = (d1 * d1 * p[2 * c + axis] - d2 * d2 * p[2 * a + axis] + (2 * d1 * d1 + 3 * d1 * d2 + d2 * d2) * p[2 * b + axis])
                    / (3 * d1 * (d1 + d2));
        }
        return out;
    }

    int segments() {
        return (xy.length - 2) / 6;
    }

    boolean closed() {
        return StrictMath.hypot(xy[0] - xy[xy.length - 2], xy[1] - xy[xy.length - 1]) < 1e-9;
    }

    /** x' = a x + c y + e, y' = b x + d y + f. */
    Curve map(double a, double b, double c, double d, double e, double f) {
        double[] out = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            out[i] = a * xy[i] + c * xy[i + 1] + e;
            out[i + 1] = b * xy[i] + d * xy[i + 1] + f;
        }
        return new Curve(out);
    }

    Curve moved(double dx, double dy) {
        return map(1, 0, 0, 1, dx, dy);
    }

    Curve reversed() {
        double[] out = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            out[i] = xy[xy.length - 2 - i];
            out[i + 1] = xy[xy.length - 1 - i];
        }
        return new Curve(out);
    }

    /** The part between two places, each a segment number plus the share of that segment. */
    Curve part(double from, double to) {
        int first = Math.min((int) from, segments() - 1);
        int last = Math.min((int) StrictMath.ceil(to) - 1, segments() - 1);
        List<Curve> runs = new ArrayList<>();
        for (int i = first; i <= last; i++) {
            double t0 = i == first ? from - i : 0;
            double t1 = i == last ? to - i : 1;
            runs.add(new Curve(cubic(Arrays.copyOfRange(xy, 6 * i, 6 * i + 8), t0, t1)));
        }
        return join(runs);
    }

    private static double[] cubic(double[] p, double t0, double t1) {
        double[] out = new double[8];
        for (int axis = 0; axis < 2; axis++) {
            double[] c = {p[axis], p[2 + axis], p[4 + axis], p[6 + axis]};
            out[axis] = blossom(c, t0, t0, t0);
            out[2 + axis] = blossom(c, t0, t0, t1);
            out[4 + axis] = blossom(c, t0, t1, t1);
            out[6 + axis] = blossom(c, t1, t1, t1);
        }
        return out;
    }

    private static double blossom(double[] c, double r, double s, double t) {
        double a = mix(mix(c[0], c[1], r), mix(c[1], c[2], r), s);
        double b = mix(mix(c[1], c[2], r), mix(c[2], c[3], r), s);
        return mix(a, b, t);
    }

    private static double mix(double a, double b, double t) {
        return a + (b - a) * t;
    }

    /** Adds a straight run at the end. */
    Curve extendedTo(double x, double y) {
        int n = xy.length;
        return join(List.of(this, through(xy[n - 2], xy[n - 1], x, y)));
    }

    /** The same line with its first and last points set exactly. */
    Curve withEnds(double[] start, double[] end) {
        double[] out = xy.clone();
        int n = xy.length;
        for (int axis = 0; axis < 2; axis++) {
            out[2 + axis] += start[axis] - xy[axis];
            out[n - 4 + axis] += end[axis] - xy[n - 2 + axis];
            out[axis] = start[axis];
            out[n - 2 + axis] = end[axis];
        }
        return new Curve(out);
    }

    double[] start() {
        return new double[] {xy[0], xy[1]};
    }

    double[] end() {
        return new double[] {xy[xy.length - 2], xy[xy.length - 1]};
    }

    /** Points along the line, each x, y and its place (segment number plus share), close enough for 0.01 mm. */
    double[][] samples() {
        List<double[]> out = new ArrayList<>();
        out.add(new double[] {xy[0], xy[1], 0});
        for (int i = 0; i < segments(); i++) {
            double length = 0;
            for (int k = 6 * i; k < 6 * i + 6; k += 2) {
                length += StrictMath.hypot(xy[k + 2] - xy[k], xy[k + 3] - xy[k + 1]);
            }
            int steps = Math.max(4, (int) StrictMath.ceil(length / SAMPLE_MM));
            for (int s = 1; s <= steps; s++) {
                double t = (double) s / steps;
                double x = blossom(new double[] {xy[6 * i], xy[6 * i + 2], xy[6 * i + 4], xy[6 * i + 6]}, t, t, t);
                double y = blossom(new double[] {xy[6 * i + 1], xy[6 * i + 3], xy[6 * i + 5], xy[6 * i + 7]}, t, t, t);
                out.add(new double[] {x, y, i + t});
            }
        }
        return out.toArray(double[][]::new);
    }

    /** The point and direction at a share of the whole length, as x, y, unit dx, unit dy. */
    double[] at(double share) {
        return along(new double[] {share})[0];
    }

    /** Points and unit directions at shares of the whole length. */
    double[][] along(double[] shares) {
        double[][] p = samples();
        double[] length = new double[p.length];
        for (int i = 1; i < p.length; i++) {
            length[i] = length[i - 1] + StrictMath.hypot(p[i][0] - p[i - 1][0], p[i][1] - p[i - 1][1]);
        }
        double[][] out = new double[shares.length][];
        for (int k = 0; k < shares.length; k++) {
            double want = Math.max(0, Math.min(1, shares[k])) * length[p.length - 1];
            int i = Arrays.binarySearch(length, want);
            i = Math.max(1, Math.min(p.length - 1, i < 0 ? -i - 1 : i));
            double run = Math.max(1e-12, length[i] - length[i - 1]);
            double t = (want - length[i - 1]) / run;
            int before = Math.max(0, i - 2);
            int after = Math.min(p.length - 1, i + 1);
            double dx = p[after][0] - p[before][0];
            double dy = p[after][1] - p[before][1];
            double d = Math.max(1e-12, StrictMath.hypot(dx, dy));
            out[k] = new double[] {mix(p[i - 1][0], p[i][0], t), mix(p[i - 1][1], p[i][1], t), dx / d, dy / d};
        }
        return out;
    }

    double length() {
        double sum = 0;
        double[][] p = samples();
        for (int i = 1; i < p.length; i++) {
            sum += StrictMath.hypot(p[i][0] - p[i - 1][0], p[i][1] - p[i - 1][1]);
        }
        return sum;
    }

    /** The line as a path of Java2D; an open line is closed by its chord when filled. */
    Path2D path() {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 6) {
            path.curveTo(xy[i], xy[i + 1], xy[i + 2], xy[i + 3], xy[i + 4], xy[i + 5]);
        }
        if (closed()) {
            path.closePath();
        }
        return path;
    }
}
