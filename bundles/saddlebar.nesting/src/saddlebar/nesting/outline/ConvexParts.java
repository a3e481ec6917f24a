package saddlebar.nesting.outline;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/**
 * A polygon as few convex parts: triangles of ears, then each diagonal that no corner needs is left out. At most four times as many parts as
 * the least.
 *
 * <p>Source: Hertel, S., Mehlhorn, K. (1983). Fast triangulation of simple polygons. FCT, LNCS 158, 207-218.
 */
final class ConvexParts {
    private ConvexParts() {
    }

    /** Parts of a simple polygon without holes, each a ring of corners with positive area (x to y), not closed. */
    static List<Coordinate[]> of(Polygon polygon) {
        Geometry triangles = PolygonTriangulator.triangulate(polygon);
        List<Coordinate[]> parts = new ArrayList<>();
        for (int i = 0; i < triangles.getNumGeometries(); i++) {
            Coordinate[] t = triangles.getGeometryN(i).getCoordinates();
            double turn = cross(t[0], t[1], t[2]);
            if (turn != 0) {
                parts.add(turn > 0 ? new Coordinate[] {t[0], t[1], t[2]} : new Coordinate[] {t[0], t[2], t[1]});
            }
        }
        for (int a = 0; a < parts.size(); a++) {
            for (int b = a + 1; b < parts.size(); b++) {
                Coordinate[] joined = joined(parts.get(a), parts.get(b));
                if (joined != null) {
                    parts.set(a, joined);
                    parts.remove(b);
                    b = a; // the larger part may now take what it could not before
                }
            }
        }
        return parts;
    }

    /** Two parts as one, if they share an edge and are convex together; else null. */
    private static Coordinate[] joined(Coordinate[] a, Coordinate[] b) {
        for (int i = 0; i < a.length; i++) {
            Coordinate from = a[i];
            Coordinate to = a[(i + 1) % a.length];
            for (int j = 0; j < b.length; j++) {
                if (b[j].equals2D(to) && b[(j + 1) % b.length].equals2D(from)) {
                    Coordinate[] ring = new Coordinate[a.length + b.length - 2];
                    for (int k = 0; k < a.length; k++) {
                        ring[k] = a[(i + 1 + k) % a.length]; // from "to" round to "from"
                    }
                    for (int k = 0; k < b.length - 2; k++) {
                        ring[a.length + k] = b[(j + 2 + k) % b.length];
                    }
                    return isConvexAt(ring, 0) && isConvexAt(ring, a.length - 1) ? ring : null;
                }
            }
        }
        return null;
    }

    private static boolean isConvexAt(Coordinate[] ring, int i) {
        return cross(ring[(i + ring.length - 1) % ring.length], ring[i], ring[(i + 1) % ring.length]) >= 0;
    }

    private static double cross(Coordinate a, Coordinate b, Coordinate c) {
        return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
    }
}
