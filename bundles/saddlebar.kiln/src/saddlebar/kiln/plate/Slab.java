package saddlebar.kiln.plate;

import saddlebar.kiln.glass.Glass;
import saddlebar.kiln.glass.HeatCapacity;
import saddlebar.model.units.Require;

/**
 * One layer of a stack, in nodes at even distances with one on each face.
 *
 * @param thicknessM         m
 * @param nodes              at least 3
 * @param conductivityWPerMK conductivity of heat
 * @param densityKgPerM3     density
 * @param heat               specific heat
 * @param contactWPerM2K     conductance of heat across the seam to the next slab below; not looked at in the lowest
 */
public record Slab(double thicknessM, int nodes, double conductivityWPerMK, double densityKgPerM3, HeatCapacity heat, double contactWPerM2K) {
    public Slab {
        Require.within("thicknessM", thicknessM, 1e-5, 1);
        Require.within("nodes", nodes, 3, 1001);
        Require.within("conductivityWPerMK", conductivityWPerMK, 1e-3, 500);
        Require.within("densityKgPerM3", densityKgPerM3, 1, 25_000);
        Require.within("contactWPerM2K", contactWPerM2K, 0, 1e9);
    }

    public static Slab of(Glass glass, double thicknessMm, int nodes, double contactWPerM2K) {
        return new Slab(thicknessMm / 1000, nodes, glass.conductivityWPerMK(), glass.densityKgPerM3(), glass.heat(), contactWPerM2K);
    }
}
