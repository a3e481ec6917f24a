package saddlebar.nesting.outline;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/**
 * A polygon with fewer corners that holds a given one. A hollow corner is left out, or two neighbouring edges are drawn out until they meet:
 * each time the cheapest such step in added area that moves the line by no more than a tolerance and meets no other corner. Tables of
 * overlaps for flattened curves become smaller by it; a layout of guards is a layout of what they guard.
 *
 * <p>Source: the two steps are those of Gardeyn et al. (2025), see {@link PlaceSearch}, section on simplification.
 */
public final class Guard {
    private static final int FEW = 24; // corners that cost little
    private static final double FINE = 0.002; // of the shape's size, down to FEW corners
    private static final double COARSE = 0.01; // down to MANY corners
    private static final int MANY = 60;

    private final List<Coordinate> ring;

    private Guard(List<Coordinate> ring) {
        this.ring = ring;
    }

    /** The polygon itself if it has few corners. */
    public static Polygon of(Polygon polygon) {
        if (polygon.getNumPoints() - 1 <= FEW) {
            return polygon;
        }
        Coordinate[] corners = polygon.getExteriorRing().getCoordinates();
        List<Coordinate> ring = new ArrayList<>();
        for (int i = 0; i < corners.length - 1; i++) {
            ring.add(new Coordinate(Orientation.isCCW(corners) ? corners[i] : corners[corners.length - 1 - i]));
        }
        double size = Math.sqrt(polygon.getArea());
        Guard guard = new Guard(ring);
        guard.reduce(FEW, FINE * size);
        guard.reduce(MANY, COARSE * size);
        List<Coordinate> closed = new ArrayList<>(guard.ring);
        closed.add(closed.get(0).copy());
        Polygon simple = polygon.getFactory().createPolygon(closed.toArray(new Coordinate[0]));
        return simple.isValid() ? simple : polygon;
    }

    private void reduce(int enough, double tolerance) {
        while (ring.size() > enough) {
            int best = -1;
            double bestArea = Double.POSITIVE_INFINITY;
            Coordinate bestTip = null;
            for (int i = 0; i < ring.size(); i++) {
                Coordinate tip = isHollow(i) ? null : tip(i);
                double area = isHollow(i) ? hollowArea(i, tolerance) : tipArea(i, tip, tolerance);
                if (area < bestArea) {
                    best = i;
                    bestArea = area;
                    bestTip = tip;
                }
            }
            if (best < 0) {
                return;
            }
            if (bestTip != null) {
                ring.set((best + 1) % ring.size(), bestTip);
            }
            ring.remove(best);
        }
    }

    private Coordinate at(int i) {
        return ring.get(Math.floorMod(i, ring.size()));
    }

    private boolean isHollow(int i) {
        return cross(at(i - 1), at(i), at(i + 1)) <= 0;
    }

    private double hollowArea(int i, double tolerance) {
        double area = -cross(at(i - 1), at(i), at(i + 1)) / 2;
        double base = at(i - 1).distance(at(i + 1));
        return base > 0 && 2 * area / base <= tolerance && isEmpty(at(i - 1), at(i + 1), at(i), i) ? area : Double.POSITIVE_INFINITY;
    }

    /** Where the edges before corner {@code i} and after corner {@code i + 1} meet beyond the edge between these; null if they do not. */
    private Coordinate tip(int i) {
        Coordinate a = at(i - 1);
        Coordinate b = at(i);
        Coordinate c = at(i + 1);
        Coordinate d = at(i + 2);
        double ux = b.x - a.x;
        double uy = b.y - a.y;
        double vx = c.x - d.x;
        double vy = c.y - d.y;
        double det = ux * vy - uy * vx;
        if (isHollow(i + 1) || det >= -1e-12 * (Math.abs(ux * vy) + Math.abs(uy * vx))) {
            return null; // for corners that turn the same way the two edges meet ahead only if their directions close in
        }
        double along = ((c.x - b.x) * vy - (c.y - b.y) * vx) / det;
        return along >= 0 ? new Coordinate(b.x + along * ux, b.y + along * uy) : null;
    }

    private double tipArea(int i, Coordinate tip, double tolerance) {
        if (tip == null || ring.size() < 4) {
            return Double.POSITIVE_INFINITY;
        }
        double area = Math.abs(cross(at(i), tip, at(i + 1))) / 2;
        double base = at(i).distance(at(i + 1));
        return base > 0 && 2 * area / base <= tolerance && isEmpty(at(i), tip, at(i + 1), i) ? area : Double.POSITIVE_INFINITY;
    }

    /** Does no other corner lie in the triangle that would be added? */
    private boolean isEmpty(Coordinate p, Coordinate q, Coordinate r, int i) {
        double turn = Math.signum(cross(p, q, r));
        for (int k = 0; k < ring.size(); k++) {
            Coordinate c = ring.get(k);
            if (c != at(i - 1) && c != at(i) && c != at(i + 1) && c != at(i + 2) && turn * cross(p, q, c) >= 0 && turn * cross(q, r, c) >= 0
                    && turn * cross(r, p, c) >= 0) {
                return false;
            }
        }
        return true;
    }

    private static double cross(Coordinate a, Coordinate b, Coordinate c) {
        return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
    }
}
