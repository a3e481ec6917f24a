package saddlebar.nesting;

import java.util.Arrays;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/**
 * A placed outline on a grid of whole nanometres, counter-clockwise (in a frame with y upwards), and what can be said of two of them without
 * any rounding. Coordinates stay below 2^42, so that every product of two differences fits 128 bits.
 */
final class ExactRing {
    /** Grid steps in a millimetre. */
    static final double PER_MM = 1e6;
    private static final double LARGEST_MM = 4e6;

    final long minX;
    final long minY;
    final long maxX;
    final long maxY;
    private final long[] xs;
    private final long[] ys;

    private ExactRing(long[] xs, long[] ys) {
        this.xs = xs;
        this.ys = ys;
        minX = Arrays.stream(xs).min().orElseThrow();
        maxX = Arrays.stream(xs).max().orElseThrow();
        minY = Arrays.stream(ys).min().orElseThrow();
        maxY = Arrays.stream(ys).max().orElseThrow();
    }

    /** The outline turned about its own (0,0), moved, and each corner rounded to the grid. */
    static ExactRing of(Polygon outline, double angleDeg, double xMm, double yMm) {
        double cos = cos(angleDeg);
        double sin = cos(angleDeg - 90);
        Coordinate[] ring = outline.getExteriorRing().getCoordinates();
        long[] xs = new long[ring.length];
        long[] ys = new long[ring.length];
        int n = 0;
        for (int i = 0; i < ring.length - 1; i++) {
            long x = grid(ring[i].getX() * cos - ring[i].getY() * sin + xMm);
            long y = grid(ring[i].getX() * sin + ring[i].getY() * cos + yMm);
            if (n == 0 || x != xs[n - 1] || y != ys[n - 1]) {
                xs[n] = x;
                ys[n++] = y;
            }
        }
        while (n > 1 && xs[n - 1] == xs[0] && ys[n - 1] == ys[0]) {
            n--;
        }
        ExactRing placed = new ExactRing(Arrays.copyOf(xs, n), Arrays.copyOf(ys, n));
        return placed.isCounterClockwise() ? placed : placed.reversed();
    }

    /** Nearest place of the grid. */
    static long grid(double mm) {
        if (!(Math.abs(mm) <= LARGEST_MM)) {
            throw new IllegalArgumentException("a placed outline has a coordinate of " + mm + " mm");
        }
        return Math.round(mm * PER_MM);
    }

    /** Does the inside of one meet the inside of the other? Lines that only touch do not count. */
    boolean overlaps(ExactRing other) {
        if (maxX <= other.minX || other.maxX <= minX || maxY <= other.minY || other.maxY <= minY) {
            return false;
        }
        return crosses(other) || entersWithoutCrossing(other) || other.entersWithoutCrossing(this);
    }

    /** Least distance between the two lines in grid steps; 0 if they meet. */
    double distance(ExactRing other) {
        if (crosses(other)) {
            return 0;
        }
        double least = Double.POSITIVE_INFINITY; // of lines that do not cross, the nearest two points include a corner
        for (int i = 0; i < xs.length; i++) {
            least = Math.min(least, other.distanceTo(xs[i], ys[i]));
        }
        for (int i = 0; i < other.xs.length; i++) {
            least = Math.min(least, distanceTo(other.xs[i], other.ys[i]));
        }
        return least;
    }

