package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

import saddlebar.model.work.Work;

/**
 * Joints that run straight across the panel: a panel without a bar folds along them. Joints are followed through every crossing into
 * the joint that goes on straightest (at most {@value #MOST_TURN_DEG} degrees off, each joint taken once); crossings nearer to each other
 * than the deviation allowed count as one, so that a joint may step aside by that much. Along each path the longest stretch whose points
 * all lie within the deviation of the chord between its ends is held against the panel's extent in the direction of the chord.
 * O(n log n) for paths of bounded bends.
 */
final class Hinges {
    private static final double MOST_TURN_DEG = 30;
    /** How far along a joint its direction at a crossing is taken. */
    private static final double DIRECTION_MM = 10;

    private final Sides sides;
    private final double deviationMm;
    /** Chains of inner sides between crossings, as vertices. */
    private final List<int[]> chains = new ArrayList<>();
    private final int[] cluster;

    /** A stretch that folds: its middle, its length and its share of the panel's extent. */
    record Hinge(double x, double y, double lengthMm, double share) {
    }

    /** One end of a chain at a crossing with its direction away from the crossing. */
    private record ChainEnd(int chain, boolean atStart, int crossing, double ux, double uy) {
        int key() {
            return 2 * chain + (atStart ? 0 : 1);
        }
    }

    private Hinges(Sides sides, double deviationMm) {
        this.sides = sides;
        this.deviationMm = deviationMm;
        this.cluster = new int[sides.vertexCount()];
        Arrays.setAll(cluster, vertex -> vertex);
    }

    /** Hinges longest first. */
    static List<Hinge> of(Sides sides, Geometry panel, double share, double deviationMm, Work work) {
        var hinges = new Hinges(sides, deviationMm);
        hinges.chain();
        work.checkpoint();
        Coordinate[] hull = panel.convexHull().getCoordinates();
        List<Hinge> found = new ArrayList<>();
        for (List<Coordinate> path : hinges.paths()) {
            work.checkpoint();
            hinges.straightest(path, hull, share, found);
        }
        found.sort(Comparator.comparingDouble(Hinge::lengthMm).reversed().thenComparingDouble(Hinge::y).thenComparingDouble(Hinge::x));
        return found;
    }

    // ---- chains between crossings

    private void chain() {
        int vertices = sides.vertexCount();
        int[] start = new int[vertices + 1];
        for (int side = 0; side < sides.sideCount(); side++) {
            if (sides.isInner(side)) {
                start[sides.from(side) + 1]++;
                start[sides.to(side) + 1]++;
            }
        }
        for (int vertex = 0; vertex < vertices; vertex++) {
            start[vertex + 1] += start[vertex];
        }
        int[] fill = start.clone();
        int[] around = new int[start[vertices]];
        for (int side = 0; side < sides.sideCount(); side++) {
            if (sides.isInner(side)) {
                around[fill[sides.from(side)]++] = side;
                around[fill[sides.to(side)]++] = side;
            }
        }
        boolean[] walked = new boolean[sides.sideCount()];
        for (int vertex = 0; vertex < vertices; vertex++) {
            if (start[vertex + 1] - start[vertex] != 2) {
                for (int i = start[vertex]; i < start[vertex + 1]; i++) {
                    if (!walked[around[i]]) {
                        chains.add(walk(vertex, around[i], start, around, walked));
                    }
                }
            }
        }
        for (int[] chain : chains) {
            if (length(chain) <= deviationMm) {
                join(chain[0], chain[chain.length - 1]);
            }
        }
    }

