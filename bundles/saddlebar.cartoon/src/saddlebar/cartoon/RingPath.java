package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;

/** A closed ring measured along its length, so that its shape can be judged over a stretch and not from one flattened step to the next. */
final class RingPath {
    private final int size;
    private final double[] x;
    private final double[] y;
    private final double[] along;

    /** @param ring first point repeated at the end */
    RingPath(Coordinate[] ring) {
        size = ring.length - 1;
        x = new double[size + 1];
        y = new double[size + 1];
        along = new double[size + 1];
        for (int i = 0; i <= size; i++) {
            x[i] = ring[i].x;
            y[i] = ring[i].y;
            along[i] = i == 0 ? 0 : along[i - 1] + Math.hypot(x[i] - x[i - 1], y[i] - y[i - 1]);
        }
    }

    /** Number of vertices, which is that of edges. */
    int size() {
        return size;
    }

    double x(int vertex) {
        return x[Math.floorMod(vertex, size)];
    }

    double y(int vertex) {
        return y[Math.floorMod(vertex, size)];
    }

    /** Length from the first vertex to this one, 0 to {@code size - 1}. */
    double along(int vertex) {
        return along[vertex];
    }

    double length() {
        return along[size];
    }

    /** Shorter way round between two places of the ring. */
    double apart(double alongA, double alongB) {
        double way = Math.abs(alongA - alongB);
        return Math.min(way, length() - way);
    }

    /** Point at {@code byMm} along the ring from a vertex, backwards if negative; at most once round. */
    void pointFrom(int vertex, double byMm, double[] point) {
        double target = along[vertex] + byMm;
        int edge = vertex;
        if (byMm >= 0) {
            double turn = 0;
            while (turn + along[edge + 1] < target) {
                edge++;
                if (edge == size) {
                    edge = 0;
                    turn += along[size];
                }
            }
            interpolate(edge, target - turn, point);
            return;
        }
        double turn = 0;
        edge = vertex - 1;
        while (true) {
            if (edge < 0) {
                edge += size;
                turn -= along[size];
            }
            if (along[edge] + turn <= target) {
                interpolate(edge, target - turn, point);
                return;
            }
            edge--;
        }
    }

    private void interpolate(int edge, double at, double[] point) {
        double length = along[edge + 1] - along[edge];
        double t = length == 0 ? 0 : Math.max(0, Math.min(1, (at - along[edge]) / length));
        point[0] = x[edge] + t * (x[edge + 1] - x[edge]);
        point[1] = y[edge] + t * (y[edge + 1] - y[edge]);
    }

    /**
     * Vertices of a coarser ring that runs within {@code toleranceMm} of this one, ascending (Douglas, D., Peucker, T., 1973, started
     * from the leftmost vertex and the one farthest from it).
     */
    int[] coarser(double toleranceMm) {
        int start = 0;
        for (int i = 1; i < size; i++) {
            if (x[i] < x[start] || x[i] == x[start] && y[i] < y[start]) {
                start = i;
            }
        }
        int far = start;
        double most = -1;
        for (int i = 0; i < size; i++) {
            double distance = Math.hypot(x[i] - x[start], y[i] - y[start]);
            if (distance > most) {
                most = distance;
                far = i;
            }
        }
        boolean[] kept = new boolean[size];
        kept[start] = true;
        kept[far] = true;
        List<int[]> open = new ArrayList<>();
        open.add(new int[] {start, far < start ? far + size : far});
        open.add(new int[] {far, start < far ? start + size : start});
        while (!open.isEmpty()) {
            int[] stretch = open.remove(open.size() - 1);
            int farthest = farthest(stretch[0], stretch[1], toleranceMm);
            if (farthest >= 0) {
                kept[farthest % size] = true;
                open.add(new int[] {stretch[0], farthest});
                open.add(new int[] {farthest, stretch[1]});
            }
        }
        int[] vertices = new int[size];
        int count = 0;
        for (int i = 0; i < size; i++) {
            if (kept[i]) {
                vertices[count++] = i;
            }
        }
        return Arrays.copyOf(vertices, count);
    }

    private int farthest(int from, int to, double toleranceMm) {
        double most = toleranceMm;
        int farthest = -1;
        for (int i = from + 1; i < to; i++) {
            double distance = distanceToChord(x(from), y(from), x(to), y(to), x(i), y(i));
            if (distance > most) {
                most = distance;
                farthest = i;
            }
        }
        return farthest;
    }

    /** Distance of a point to the straight segment from a to b. */
    static double distanceToChord(double ax, double ay, double bx, double by, double px, double py) {
        double dx = bx - ax;
        double dy = by - ay;
        double square = dx * dx + dy * dy;
        double t = square == 0 ? 0 : Math.max(0, Math.min(1, ((px - ax) * dx + (py - ay) * dy) / square));
        return Math.hypot(px - ax - t * dx, py - ay - t * dy);
    }
}
