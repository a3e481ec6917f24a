package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * All edges of a polygon as flat arrays, turned so that the inside lies to the left of each edge in the sense of rising angles (x towards
 * y), with a tree of boxes over runs of edges. Edges follow each other along a ring, so that runs are compact and the tree needs no
 * sorting. One query costs O(log n) for ordinary shapes.
 */
final class Boundary {
    private static final int FAN = 8;

    private final List<RingPath> rings = new ArrayList<>();
    private final int[] ringStart;
    private final int edges;
    private final double[] x0;
    private final double[] y0;
    private final double[] x1;
    private final double[] y1;
    /** Boxes minX, minY, maxX, maxY: level 0 over {@value #FAN} edges each, each further level over {@value #FAN} of the one below. */
    private final List<double[]> levels = new ArrayList<>();

    /** The nearest place of the boundary that a query found. */
    static final class Nearest {
        double distance;
        double x;
        double y;
        int edge = -1;
    }

    Boundary(Polygon polygon) {
        rings.add(new RingPath(turned(polygon.getExteriorRing(), true)));
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            rings.add(new RingPath(turned(polygon.getInteriorRingN(i), false)));
        }
        edges = rings.stream().mapToInt(RingPath::size).sum();
        ringStart = new int[rings.size()];
        x0 = new double[edges];
        y0 = new double[edges];
        x1 = new double[edges];
        y1 = new double[edges];
        int edge = 0;
        for (int r = 0; r < rings.size(); r++) {
            RingPath ring = rings.get(r);
            ringStart[r] = edge;
            for (int i = 0; i < ring.size(); i++, edge++) {
                x0[edge] = ring.x(i);
                y0[edge] = ring.y(i);
                x1[edge] = ring.x(i + 1);
                y1[edge] = ring.y(i + 1);
            }
        }
        buildLevels();
    }

    private static Coordinate[] turned(LineString ring, boolean positive) {
        Coordinate[] points = ring.getCoordinates();
        // the library's signed area is positive for rings that turn from y towards x
        return Area.ofRingSigned(points) < 0 == positive ? points : ring.reverse().getCoordinates();
    }

    private void buildLevels() {
        int count = (edges + FAN - 1) / FAN;
        double[] boxes = emptyBoxes(count);
        for (int edge = 0; edge < edges; edge++) {
            int at = edge / FAN * 4;
            widen(boxes, at, Math.min(x0[edge], x1[edge]), Math.min(y0[edge], y1[edge]), Math.max(x0[edge], x1[edge]),
                    Math.max(y0[edge], y1[edge]));
        }
        levels.add(boxes);
        while (count > 1) {
            double[] below = levels.get(levels.size() - 1);
            int above = (count + FAN - 1) / FAN;
            double[] wider = emptyBoxes(above);
            for (int i = 0; i < count; i++) {
                widen(wider, i / FAN * 4, below[4 * i], below[4 * i + 1], below[4 * i + 2], below[4 * i + 3]);
            }
            levels.add(wider);
            count = above;
        }
    }

    private static double[] emptyBoxes(int count) {
        double[] boxes = new double[4 * count];
        for (int i = 0; i < boxes.length; i++) {
            boxes[i] = i % 4 < 2 ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
        }
        return boxes;
    }

    private static void widen(double[] boxes, int at, double minX, double minY, double maxX, double maxY) {
        boxes[at] = Math.min(boxes[at], minX);
        boxes[at + 1] = Math.min(boxes[at + 1], minY);
        boxes[at + 2] = Math.max(boxes[at + 2], maxX);
        boxes[at + 3] = Math.max(boxes[at + 3], maxY);
    }

    /** The outer ring first, then the holes; inside to the left of each. */
    List<RingPath> rings() {
        return rings;
    }

    int edges() {
        return edges;
    }

    double minX() {
        return root(0);
    }

    double minY() {
        return root(1);
    }

    double maxX() {
        return root(2);
    }

    double maxY() {
        return root(3);
    }

    private double root(int which) {
        return levels.get(levels.size() - 1)[which];
    }

    /** Nearest place of the boundary within {@code within}; edge -1 if none is that near. */
    Nearest nearest(double px, double py, double within) {
        var nearest = new Nearest();
        nearest.distance = within * within;
        search(levels.size() - 1, 0, px, py, nearest);
        nearest.distance = nearest.edge < 0 ? within : Math.sqrt(nearest.distance);
        return nearest;
    }

    private void search(int level, int box, double px, double py, Nearest nearest) {
        double[] boxes = levels.get(level);
        if (boxDistance(boxes, 4 * box, px, py) >= nearest.distance) {
            return;
        }
        int most = level == 0 ? edges : levels.get(level - 1).length / 4;
        for (int child = FAN * box; child < Math.min(most, FAN * (box + 1)); child++) {
            if (level == 0) {
                measure(child, px, py, nearest);
            } else {
                search(level - 1, child, px, py, nearest);
            }
        }
    }

    private void measure(int edge, double px, double py, Nearest nearest) {
        double dx = x1[edge] - x0[edge];
        double dy = y1[edge] - y0[edge];
        double t = ((px - x0[edge]) * dx + (py - y0[edge]) * dy) / (dx * dx + dy * dy);
        double fx = t <= 0 ? x0[edge] : t >= 1 ? x1[edge] : x0[edge] + t * dx;
        double fy = t <= 0 ? y0[edge] : t >= 1 ? y1[edge] : y0[edge] + t * dy;
        double square = (px - fx) * (px - fx) + (py - fy) * (py - fy);
        if (square < nearest.distance) {
            nearest.distance = square;
            nearest.x = fx;
            nearest.y = fy;
            nearest.edge = edge;
        }
    }

    private static double boxDistance(double[] boxes, int at, double px, double py) {
        double dx = Math.max(0, Math.max(boxes[at] - px, px - boxes[at + 2]));
        double dy = Math.max(0, Math.max(boxes[at + 1] - py, py - boxes[at + 3]));
        return dx * dx + dy * dy;
    }

    /** Foot points on all edges within {@code within} of a point, each as {distance, foot x, foot y}. */
    List<double[]> feet(double px, double py, double within) {
        var feet = new ArrayList<double[]>();
        collect(levels.size() - 1, 0, px, py, within * within, feet);
        return feet;
    }

    private void collect(int level, int box, double px, double py, double square, List<double[]> feet) {
        if (boxDistance(levels.get(level), 4 * box, px, py) > square) {
            return;
        }
        int most = level == 0 ? edges : levels.get(level - 1).length / 4;
        for (int child = FAN * box; child < Math.min(most, FAN * (box + 1)); child++) {
            if (level > 0) {
                collect(level - 1, child, px, py, square, feet);
                continue;
            }
            var nearest = new Nearest();
            nearest.distance = Math.nextUp(square);
            measure(child, px, py, nearest);
            if (nearest.edge >= 0) {
                feet.add(new double[] {Math.sqrt(nearest.distance), nearest.x, nearest.y});
            }
        }
    }

    /** Distance to the boundary, positive inside, negative outside. */
    double clearance(double px, double py) {
        double distance = nearest(px, py, Double.MAX_VALUE / 4).distance;
        return isInside(px, py) ? distance : -distance;
    }

    /** Whether a ray to the right crosses the boundary an odd number of times. */
    boolean isInside(double px, double py) {
        return (crossings(levels.size() - 1, 0, px, py) & 1) == 1;
    }

    private int crossings(int level, int box, double px, double py) {
        double[] boxes = levels.get(level);
        int at = 4 * box;
        if (py < boxes[at + 1] || py > boxes[at + 3] || px > boxes[at + 2]) {
            return 0;
        }
        int count = 0;
        int most = level == 0 ? edges : levels.get(level - 1).length / 4;
        for (int child = FAN * box; child < Math.min(most, FAN * (box + 1)); child++) {
            if (level > 0) {
                count += crossings(level - 1, child, px, py);
            } else if (y0[child] > py != y1[child] > py
                    && px < x0[child] + (py - y0[child]) / (y1[child] - y0[child]) * (x1[child] - x0[child])) {
                count++;
            }
        }
        return count;
    }
}
