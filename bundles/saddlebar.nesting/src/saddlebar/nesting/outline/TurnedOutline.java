package saddlebar.nesting.outline;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/**
 * An item's outline and the angles to be tried.
 *
 * @param outline exact
 * @param guard   holds the outline, with fewer corners; or the outline itself
 * @param copies  how many
 * @param angles  in degrees
 */
public record TurnedOutline(Polygon outline, Polygon guard, int copies, double[] angles) {
    Polygon exact(double angleDeg) {
        return turned(outline, angleDeg);
    }

    Polygon guarded(double angleDeg) {
        return turned(guard, angleDeg);
    }

    private static Polygon turned(Polygon outline, double angleDeg) {
        double cos = cos(angleDeg);
        double sin = cos(angleDeg - 90);
        Coordinate[] drawn = outline.getExteriorRing().getCoordinates(); // the outline's own array: only to be read
        Coordinate[] ring = new Coordinate[drawn.length];
        for (int i = 0; i < ring.length; i++) {
            ring[i] = new Coordinate(drawn[i].x * cos - drawn[i].y * sin, drawn[i].x * sin + drawn[i].y * cos);
        }
        ring[ring.length - 1] = ring[0].copy();
        return outline.getFactory().createPolygon(ring);
    }

    /** Exact at whole quarters, and the same on every machine. */
    private static double cos(double angleDeg) {
        double within = ((angleDeg % 360) + 360) % 360;
        if (within % 90 == 0) {
            return within == 0 ? 1 : within == 180 ? -1 : 0;
        }
        return StrictMath.cos(StrictMath.toRadians(within));
    }
}
