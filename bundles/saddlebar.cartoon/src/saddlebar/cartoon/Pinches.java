package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.distance.DistanceOp;

/**
 * Places where two lines were drawn to touch but their flattened steps pass each other a hair apart, so that two pieces hang together by
 * a thread: an arc tangent to a joint, for one. Found where the gap splits a face at a waist thinner than a hair; a link of that hair's
 * length is drawn across, and the net is made anew.
 */
final class Pinches {
    /** Source of a link: no drawn line. */
    static final int LINK = -1;

    private Pinches() {
    }

    /**
     * Links across the waists of one face.
     *
     * @param boundary of the face
     * @param left     what the gap leaves of it
     */
    static List<Stroke> links(Boundary boundary, Geometry left, double hairMm) {
        List<Stroke> links = new ArrayList<>();
        for (int i = 0; i < left.getNumGeometries(); i++) {
            for (int k = i + 1; k < left.getNumGeometries(); k++) {
                Coordinate[] way = DistanceOp.nearestPoints(left.getGeometryN(i), left.getGeometryN(k));
                Coordinate middle = new Coordinate((way[0].x + way[1].x) / 2, (way[0].y + way[1].y) / 2);
                link(sides(boundary, middle, way[0].distance(way[1]) / 2 + hairMm), hairMm, links);
            }
        }
        return links;
    }

    /** The shortest way between two sides of the waist, if it is a hair. */
    private static void link(List<LineString> sides, double hairMm, List<Stroke> links) {
        Coordinate[] shortest = null;
        for (int i = 0; i < sides.size(); i++) {
            for (int k = i + 1; k < sides.size(); k++) {
                Coordinate[] way = DistanceOp.nearestPoints(sides.get(i), sides.get(k));
                if (shortest == null || way[0].distance(way[1]) < shortest[0].distance(shortest[1])) {
                    shortest = way;
                }
            }
        }
        if (shortest != null && shortest[0].distance(shortest[1]) < hairMm && !shortest[0].equals2D(shortest[1])) {
            links.add(new Stroke(LINK, shortest));
        }
    }

    /** Stretches of the boundary within reach of a place, each one connected. */
    private static List<LineString> sides(Boundary boundary, Coordinate middle, double reach) {
        List<LineString> sides = new ArrayList<>();
        for (RingPath ring : boundary.rings()) {
            int start = 0;
            while (start < ring.size() && isNear(ring, start, middle, reach)) {
                start++;
            }
            List<Coordinate> side = new ArrayList<>();
            for (int i = 1; i <= ring.size(); i++) { // from an edge out of reach once round
                int edge = (start + i) % ring.size();
                if (start < ring.size() && isNear(ring, edge, middle, reach)) {
                    if (side.isEmpty()) {
                        side.add(new Coordinate(ring.x(edge), ring.y(edge)));
                    }
                    side.add(new Coordinate(ring.x(edge + 1), ring.y(edge + 1)));
                } else if (!side.isEmpty()) {
                    sides.add(CutNet.GEOMETRY.createLineString(side.toArray(new Coordinate[0])));
                    side.clear();
                }
            }
        }
        return sides;
    }

    private static boolean isNear(RingPath ring, int edge, Coordinate middle, double reach) {
        return RingPath.distanceToChord(ring.x(edge), ring.y(edge), ring.x(edge + 1), ring.y(edge + 1), middle.x, middle.y) <= reach;
    }
}
