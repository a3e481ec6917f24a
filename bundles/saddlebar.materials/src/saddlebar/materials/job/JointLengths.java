package saddlebar.materials.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

import saddlebar.model.art.OutlineMm;

/**
 * Joints between pieces, from outlines that run to the middle of the gaps: neighbours share their points, so a side that two outlines have is a joint, and
 * one that only one has is the edge.
 *
 * @param jointsMm one length for each pair of neighbours
 * @param edgeMm   sides of one piece only
 */
record JointLengths(List<Double> jointsMm, double edgeMm) {
    private static final double STEPS_PER_MM = 1000;

    private record Point(long x, long y) implements Comparable<Point> {
        @Override
        public int compareTo(Point other) {
            return x == other.x ? Long.compare(y, other.y) : Long.compare(x, other.x);
        }
    }

    private record Side(Point from, Point to) {
        double lengthMm() {
            return Math.hypot(from.x - to.x, from.y - to.y) / STEPS_PER_MM;
        }
    }

    double innerMm() {
        return jointsMm.stream().mapToDouble(Double::doubleValue).sum();
    }

    static JointLengths of(List<OutlineMm> faces) {
        Map<Side, Integer> first = new HashMap<>();
        TreeMap<String, Double> pairs = new TreeMap<>();
        double all = 0;
        for (int piece = 0; piece < faces.size(); piece++) {
            for (int ring = 0; ring < faces.get(piece).rings(); ring++) {
                double[] xy = faces.get(piece).ring(ring);
                for (int i = 0; i < xy.length; i += 2) {
                    int next = (i + 2) % xy.length;
                    Side side = side(xy[i], xy[i + 1], xy[next], xy[next + 1]);
                    all += side.lengthMm();
                    Integer other = first.putIfAbsent(side, piece);
                    if (other != null && other != piece) {
                        pairs.merge(String.format(Locale.ROOT, "%06d %06d", other, piece), side.lengthMm(), Double::sum);
                    }
                }
            }
        }
        double inner = pairs.values().stream().mapToDouble(Double::doubleValue).sum();
        return new JointLengths(new ArrayList<>(pairs.values()), all - 2 * inner);
    }

    private static Side side(double ax, double ay, double bx, double by) {
        Point a = new Point(Math.round(ax * STEPS_PER_MM), Math.round(ay * STEPS_PER_MM));
        Point b = new Point(Math.round(bx * STEPS_PER_MM), Math.round(by * STEPS_PER_MM));
        return a.compareTo(b) <= 0 ? new Side(a, b) : new Side(b, a);
    }
}
