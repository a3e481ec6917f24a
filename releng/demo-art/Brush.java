import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;

/** Marks of a loaded brush and of a broad pen, as outlines to be filled. */
final class Brush {
    private static final double STATION_MM = 9;
    private static final double WASH_STATION_MM = 24;

    private Brush() {
    }

    /** Widths along a stroke in mm, evenly spread from its start to its end. */
    static double[] w(double... widths) {
        return widths;
    }

    /** A stroke that swells and tapers: the width runs smoothly through the widths given. */
    static Path2D stroke(Curve line, double... widths) {
        return stroke(line, STATION_MM, widths);
    }

    /** A broad soft stroke: its outline follows the line less closely. */
    static Path2D wash(Curve line, double... widths) {
        return stroke(line, WASH_STATION_MM, widths);
    }

    private static Path2D stroke(Curve line, double stationMm, double[] widths) {
        int n = (int) Math.max(Math.max(2, widths.length - 1), Math.min(60, line.length() / stationMm)) + 1;
        double[] shares = new double[n];
        for (int i = 0; i < n; i++) {
            shares[i] = (double) i / (n - 1);
        }
        double[][] p = line.along(shares);
        double[] left = new double[2 * n];
        double[] right = new double[2 * n];
        for (int i = 0; i < n; i++) {
            double half = width(widths, shares[i]) / 2;
            left[2 * i] = p[i][0] - p[i][3] * half;
            left[2 * i + 1] = p[i][1] + p[i][2] * half;
            int k = n - 1 - i;
            right[2 * k] = p[i][0] + p[i][3] * half;
            right[2 * k + 1] = p[i][1] - p[i][2] * half;
        }
        Path2D path = Curve.through(left).path();
        path.lineTo(right[0], right[1]);
        path.append(Curve.through(right).path(), true);
        path.closePath();
        return path;
    }

    private static double width(double[] widths, double share) {
        if (widths.length == 1) {
            return widths[0];
        }
        double at = share * (widths.length - 1);
        int i = Math.min(widths.length - 2, (int) at);
        double t = at - i;
        double soft = t * t * (3 - 2 * t);
        return widths[i] + (widths[i + 1] - widths[i]) * soft;
    }

    /** A line drawn with a broad nib that is held at one angle, degrees anticlockwise from level. */
    static Area pen(Curve line, double nibMm, double angleDeg, double thinMm) {
        double a = StrictMath.toRadians(-angleDeg);
        double hx = nibMm / 2 * StrictMath.cos(a);
        double hy = nibMm / 2 * StrictMath.sin(a);
        double tx = -StrictMath.sin(a) * thinMm / 2;
        double ty = StrictMath.cos(a) * thinMm / 2;
        double[][] nib = {{-hx - tx, -hy - ty}, {hx - tx, hy - ty}, {hx + tx, hy + ty}, {-hx + tx, -hy + ty}};
        int n = Math.max(2, (int) StrictMath.ceil(line.length() / 1.1));
        double[] shares = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            shares[i] = (double) i / n;
        }
        double[][] p = line.along(shares);
        Area swept = new Area();
        for (int i = 0; i < n; i++) {
            swept.add(new Area(hull(nib, p[i], p[i + 1])));
        }
        return swept;
    }

    /** The region that a convex nib covers on a straight way from a to b. */
    private static Path2D hull(double[][] nib, double[] a, double[] b) {
        double[][] points = new double[2 * nib.length][];
        for (int i = 0; i < nib.length; i++) {
            points[2 * i] = new double[] {nib[i][0] + a[0], nib[i][1] + a[1]};
            points[2 * i + 1] = new double[] {nib[i][0] + b[0], nib[i][1] + b[1]};
        }
        int start = 0;
        for (int i = 1; i < points.length; i++) {
            if (points[i][0] < points[start][0] || points[i][0] == points[start][0] && points[i][1] < points[start][1]) {
                start = i;
            }
        }
        Path2D path = new Path2D.Double();
        path.moveTo(points[start][0], points[start][1]);
        int at = start;
        for (int guard = 0; guard < points.length; guard++) {
            int next = at == 0 ? 1 : 0;
            for (int i = 0; i < points.length; i++) {
                double cross = (points[next][0] - points[at][0]) * (points[i][1] - points[at][1])
                        - (points[next][1] - points[at][1]) * (points[i][0] - points[at][0]);
                boolean farther = cross == 0 && square(points[at], points[i]) > square(points[at], points[next]);
                if (i != at && (cross < 0 || farther)) {
                    next = i;
                }
            }
            if (next == start) {
                break;
            }
            path.lineTo(points[next][0], points[next][1]);
            at = next;
        }
        path.closePath();
        return path;
    }

    private static double square(double[] a, double[] b) {
        return (a[0] - b[0]) * (a[0] - b[0]) + (a[1] - b[1]) * (a[1] - b[1]);
    }

    static AffineTransform moved(double dx, double dy) {
        return AffineTransform.getTranslateInstance(dx, dy);
    }
}
