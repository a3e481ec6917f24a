package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Where glass would have to be taken out of a straight or hollow edge: the outer ring's inward stretches.
 *
 * <p><b>Bays.</b> The ring is made coarser to within {@value #SMOOTH_MM} mm, so that rounding does not count as a turn. A bay is a run of
 * vertices that turn inwards or go straight, with its two lips, the vertices at which the edge turns outwards again; and, for what is
 * deep only as a whole, each gap between the piece and its convex hull. Its ratio is depth / chord: depth of the ring's own points below
 * the chord. Within a run the chord with the largest ratio counts, from lip to lip or at least two least radii wide (a long straight arm
 * must not hide a hook at its end). Exact for a notch with corners; for smooth lips the chord is from turn to turn.
 *
 * <p><b>Tight places.</b> Radius of the circle through a vertex and the two points half a least radius along the ring from it: exact on
 * arcs longer than that stretch; a sharp inward corner that turns by t has s / (2 sin(t/2)) there.
 */
final class InsideCurves {
    private static final double SMOOTH_MM = 0.1;
    /** A turn below this is straight, degrees. */
    private static final double STRAIGHT_DEG = 1;
    private static final double LEAST_DEPTH_MM = 1;
    private static final double LEAST_CHORD_MM = 4;
    /** Runs with more vertices are thinned before all chords are tried. */
    private static final int MOST_LIPS = 48;

    /** Deepest point of a bay; {@code from} and {@code to} its lips as vertices of the ring, {@code to} may lie one turn further. */
    record Bay(double x, double y, double depthMm, double chordMm, int from, int to) {
        double ratio() {
            return depthMm / chordMm;
        }

        private boolean overlaps(Bay other, int size) {
            for (int turn = -size; turn <= size; turn += size) {
                if (from < other.to + turn && other.from + turn < to) {
                    return true;
                }
            }
            return false;
        }
    }

    /** The place of least radius in a tight stretch. */
    record Tight(double x, double y, double radiusMm) {
    }

    private InsideCurves() {
    }

    // ---- bays

    /** Bays deeper than {@code ratio}, deepest first; of overlapping ones the deepest. */
    static List<Bay> bays(RingPath ring, double ratio, double leastRadiusMm) {
        int[] coarse = ring.coarser(SMOOTH_MM);
        if (coarse.length < 4) {
            return List.of(); // a triangle has no inside
        }
        double leastChord = Math.max(LEAST_CHORD_MM, 2 * leastRadiusMm);
        var found = new ArrayList<Bay>();
        for (int[] run : inwardRuns(ring, coarse)) {
            add(found, deepest(ring, run, leastChord), ratio);
        }
        for (int[] gap : hullGaps(ring, coarse)) {
            add(found, bay(ring, gap[0], gap[1]), ratio);
        }
        found.sort(Comparator.comparingDouble(Bay::ratio).reversed().thenComparingDouble(Bay::y).thenComparingDouble(Bay::x));
        var apart = new ArrayList<Bay>();
        for (Bay bay : found) {
            if (apart.stream().noneMatch(deeper -> deeper.overlaps(bay, ring.size()))) {
                apart.add(bay);
            }
        }
        return apart;
    }

    private static void add(List<Bay> bays, Bay bay, double ratio) {
        if (bay.depthMm >= LEAST_DEPTH_MM && bay.chordMm >= LEAST_CHORD_MM && bay.ratio() > ratio) {
            bays.add(bay);
        }
    }

    /** Runs of coarse vertices from lip to lip, each with at least one inward turn between; the last may run past the ring's start. */
    private static List<int[]> inwardRuns(RingPath ring, int[] coarse) {
        int count = coarse.length;
        double[] turn = new double[count];
        int start = -1;
        for (int k = 0; k < count; k++) {
            turn[k] = turnDeg(ring, coarse[Math.floorMod(k - 1, count)], coarse[k], coarse[(k + 1) % count]);
            if (turn[k] > STRAIGHT_DEG && start < 0) {
                start = k;
            }
        }
        List<int[]> runs = new ArrayList<>();
        if (start < 0) {
            return runs;
        }
        int lip = start;
        boolean inward = false;
        for (int k = start + 1; k <= start + count; k++) {
            if (turn[k % count] > STRAIGHT_DEG) {
                if (inward) {
                    int[] run = new int[k - lip + 1];
                    for (int i = lip; i <= k; i++) {
                        run[i - lip] = coarse[i % count] + i / count * ring.size();
                    }
                    runs.add(run);
                }
                lip = k;
                inward = false;
            } else {
                inward |= turn[k % count] < -STRAIGHT_DEG;
            }
        }
        return runs;
    }

    /** Turn of the ring at b, degrees, positive outwards (the face lies to the left). */
    private static double turnDeg(RingPath ring, int a, int b, int c) {
        double ux = ring.x(b) - ring.x(a);
        double uy = ring.y(b) - ring.y(a);
        double vx = ring.x(c) - ring.x(b);
        double vy = ring.y(c) - ring.y(b);
        return Math.toDegrees(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy));
    }

    private static Bay deepest(RingPath ring, int[] run, double leastChord) {
        Bay deepest = bay(ring, run[0], run[run.length - 1]);
        int[] lips = run;
        if (run.length > MOST_LIPS) {
            lips = new int[MOST_LIPS];
            for (int i = 0; i < MOST_LIPS; i++) {
                lips[i] = run[(int) ((long) i * (run.length - 1) / (MOST_LIPS - 1))];
            }
        }
        for (int i = 0; i < lips.length; i++) {
            for (int j = i + 2; j < lips.length; j++) {
                double chord = Math.hypot(ring.x(lips[i]) - ring.x(lips[j]), ring.y(lips[i]) - ring.y(lips[j]));
                if (chord < leastChord) {
                    continue;
                }
                double depth = 0;
                for (int k = i + 1; k < j; k++) {
                    depth = Math.max(depth, below(ring, lips[i], lips[j], lips[k]));
                }
                if (depth > deepest.ratio() * chord) {
                    deepest = bay(ring, lips[i], lips[j]);
                }
            }
        }
        return deepest;
    }

    private static Bay bay(RingPath ring, int from, int to) {
        double depth = 0;
        int deepest = from;
        for (int i = from + 1; i < to; i++) {
            double below = below(ring, from, to, i);
            if (below > depth) {
                depth = below;
                deepest = i;
            }
        }
        double chord = Math.hypot(ring.x(from) - ring.x(to), ring.y(from) - ring.y(to));
        return new Bay(ring.x(deepest), ring.y(deepest), depth, Math.max(chord, 1e-6), from, to);
    }

    /** How far a vertex lies on the face's side of the line through two lips. */
    private static double below(RingPath ring, int from, int to, int vertex) {
        double dx = ring.x(to) - ring.x(from);
        double dy = ring.y(to) - ring.y(from);
        double length = Math.hypot(dx, dy);
        return length == 0 ? 0 : (dx * (ring.y(vertex) - ring.y(from)) - dy * (ring.x(vertex) - ring.x(from))) / length;
    }

    /** Stretches of the ring between neighbouring corners of its convex hull (Andrew, A. M., 1979), with vertices between them. */
    private static List<int[]> hullGaps(RingPath ring, int[] coarse) {
        Integer[] order = new Integer[coarse.length];
        Arrays.setAll(order, i -> coarse[i]);
        Arrays.sort(order, Comparator.<Integer>comparingDouble(i -> ring.x(i)).thenComparingDouble(i -> ring.y(i)));
        int[] hull = new int[2 * order.length + 2];
        int count = 0;
        for (int pass = 0; pass < 2; pass++) {
            int base = count + (pass == 0 ? 0 : 1);
            for (int i = 0; i < order.length; i++) {
                int vertex = order[pass == 0 ? i : order.length - 1 - i];
                while (count > base && count >= 2 && turnDeg(ring, hull[count - 2], hull[count - 1], vertex) <= 0) {
                    count--;
                }
                hull[count++] = vertex;
            }
            count--; // the last of a pass is the first of the next
        }
        List<int[]> gaps = new ArrayList<>();
        int[] corners = Arrays.copyOf(hull, count);
        Arrays.sort(corners);
        for (int i = 0; i < corners.length; i++) {
            int from = corners[i];
            int to = i + 1 < corners.length ? corners[i + 1] : corners[0] + ring.size();
            if (to - from > 1) {
                gaps.add(new int[] {from, to});
            }
        }
        return gaps;
    }

    // ---- tight places

    /** Stretches with a radius below the limit, each told at its tightest vertex. */
    static List<Tight> tight(RingPath ring, double leastRadiusMm) {
        double window = Math.min(leastRadiusMm / 2, ring.length() / 8);
        double limit = leastRadiusMm * 0.98; // a flattened arc of just the least radius measures up to 2 % less
        List<Tight> tight = new ArrayList<>();
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            double radius = inwardRadius(ring, i, window);
            if (radius >= limit) {
                continue;
            }
            int last = tight.size() - 1;
            var place = new Tight(ring.x(i), ring.y(i), radius);
            if (last >= 0 && ring.apart(places.get(last), ring.along(i)) < 2 * window) {
                places.set(last, ring.along(i)); // the stretch goes on
                if (radius < tight.get(last).radiusMm) {
                    tight.set(last, place);
                }
            } else {
                tight.add(place);
                places.add(ring.along(i));
            }
        }
        int last = tight.size() - 1;
        if (last > 0 && ring.apart(places.get(0), places.get(last)) < 2 * window) {
            tight.remove(tight.get(0).radiusMm < tight.get(last).radiusMm ? last : 0);
        }
        return tight;
    }

    /** Radius of the circle through a vertex and its two neighbours a window away; infinite where the ring goes straight or outwards. */
    private static double inwardRadius(RingPath ring, int vertex, double window) {
        double[] before = new double[2];
        double[] after = new double[2];
        ring.pointFrom(vertex, -window, before);
        ring.pointFrom(vertex, window, after);
        double ux = ring.x(vertex) - before[0];
        double uy = ring.y(vertex) - before[1];
        double vx = after[0] - ring.x(vertex);
        double vy = after[1] - ring.y(vertex);
        double cross = ux * vy - uy * vx;
        if (cross >= 0) {
            return Double.POSITIVE_INFINITY;
        }
        double chord = Math.hypot(after[0] - before[0], after[1] - before[1]);
        return Math.hypot(ux, uy) * Math.hypot(vx, vy) * chord / (-2 * cross);
    }
}
