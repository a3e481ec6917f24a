package saddlebar.kiln.fire;

import saddlebar.kiln.glass.HeatCapacity;
import saddlebar.kiln.plate.Slab;
import saddlebar.model.units.Require;

/**
 * What the glass lies on.
 *
 * @param thicknessMm        mm
 * @param conductivityWPerMK conductivity of heat
 * @param densityKgPerM3     density
 * @param jPerKgK            specific heat
 * @param emissivity         of its lower face
 * @param contactWPerM2K     conductance across kiln wash or paper between glass and shelf
 */
public record Shelf(double thicknessMm, double conductivityWPerMK, double densityKgPerM3, double jPerKgK, double emissivity, double contactWPerM2K) {
    /** A 15 mm ceramic shelf with kiln wash: values in the range of handbooks, from memory; a studio setting. */
    public static final Shelf USUAL = new Shelf(15, 1.3, 2000, 900, 0.85, 150);
    /** 12 mm fibre board: as {@link #USUAL}. */
    public static final Shelf FIBRE = new Shelf(12, 0.12, 300, 1000, 0.85, 100);

    public Shelf {
        Require.within("thicknessMm", thicknessMm, 1, 100);
        Require.within("conductivityWPerMK", conductivityWPerMK, 0.01, 50);
        Require.within("densityKgPerM3", densityKgPerM3, 50, 5000);
        Require.within("jPerKgK", jPerKgK, 100, 5000);
        Require.within("emissivity", emissivity, 0, 1);
        Require.within("contactWPerM2K", contactWPerM2K, 0, 1e6);
    }

    double heatJPerM2K() {
        return thicknessMm / 1000 * densityKgPerM3 * jPerKgK;
    }

    Slab slab(int nodes) {
        return new Slab(thicknessMm / 1000, nodes, conductivityWPerMK, densityKgPerM3, HeatCapacity.constant(jPerKgK), 0);
    }
}
