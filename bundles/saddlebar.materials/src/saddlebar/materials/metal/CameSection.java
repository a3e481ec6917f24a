package saddlebar.materials.metal;

import saddlebar.model.units.Require;

/** An H of lead: two flanges and the web between. All in mm. */
public record CameSection(double flangeWidthMm, double flangeThicknessMm, double webHeightMm, double webThicknessMm) {
    private static final double LEAD_G_PER_CM3 = 11.34;

    public CameSection {
        Require.within("flangeWidthMm", flangeWidthMm, 1, 100);
        Require.within("flangeThicknessMm", flangeThicknessMm, 0.1, 20);
        Require.within("webHeightMm", webHeightMm, 0.5, 50);
        Require.within("webThicknessMm", webThicknessMm, 0.1, 20);
    }

    public double sectionMm2() {
        return 2 * flangeWidthMm * flangeThicknessMm + webHeightMm * webThicknessMm;
    }

    public double massKgPerM() {
        return sectionMm2() * LEAD_G_PER_CM3 / 1000;
    }
}