    private int[] walk(int first, int firstSide, int[] start, int[] around, boolean[] walked) {
        int[] chain = new int[8];
        int count = 0;
        int vertex = first;
        int side = firstSide;
        while (true) {
            if (count + 1 >= chain.length) {
                chain = Arrays.copyOf(chain, 2 * chain.length);
            }
            chain[count++] = vertex;
            walked[side] = true;
            vertex = sides.from(side) == vertex ? sides.to(side) : sides.from(side);
            if (start[vertex + 1] - start[vertex] != 2) {
                chain[count++] = vertex;
                return Arrays.copyOf(chain, count);
            }
            side = around[start[vertex]] == side ? around[start[vertex] + 1] : around[start[vertex]];
        }
    }

    private double length(int[] chain) {
        double length = 0;
        for (int i = 0; i + 1 < chain.length; i++) {
            length += Math.hypot(sides.x(chain[i + 1]) - sides.x(chain[i]), sides.y(chain[i + 1]) - sides.y(chain[i]));
        }
        return length;
    }

    // ---- paths through crossings

    private List<List<Coordinate>> paths() {
        int[] next = pairs();
        List<List<Coordinate>> paths = new ArrayList<>();
        boolean[] used = new boolean[chains.size()];
        for (int pass = 0; pass < 2; pass++) { // paths with ends first, then what is left: rings
            for (int chain = 0; chain < chains.size(); chain++) {
                for (int end = 0; end < 2; end++) {
                    if (!used[chain] && length(chains.get(chain)) > deviationMm && (pass == 1 || next[2 * chain + end] < 0)) {
                        paths.add(follow(2 * chain + end, next, used));
                    }
                }
            }
        }
        return paths;
    }

    private List<Coordinate> follow(int firstEnd, int[] next, boolean[] used) {
        List<Coordinate> path = new ArrayList<>();
        int end = firstEnd;
        while (end >= 0 && !used[end / 2]) {
            int[] chain = chains.get(end / 2);
            used[end / 2] = true;
            for (int i = 0; i < chain.length; i++) {
                int vertex = chain[end % 2 == 0 ? i : chain.length - 1 - i];
                path.add(new Coordinate(sides.x(vertex), sides.y(vertex)));
            }
            end = next[end ^ 1];
        }
        return path;
    }

    /** For each chain end (2 x chain, and 1 more for its last vertex) the chain end it goes on into; -1 if none. */
    private int[] pairs() {
        List<ChainEnd> ends = new ArrayList<>();
        for (int chain = 0; chain < chains.size(); chain++) {
            if (length(chains.get(chain)) > deviationMm) {
                ends.add(end(chain, true));
                ends.add(end(chain, false));
            }
        }
        ends.sort(Comparator.comparingInt(ChainEnd::crossing).thenComparingInt(ChainEnd::key));
        int[] next = new int[2 * chains.size()];
        Arrays.fill(next, -1);
        for (int from = 0; from < ends.size();) {
            int to = from;
            while (to < ends.size() && ends.get(to).crossing == ends.get(from).crossing) {
                to++;
            }
            pair(ends.subList(from, to), next);
            from = to;
        }
        return next;
    }

    private static void pair(List<ChainEnd> here, int[] next) {
        double straightest = -Math.cos(Math.toRadians(MOST_TURN_DEG));
        while (true) { // crossings have few ends
            ChainEnd a = null;
            ChainEnd b = null;
            double best = straightest;
            for (int i = 0; i < here.size(); i++) {
                for (int j = i + 1; j < here.size(); j++) {
                    ChainEnd p = here.get(i);
                    ChainEnd q = here.get(j);
                    double cosine = p.ux * q.ux + p.uy * q.uy;
                    if (next[p.key()] < 0 && next[q.key()] < 0 && p.chain != q.chain && cosine < best) {
                        best = cosine;
                        a = p;
                        b = q;
                    }
                }
            }
            if (a == null || b == null) {
                return;
            }
            next[a.key()] = b.key();
            next[b.key()] = a.key();
        }
    }

