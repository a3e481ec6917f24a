package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * What is left of a face when half the gap comes off its inner edges and the allowance off its outer ones: all points that lie at least
 * that far from each edge, measured square to the edge. Corners are mitred, so that a rectangle stays a rectangle; where the corner of a
 * neighbour points into the face the mitre is cut straight at {@value #MITRE_LIMIT} times the distance.
 *
 * <p>Two ways. Each edge is moved inwards and cut with its neighbours; an edge that turns round has vanished and leaves its neighbours to
 * meet (as in a straight skeleton, Aichholzer, O. et al., 1995, for events between neighbours). The result is taken if it is a valid
 * ring: O(n) and exact. It is not where the gap splits the face, eats it, or edges with and without gap meet almost straight: then the
 * strip beside each edge and the wedge at each corner are taken off by overlay, which knows no special case and costs some hundred times
 * as much.
 */
final class GlassInset {
    static final double MITRE_LIMIT = 2;
    /** Edges that meet straighter than this (sine) and have different distances are joined by a square step; so are all at inward corners. */
    private static final double STRAIGHT_SINE = 0.2;

    private GlassInset() {
    }

    /** Distances by which the edges of one ring move, in the order of the ring's edges as the polygon gives them. */
    interface Distances {
        double of(Coordinate from, Coordinate to);
    }

    /** One polygon, or several where the gap splits the face; empty where it eats it. */
    static Geometry of(Polygon face, Distances distances) {
        List<RingPath> rings = new Boundary(face).rings();
        Polygon simple = byMovedEdges(face, rings, distances);
        return simple != null ? simple : byStrips(face, rings, distances);
    }

    // ---- moved edges

    private static Polygon byMovedEdges(Polygon face, List<RingPath> rings, Distances distances) {
        LinearRing[] moved = new LinearRing[rings.size()];
        for (int i = 0; i < moved.length; i++) {
            List<Coordinate> points = new MovedRing(rings.get(i), distances).points();
            if (points.size() < 4) {
                return null;
            }
            moved[i] = CutNet.GEOMETRY.createLinearRing(points.toArray(new Coordinate[0]));
            if (signedArea(points) > 0 != (i == 0)) {
                return null;
            }
        }
        LinearRing[] holes = Arrays.copyOfRange(moved, 1, moved.length);
        Polygon glass = CutNet.GEOMETRY.createPolygon(moved[0], holes);
        return glass.getArea() > leastArea(face, rings, distances) && glass.isValid() ? glass : null;
    }

    /** What is left at least if no strip or wedge overlaps another: a ring that has lost more took a wrong turn where edges vanished. */
    private static double leastArea(Polygon face, List<RingPath> rings, Distances distances) {
        double taken = 0;
        for (RingPath ring : rings) {
            Edge before = Edge.of(ring, ring.size() - 1, distances);
            for (int i = 0; i < ring.size(); i++) {
                Edge edge = Edge.of(ring, i, distances);
                double most = Math.max(before.distance, edge.distance);
                double halfTurn = Math.sqrt(Math.max(0, (1 - before.dot(edge)) / (1 + before.dot(edge)))); // tangent of half the turn
                taken += edge.from.distance(edge.to) * edge.distance + most * most * Math.min(halfTurn, 6);
                before = edge;
            }
        }
        return face.getArea() - taken * (1 + 1e-9) - 1e-9;
    }

    private static double signedArea(List<Coordinate> ring) {
        double twice = 0;
        Coordinate origin = ring.get(0);
        for (int i = 1; i + 1 < ring.size(); i++) {
            Coordinate a = ring.get(i);
            Coordinate b = ring.get(i + 1);
            twice += (a.x - origin.x) * (b.y - origin.y) - (b.x - origin.x) * (a.y - origin.y);
        }
        return twice / 2;
    }

    // ---- strips

    static Geometry byStrips(Polygon face, List<RingPath> rings, Distances distances) {
        List<Geometry> strips = new ArrayList<>();
        for (RingPath ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                Edge edge = Edge.of(ring, i, distances);
                if (edge.distance > 0) {
                    add(strips, edge.from, edge.to, edge.moved(edge.to), edge.moved(edge.from));
                }
                wedge(strips, Edge.of(ring, i - 1, distances), edge);
            }
        }
        if (strips.isEmpty()) {
            return face.copy();
        }
        Geometry gap = OverlayNGRobust.union(CutNet.GEOMETRY.buildGeometry(strips));
        return OverlayNGRobust.overlay(face, gap, OverlayNG.DIFFERENCE);
    }

    /** The region at a corner that lies beyond the ends of both strips: between them at a neighbour's corner, or behind a bare edge. */
    private static void wedge(List<Geometry> strips, Edge before, Edge after) {
        Coordinate corner = after.from;
        if (before.cross(after) < 0 || before.distance != after.distance && before.dot(after) > 0) {
            List<Coordinate> joint = Edge.joint(before, after);
            Coordinate[] ring = new Coordinate[joint.size() + 4];
            ring[0] = corner;
            ring[1] = before.moved(corner);
            for (int i = 0; i < joint.size(); i++) {
                ring[2 + i] = joint.get(i);
            }
            ring[ring.length - 2] = after.moved(corner);
            ring[ring.length - 1] = corner;
            add(strips, ring);
        }
    }

    private static void add(List<Geometry> strips, Coordinate... corners) {
        Coordinate[] ring = corners;
        if (!corners[0].equals2D(corners[corners.length - 1])) {
            ring = Arrays.copyOf(corners, corners.length + 1);
            ring[corners.length] = corners[0].copy();
        }
        Polygon strip = CutNet.GEOMETRY.createPolygon(ring);
        if (strip.getArea() > 0) {
            strips.add(strip.isValid() ? strip : strip.convexHull());
        }
    }

    // ---- one edge and its joints

    /** An edge with its unit direction; inside to the left, moved left by its distance. */
    record Edge(Coordinate from, Coordinate to, double ux, double uy, double distance) {
        static Edge of(RingPath ring, int index, Distances distances) {
            var from = new Coordinate(ring.x(index), ring.y(index));
            var to = new Coordinate(ring.x(index + 1), ring.y(index + 1));
            double length = from.distance(to);
            return new Edge(from, to, (to.x - from.x) / length, (to.y - from.y) / length, distances.of(from, to));
        }

        double cross(Edge other) {
            return ux * other.uy - uy * other.ux;
        }

        double dot(Edge other) {
            return ux * other.ux + uy * other.uy;
        }

        Coordinate moved(Coordinate point) {
            return new Coordinate(point.x - uy * distance, point.y + ux * distance);
        }

        /** Length between the ends of a moved edge along its own direction; negative if it has turned round. */
        double along(Coordinate start, Coordinate end) {
            return (end.x - start.x) * ux + (end.y - start.y) * uy;
        }

        /**
         * Where two edges meet after moving: one point, or two where the corner is cut straight, or where a step joins them. Empty if
         * they run against each other and never meet.
         */
        static List<Coordinate> joint(Edge a, Edge b) {
            double cross = a.cross(b);
            double dot = a.dot(b);
            Coordinate corner = b.from;
            boolean adjoin = a.to.equals2D(corner);
            if (adjoin && a.distance == b.distance && dot > -0.99) {
                double stretch = a.distance / (1 + dot);
                double mitre = Math.sqrt(2 / (1 + dot));
                if (cross < 0 && mitre > MITRE_LIMIT) {
                    return cutStraight(a, b, corner);
                }
                return List.of(new Coordinate(corner.x - (a.uy + b.uy) * stretch, corner.y + (a.ux + b.ux) * stretch));
            }
            if (Math.abs(cross) < (a.distance == b.distance ? 1e-9 : STRAIGHT_SINE)) {
                return dot < 0 ? List.of() : List.of(a.moved(a.to), b.moved(corner));
            }
            if (adjoin && cross < 0) {
                return a.distance == b.distance ? cutStraight(a, b, corner) : List.of(a.moved(corner), b.moved(corner));
            }
            Coordinate onA = a.moved(a.to);
            Coordinate onB = b.moved(corner);
            double t = ((onB.x - onA.x) * b.uy - (onB.y - onA.y) * b.ux) / cross;
            return List.of(new Coordinate(onA.x + t * a.ux, onA.y + t * a.uy));
        }

        /** The end of a long mitre, cut square to its middle line. */
        private static List<Coordinate> cutStraight(Edge a, Edge b, Coordinate corner) {
            double most = Math.max(a.distance, b.distance);
            // middle line: from the corner into the face, between the two normals, which is also against the mean direction
            double mx = a.ux - b.ux;
            double my = a.uy - b.uy;
            double length = Math.hypot(mx, my);
            mx /= length;
            my /= length;
            return List.of(a.onMoved(corner, mx, my, MITRE_LIMIT * most), b.onMoved(corner, mx, my, MITRE_LIMIT * most));
        }

        /** Point of the moved edge's line that lies so far from the corner in direction m. */
        private Coordinate onMoved(Coordinate corner, double mx, double my, double far) {
            Coordinate start = moved(corner);
            double t = (far - (start.x - corner.x) * mx - (start.y - corner.y) * my) / (ux * mx + uy * my);
            return new Coordinate(start.x + t * ux, start.y + t * uy);
        }
    }
}
