package saddlebar.materials.metal;

import saddlebar.model.units.Require;

/**
 * What a panel weighs, finished.
 *
 * @param glassKg  area x thickness x density; 2500 kg/m3 for soda-lime glass (EN 572-1)
 * @param metalKg  foil and solder, or came and its joints
 * @param cementKg leaded panels: a tenth of the rest (common practice, no source)
 */
public record PanelWeight(double glassKg, double metalKg, double cementKg) {
    private static final double CEMENT_SHARE = 0.1;

    public static double glassKg(double areaMm2, double thicknessMm, double densityKgPerM3) {
        Require.within("areaMm2", areaMm2, 0, 1e9);
        return areaMm2 * thicknessMm * densityKgPerM3 / 1e9;
    }

    public static PanelWeight foiled(double glassKg, double metalKg) {
        return new PanelWeight(glassKg, metalKg, 0);
    }

    public static PanelWeight leaded(double glassKg, double metalKg) {
        return new PanelWeight(glassKg, metalKg, CEMENT_SHARE * (glassKg + metalKg));
    }

    public double totalKg() {
        return glassKg + metalKg + cementKg;
    }
}
