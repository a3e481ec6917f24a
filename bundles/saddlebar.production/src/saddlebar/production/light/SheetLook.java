package saddlebar.production.light;

import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * What is known of a sheet of glass besides its colour in daylight.
 *
 * @param measuredMm    thickness at which the colour was measured
 * @param thicknessMm   thickness of the sheet
 * @param transmittance its measured spectrum as the studio's table has it, see {@link SpectrumText}; empty if none was measured
 */
public record SheetLook(double measuredMm, double thicknessMm, String transmittance) {
    /** A sheet measured as it is. */
    public static final SheetLook PLAIN = new SheetLook(3, 3, "");

    public SheetLook {
        Require.within("measuredMm", measuredMm, 0.1, 100);
        Require.within("thicknessMm", thicknessMm, 0.1, 100);
        Objects.requireNonNull(transmittance, "transmittance");
    }
}
