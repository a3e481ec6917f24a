package saddlebar.nesting.outline;

import java.util.Arrays;

/**
 * The places of one convex part, relative to another, at which they come nearer than a gap: their Minkowski difference, widened. As a list of
 * half planes a x + b y &lt; c with a, b of length 1.
 *
 * <p>Each edge of both parts gives one half plane; where two normals in turn differ by more than {@value #WIDEST_TURN_DEG} degrees, others
 * between them keep the widened corner from becoming a long point. The set is never smaller than the exact one with round corners, and at
 * most 1/cos(11.25 deg) - 1 = 2 % of the gap larger where edges meet at blunt angles.
 */
final class HalfPlanes {
    private static final double WIDEST_TURN_DEG = 22.5;
    private static final double SMALL_GAP_MM = 1e-3; // below it a long point is too short to matter
    final double[] a;
    final double[] b;
    final double[] c;
    final double minX;
    final double minY;
    final double maxX;
    final double maxY;

    private HalfPlanes(double[] normals, double[] still, double[] moved, double gap) {
        int n = normals.length;
        a = new double[n];
        b = new double[n];
        c = new double[n];
        for (int i = 0; i < n; i++) {
            a[i] = StrictMath.cos(normals[i]);
            b[i] = StrictMath.sin(normals[i]);
            c[i] = support(still, a[i], b[i]) + support(moved, -a[i], -b[i]) + gap;
        }
        minX = -(support(still, -1, 0) + support(moved, 1, 0) + gap);
        maxX = support(still, 1, 0) + support(moved, -1, 0) + gap;
        minY = -(support(still, 0, -1) + support(moved, 0, 1) + gap);
        maxY = support(still, 0, 1) + support(moved, 0, -1) + gap;
    }

    /** Places of {@code moved} relative to {@code still} that are nearer than {@code gap}; both convex with positive area. */
    static HalfPlanes of(double[] still, double[] moved, double gap) {
        double[] normals = new double[still.length / 2 + moved.length / 2];
        for (int i = 0; i < still.length / 2; i++) {
            normals[i] = normal(still, i, 1);
        }
        for (int i = 0; i < moved.length / 2; i++) {
            normals[still.length / 2 + i] = normal(moved, i, -1);
        }
        Arrays.sort(normals);
        return new HalfPlanes(withBetween(normals, gap > SMALL_GAP_MM), still, moved, gap);
    }

    private static double normal(double[] ring, int i, double sign) {
        int j = (i + 1) % (ring.length / 2);
        double dx = ring[2 * j] - ring[2 * i];
        double dy = ring[2 * j + 1] - ring[2 * i + 1];
        return StrictMath.atan2(-dx * sign, dy * sign);
    }

    private static double[] withBetween(double[] sorted, boolean rounded) {
        double widest = Math.toRadians(WIDEST_TURN_DEG);
        double[] all = new double[sorted.length + 40];
        int n = 0;
        for (int i = 0; i < sorted.length; i++) {
            double next = i + 1 < sorted.length ? sorted[i + 1] : sorted[0] + 2 * Math.PI;
            double turn = next - sorted[i];
            if (n > 0 && sorted[i] - all[n - 1] < 1e-12) {
                n--; // parallel edges
            }
            all[n++] = sorted[i];
            int between = rounded ? (int) Math.ceil(turn / widest) - 1 : 0;
            for (int k = 1; k <= between; k++) {
                all[n++] = sorted[i] + turn * k / (between + 1);
            }
        }
        return Arrays.copyOf(all, n);
    }

    private static double support(double[] ring, double x, double y) {
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < ring.length; i += 2) {
            most = Math.max(most, ring[i] * x + ring[i + 1] * y);
        }
        return most;
    }
}
