package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.List;

/**
 * Sharp corners of a piece. The angle at a vertex is taken between the points {@value #WINDOW_MM} mm along the edge to either side, not
 * between flattened steps: exact for straight sides, the mean over that stretch for curved ones, and blind to what is smaller than it.
 * Of vertices that belong to one point only the sharpest is told.
 */
final class NeedlePoints {
    static final double WINDOW_MM = 2;

    /**
     * @param angleDeg interior angle
     * @param ring     index of the ring
     * @param along    place on that ring
     */
    record Needle(double x, double y, double angleDeg, int ring, double along) {
    }

    private NeedlePoints() {
    }

    /** Corners sharper than {@code limitDeg}, along each ring. */
    static List<Needle> of(Boundary boundary, double limitDeg) {
        var needles = new ArrayList<Needle>();
        for (int r = 0; r < boundary.rings().size(); r++) {
            collect(boundary.rings().get(r), r, limitDeg, needles);
        }
        return needles;
    }

    private static void collect(RingPath ring, int index, double limitDeg, List<Needle> needles) {
        double window = Math.min(WINDOW_MM, ring.length() / 8);
        int first = needles.size();
        for (int i = 0; i < ring.size(); i++) {
            double angle = interiorAngleDeg(ring, i, window);
            if (angle >= limitDeg) {
                continue;
            }
            var needle = new Needle(ring.x(i), ring.y(i), angle, index, ring.along(i));
            int last = needles.size() - 1;
            if (last >= first && ring.apart(needles.get(last).along, needle.along) < 2 * window) {
                if (needle.angleDeg < needles.get(last).angleDeg) {
                    needles.set(last, needle);
                }
            } else {
                needles.add(needle);
            }
        }
        int last = needles.size() - 1; // the first and the last may be one point across the ring's start
        if (last > first && ring.apart(needles.get(first).along, needles.get(last).along) < 2 * window) {
            needles.remove(needles.get(first).angleDeg < needles.get(last).angleDeg ? last : first);
        }
    }

    /** Angle inside the face at a vertex, 0 to 360, between points a window away on the ring. */
    static double interiorAngleDeg(RingPath ring, int vertex, double windowMm) {
        double[] before = new double[2];
        double[] after = new double[2];
        ring.pointFrom(vertex, -windowMm, before);
        ring.pointFrom(vertex, windowMm, after);
        double ux = before[0] - ring.x(vertex);
        double uy = before[1] - ring.y(vertex);
        double vx = after[0] - ring.x(vertex);
        double vy = after[1] - ring.y(vertex);
        double angle = Math.toDegrees(Math.atan2(vx * uy - vy * ux, vx * ux + vy * uy));
        return angle < 0 ? angle + 360 : angle;
    }
}
