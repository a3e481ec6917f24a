package saddlebar.kiln.plate;

import saddlebar.model.units.Require;

/**
 * How an outer face trades heat with the kiln: by convection and by radiation with walls as hot as the kiln's air.
 *
 * @param convectionWPerM2K coefficient of convection
 * @param emissivity        0 to 1; 0 for no radiation
 */
public record Face(double convectionWPerM2K, double emissivity) {
    /** No heat passes. */
    public static final Face INSULATED = new Face(0, 0);
    /** As hot as the kiln, whatever flows: for checks against closed solutions. */
    public static final Face HELD = new Face(1e8, 0);

    static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    public Face {
        Require.within("convectionWPerM2K", convectionWPerM2K, 0, 1e9);
        Require.within("emissivity", emissivity, 0, 1);
    }
}
