package saddlebar.materials.paint;

import saddlebar.model.units.Require;

/**
 * Powder and medium mixed by mass. With ratio r of powder to medium the mass share of powder is wp = r / (1 + r), and volumes add:
 * density of the mix = 1 / (wp / powder density + (1 - wp) / medium density).
 *
 * @param powderToMedium      mass of powder for one mass of medium, 0.1 to 20; 2 to 4 in screen printing (common practice, no source)
 * @param powderDensityGPerCm3 0.5 to 20
 * @param mediumDensityGPerCm3 0.5 to 5
 */
public record PaintMixture(double powderToMedium, double powderDensityGPerCm3, double mediumDensityGPerCm3) {
    public PaintMixture {
        Require.within("powderToMedium", powderToMedium, 0.1, 20);
        Require.within("powderDensityGPerCm3", powderDensityGPerCm3, 0.5, 20);
        Require.within("mediumDensityGPerCm3", mediumDensityGPerCm3, 0.5, 5);
    }

    /** Mass share of powder, 0 to 1. */
    public double powderShare() {
        return powderToMedium / (1 + powderToMedium);
    }

    public double densityGPerCm3() {
        return 1 / (powderShare() / powderDensityGPerCm3 + (1 - powderShare()) / mediumDensityGPerCm3);
    }

    /** Of a wet film where it is solid; a film of 1 um is 1 cm3/m2. */
    public double powderGPerM2(double wetFilmUm) {
        return wetFilmUm * densityGPerCm3() * powderShare();
    }

    /** Thickness of a solid after firing, pores closed and medium gone: powder a m2 over its density. */
    public double firedUm(double wetFilmUm) {
        return powderGPerM2(wetFilmUm) / powderDensityGPerCm3;
    }
}