    /** Does an edge of one cross an edge of the other, each strictly inside the other's ends? */
    private boolean crosses(ExactRing other) {
        for (int i = 0; i < xs.length; i++) {
            int j = next(i);
            long lowX = Math.min(xs[i], xs[j]);
            long highX = Math.max(xs[i], xs[j]);
            long lowY = Math.min(ys[i], ys[j]);
            long highY = Math.max(ys[i], ys[j]);
            if (lowX > other.maxX || highX < other.minX || lowY > other.maxY || highY < other.minY) {
                continue;
            }
            for (int k = 0; k < other.xs.length; k++) {
                int l = other.next(k);
                if (Math.max(other.xs[k], other.xs[l]) >= lowX && Math.min(other.xs[k], other.xs[l]) <= highX
                        && Math.max(other.ys[k], other.ys[l]) >= lowY && Math.min(other.ys[k], other.ys[l]) <= highY
                        && side(i, other.xs[k], other.ys[k]) * side(i, other.xs[l], other.ys[l]) < 0
                        && other.side(k, xs[i], ys[i]) * other.side(k, xs[j], ys[j]) < 0) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * Of two rings whose edges never cross strictly: does a stretch of this one's line run inside the other, or along its line with both
     * insides on the same hand? Where the lines meet there is a corner of one of them, so the stretches between such corners lie wholly
     * inside, outside or on the other, and the middle of each, on a grid twice as fine, decides.
     */
    private boolean entersWithoutCrossing(ExactRing other) {
        for (int i = 0; i < xs.length; i++) {
            int j = next(i);
            int axis = Math.abs(xs[j] - xs[i]) >= Math.abs(ys[j] - ys[i]) ? 0 : 1;
            long[][] stops = stopsOn(i, other, axis);
            for (int s = 1; s < stops.length; s++) {
                long midX2 = stops[s - 1][0] + stops[s][0];
                long midY2 = stops[s - 1][1] + stops[s][1];
                if (other.holds(midX2, midY2, xs[j] - xs[i], ys[j] - ys[i])) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Ends of edge {@code i} and the corners of {@code other} upon it, in order along the edge, none twice. */
    private long[][] stopsOn(int i, ExactRing other, int axis) {
        int j = next(i);
        long[][] stops = new long[other.xs.length + 2][];
        int n = 0;
        stops[n++] = new long[] {xs[i], ys[i]};
        stops[n++] = new long[] {xs[j], ys[j]};
        for (int k = 0; k < other.xs.length; k++) {
            long x = other.xs[k];
            long y = other.ys[k];
            if (between(x, xs[i], xs[j]) && between(y, ys[i], ys[j]) && side(i, x, y) == 0) {
                stops[n++] = new long[] {x, y};
            }
        }
        long[][] sorted = Arrays.copyOf(stops, n);
        Arrays.sort(sorted, (a, b) -> Long.compare(a[axis], b[axis]));
        int kept = 1;
        for (int s = 1; s < n; s++) {
            if (sorted[s][axis] != sorted[kept - 1][axis]) {
                sorted[kept++] = sorted[s];
            }
        }
        return Arrays.copyOf(sorted, kept);
    }

    /** Is a point, in half steps, inside; or on an edge that runs the way of (dirX, dirY)? */
    private boolean holds(long x2, long y2, long dirX, long dirY) {
        boolean inside = false;
        for (int i = 0; i < xs.length; i++) {
            int j = next(i);
            long ax = 2 * xs[i];
            long ay = 2 * ys[i];
            long bx = 2 * xs[j];
            long by = 2 * ys[j];
            int side = cross(bx - ax, by - ay, x2 - ax, y2 - ay);
            if (side == 0 && between(x2, ax, bx) && between(y2, ay, by)) {
                return signOfDot(bx - ax, by - ay, dirX, dirY) > 0; // both counter-clockwise: same way, same hand
            }
            if ((ay > y2) != (by > y2) && (by > ay) == (side > 0)) {
                inside = !inside;
            }
        }
        return inside;
    }

    private boolean isCounterClockwise() {
        int low = 0; // the lowest, of these the leftmost corner is convex
        for (int i = 1; i < xs.length; i++) {
            if (ys[i] < ys[low] || ys[i] == ys[low] && xs[i] < xs[low]) {
                low = i;
            }
        }
        int before = (low + xs.length - 1) % xs.length;
        return side(before, xs[next(low)], ys[next(low)]) >= 0;
    }

    private ExactRing reversed() {
        long[] x = new long[xs.length];
        long[] y = new long[xs.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = xs[xs.length - 1 - i];
            y[i] = ys[xs.length - 1 - i];
        }
        return new ExactRing(x, y);
    }

    private double distanceTo(long x, long y) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < xs.length; i++) {
            int j = next(i);
            double dx = xs[j] - xs[i]; // differences of whole numbers below 2^53 are exact
            double dy = ys[j] - ys[i];
            double px = x - xs[i];
            double py = y - ys[i];
            double along = Math.max(0, Math.min(1, (px * dx + py * dy) / (dx * dx + dy * dy)));
            least = Math.min(least, Math.hypot(px - along * dx, py - along * dy));
        }
        return least;
    }

    private int next(int i) {
        return i + 1 == xs.length ? 0 : i + 1;
    }

    /** 1 if a point lies to the left of edge {@code i}, -1 to the right, 0 on its line. */
    private int side(int i, long x, long y) {
        int j = next(i);
        return cross(xs[j] - xs[i], ys[j] - ys[i], x - xs[i], y - ys[i]);
    }

    private static boolean between(long value, long a, long b) {
        return value >= Math.min(a, b) && value <= Math.max(a, b);
    }

    private static int cross(long ax, long ay, long bx, long by) {
        return compareProducts(ax, by, ay, bx);
    }

    private static int signOfDot(long ax, long ay, long bx, long by) {
        return compareProducts(ax, bx, -ay, by);
    }

    /** Sign of a*b - c*d in 128 bits. */
    private static int compareProducts(long a, long b, long c, long d) {
        int high = Long.compare(Math.multiplyHigh(a, b), Math.multiplyHigh(c, d));
        return high != 0 ? high : Long.compareUnsigned(a * b, c * d);
    }

    /** Cosine that is exact at whole quarters of a turn and the same on every machine. */
    static double cos(double angleDeg) {
        double within = ((angleDeg % 360) + 360) % 360;
        if (within % 90 == 0) {
            return within == 0 ? 1 : within == 180 ? -1 : 0;
        }
        return StrictMath.cos(StrictMath.toRadians(within));
    }
}