    private ChainEnd end(int index, boolean atStart) {
        int[] chain = chains.get(index);
        int crossing = chain[atStart ? 0 : chain.length - 1];
        double length = 0;
        double dx = 0;
        double dy = 0;
        for (int i = 1; i < chain.length && length < DIRECTION_MM; i++) {
            int vertex = chain[atStart ? i : chain.length - 1 - i];
            int before = chain[atStart ? i - 1 : chain.length - i];
            length += Math.hypot(sides.x(vertex) - sides.x(before), sides.y(vertex) - sides.y(before));
            dx = sides.x(vertex) - sides.x(crossing);
            dy = sides.y(vertex) - sides.y(crossing);
        }
        double norm = Math.max(Math.hypot(dx, dy), 1e-9);
        return new ChainEnd(index, atStart, root(crossing), dx / norm, dy / norm);
    }

    // ---- straight stretches

    private void straightest(List<Coordinate> path, Coordinate[] hull, double share, List<Hinge> found) {
        Coordinate[] points = simplified(path);
        int from = 0;
        while (from + 1 < points.length) {
            int to = from + 1;
            while (to + 1 < points.length && isStraight(points, from, to + 1)) {
                to++;
            }
            Coordinate a = points[from];
            Coordinate b = points[to];
            double length = a.distance(b);
            double extent = extent(hull, (b.x - a.x) / length, (b.y - a.y) / length);
            if (length > share * extent) {
                found.add(new Hinge((a.x + b.x) / 2, (a.y + b.y) / 2, length, Math.min(1, length / extent)));
                from = to;
            } else {
                from++;
            }
        }
    }

    private Coordinate[] simplified(List<Coordinate> path) {
        List<Coordinate> distinct = new ArrayList<>();
        for (Coordinate point : path) {
            if (distinct.isEmpty() || !distinct.get(distinct.size() - 1).equals2D(point)) {
                distinct.add(point);
            }
        }
        boolean[] kept = new boolean[distinct.size()];
        kept[0] = true;
        kept[kept.length - 1] = true;
        List<int[]> open = new ArrayList<>();
        open.add(new int[] {0, kept.length - 1});
        while (!open.isEmpty()) {
            int[] stretch = open.remove(open.size() - 1);
            double most = deviationMm / 10;
            int farthest = -1;
            for (int i = stretch[0] + 1; i < stretch[1]; i++) {
                double distance = toChord(distinct.get(stretch[0]), distinct.get(stretch[1]), distinct.get(i));
                if (distance > most) {
                    most = distance;
                    farthest = i;
                }
            }
            if (farthest >= 0) {
                kept[farthest] = true;
                open.add(new int[] {stretch[0], farthest});
                open.add(new int[] {farthest, stretch[1]});
            }
        }
        List<Coordinate> simple = new ArrayList<>();
        for (int i = 0; i < kept.length; i++) {
            if (kept[i]) {
                simple.add(distinct.get(i));
            }
        }
        return simple.toArray(new Coordinate[0]);
    }

    private boolean isStraight(Coordinate[] points, int from, int to) {
        for (int i = from + 1; i < to; i++) {
            if (toChord(points[from], points[to], points[i]) > deviationMm) {
                return false;
            }
        }
        return true;
    }

    private static double toChord(Coordinate a, Coordinate b, Coordinate point) {
        return RingPath.distanceToChord(a.x, a.y, b.x, b.y, point.x, point.y);
    }

    /** Extent of the panel in a direction. */
    private static double extent(Coordinate[] hull, double ux, double uy) {
        double least = Double.MAX_VALUE;
        double most = -Double.MAX_VALUE;
        for (Coordinate corner : hull) {
            double at = corner.x * ux + corner.y * uy;
            least = Math.min(least, at);
            most = Math.max(most, at);
        }
        return most - least;
    }

    private void join(int a, int b) {
        cluster[root(a)] = root(b);
    }

    private int root(int vertex) {
        int at = vertex;
        while (cluster[at] != at) {
            cluster[at] = cluster[cluster[at]];
            at = cluster[at];
        }
        return at;
    }
}
