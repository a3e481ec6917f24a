package saddlebar.stencil;

import java.util.OptionalDouble;

import saddlebar.model.units.Require;

/**
 * What a method makes of a recipe on the device's grid.
 *
 * @param lpi      ruling as it comes out, cells an inch; empty where there is no ruling
 * @param angleDeg angle as it comes out, x towards y; empty where there is no ruling
 * @param dotMm    side of a scattered dot as it comes out, in mm; empty where dots grow
 * @param levels   different tones that one tile, or the method, can paint, bare and solid among them
 */
public record ActualScreen(OptionalDouble lpi, OptionalDouble angleDeg, OptionalDouble dotMm, int levels) {
    public ActualScreen {
        Require.within("levels", levels, 2, Integer.MAX_VALUE);
    }
}
