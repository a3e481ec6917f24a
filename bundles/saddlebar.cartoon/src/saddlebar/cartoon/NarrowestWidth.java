package saddlebar.cartoon;

import java.util.Objects;

import org.locationtech.jts.geom.Polygon;

import saddlebar.model.problem.PlaceMm;
import saddlebar.model.units.Require;

/**
 * The narrowest place of a piece: the least diameter of a circle of the medial axis that touches two sides which face each other within 30 degrees.
 * The axis falls to nothing in every corner; that is no width, and tips sharper than 30 degrees are needle points. A piece without such a place is as
 * wide as the largest circle inside it. Exact for straight sides, to the flattening for curved ones; O(n log n).
 *
 * @param at      middle of the place
 * @param widthMm across it
 */
public record NarrowestWidth(PlaceMm at, double widthMm) {
    private static final double NEEDLE_DEG = 30;

    public NarrowestWidth {
        Objects.requireNonNull(at, "at");
        Require.within("widthMm", widthMm, 0, 1e6);
    }

    /** @param polygon any valid polygon with area, holes too; not changed */
    public static NarrowestWidth of(Polygon polygon) {
        Boundary boundary = new Boundary(polygon);
        NarrowPlaces.Narrow least = NarrowPlaces.least(boundary, InscribedCircle.of(polygon, boundary), NEEDLE_DEG);
        return new NarrowestWidth(new PlaceMm(least.x(), least.y()), least.widthMm());
    }
}
