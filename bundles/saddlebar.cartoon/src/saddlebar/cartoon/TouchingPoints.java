package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** Places where the edge of a face meets itself in one point, so that the glass has no width there: a hole that touches the outer edge or another hole. */
final class TouchingPoints {
    private TouchingPoints() {
    }

    /** In the order of the rings; vertices of one noded net are equal to the bit. */
    static List<Coordinate> of(Polygon face) {
        if (face.getNumInteriorRing() == 0) {
            return List.of(); // a single ring of a valid polygon meets itself nowhere
        }
        Set<Coordinate> seen = new HashSet<>();
        Set<Coordinate> twice = new LinkedHashSet<>();
        take(face.getExteriorRing().getCoordinates(), seen, twice);
        for (int hole = 0; hole < face.getNumInteriorRing(); hole++) {
            take(face.getInteriorRingN(hole).getCoordinates(), seen, twice);
        }
        return new ArrayList<>(twice);
    }

    private static void take(Coordinate[] ring, Set<Coordinate> seen, Set<Coordinate> twice) {
        for (int i = 1; i < ring.length; i++) {
            if (!seen.add(ring[i])) {
                twice.add(ring[i]);
            }
        }
    }
}
