package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;

/** One ring of a face with each edge moved inwards by its own distance; edges that vanish on the way are left out. See {@link GlassInset}. */
final class MovedRing {
    private final List<GlassInset.Edge> edges = new ArrayList<>();

    MovedRing(RingPath ring, GlassInset.Distances distances) {
        for (int i = 0; i < ring.size(); i++) {
            edges.add(GlassInset.Edge.of(ring, i, distances));
        }
    }

    /** The closed ring, first point repeated; empty if this simple way cannot tell. */
    List<Coordinate> points() {
        while (edges.size() >= 3) {
            List<List<Coordinate>> joints = new ArrayList<>(edges.size());
            for (int i = 0; i < edges.size(); i++) {
                List<Coordinate> joint = GlassInset.Edge.joint(edges.get(Math.floorMod(i - 1, edges.size())), edges.get(i));
                if (joint.isEmpty()) {
                    return List.of();
                }
                joints.add(joint);
            }
            int vanished = firstVanished(joints);
            if (vanished < 0) {
                return closed(joints);
            }
            edges.remove(vanished);
        }
        return List.of();
    }

    /** The edge that vanishes first when all distances grow together; -1 if none does. */
    private int firstVanished(List<List<Coordinate>> joints) {
        int first = -1;
        double earliest = Double.MAX_VALUE;
        for (int i = 0; i < edges.size(); i++) {
            GlassInset.Edge edge = edges.get(i);
            List<Coordinate> start = joints.get(i);
            double left = edge.along(start.get(start.size() - 1), joints.get((i + 1) % edges.size()).get(0));
            if (left <= 0) {
                double length = edge.from().distance(edge.to());
                double when = length / (length - left); // share of the distances at which nothing is left
                if (when < earliest) {
                    earliest = when;
                    first = i;
                }
            }
        }
        return first;
    }

    private static List<Coordinate> closed(List<List<Coordinate>> joints) {
        var points = new ArrayList<Coordinate>(joints.size() + 1);
        for (List<Coordinate> joint : joints) {
            for (Coordinate point : joint) {
                if (points.isEmpty() || !points.get(points.size() - 1).equals2D(point)) {
                    points.add(point);
                }
            }
        }
        if (!points.isEmpty() && !points.get(0).equals2D(points.get(points.size() - 1))) {
            points.add(points.get(0).copy());
        }
        return points;
    }
}
