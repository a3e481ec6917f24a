package saddlebar.colour;

import saddlebar.model.units.Require;

/**
 * CIE 1931 tristimulus values (2 degree observer), Y = 100 for the bare light.
 *
 * @param x X
 * @param y Y, the luminous transmittance in per cent
 * @param z Z
 */
public record Xyz(double x, double y, double z) {
    public Xyz {
        Require.finite("x", x);
        Require.finite("y", y);
        Require.finite("z", z);
    }

    /** Chromaticity x = X/(X+Y+Z). */
    public double chromaticityX() {
        return x / (x + y + z);
    }

    /** Chromaticity y = Y/(X+Y+Z). */
    public double chromaticityY() {
        return y / (x + y + z);
    }
}
