package saddlebar.cartoon;

import java.util.Objects;

import org.locationtech.jts.geom.Polygon;

import saddlebar.model.units.Require;

/**
 * A piece of an earlier revision: all that is needed to know it again.
 *
 * @param number its number then
 * @param face   its face then, in the same mm as the new artwork; not changed
 * @param locked whether it keeps its number also where no new piece covers more than half of it: on the one that covers most
 */
public record NumberedFace(int number, Polygon face, boolean locked) {
    public NumberedFace {
        Require.within("number", number, 1, 1_000_000);
        Objects.requireNonNull(face, "face");
    }

    /** Not locked. */
    public NumberedFace(int number, Polygon face) {
        this(number, face, false);
    }
}
