package saddlebar.kiln.glass;

import saddlebar.model.units.Require;

/**
 * What a glass is to the kiln. Values of soda-lime-silica glass by EN 572-1, read in texts that cite it: density 2500 kg/m3, Young's modulus
 * 70 GPa, Poisson's ratio 0.2, expansion 9.0e-6 /K from 20 to 300 degC, conductivity 1.0 W/(m K), specific heat 720 J/(kg K). Art glasses
 * differ, and are often softer by 20 to 60 K: put in what the supplier says.
 * <p>Expansion is taken as constant. Above the annealing point a glass expands about three times as much, but holds no stress there.
 *
 * @param name             as in the tables
 * @param viscosity        over temperature
 * @param densityKgPerM3   density
 * @param youngPa          Young's modulus
 * @param poisson          Poisson's ratio
 * @param expansionPerK    mean linear expansion, 20 to 300 degC
 * @param conductivityWPerMK conductivity of heat
 * @param heat             specific heat
 * @param emissivity       of its surface for the kiln's heat
 */
public record Glass(String name, Vft viscosity, double densityKgPerM3, double youngPa, double poisson, double expansionPerK,
        double conductivityWPerMK,
        HeatCapacity heat, double emissivity) {
    /** Float glass: standard glass DGG I, fit to 44 points, s.d. 0.16 in log eta (Encyclopedia of Glass Science, Technology, History and Culture, 2021). */
    public static final Vft DGG_I = new Vft(-2.601, 4330.9, 246.1);
    /** Soda-lime glass of NIST: solved through its measured isokoms (Fluegel, Glass Technol. A 48(1), 2007, Table 12). */
    public static final Vft SRM_710A = Vft.through(new Vft.Point(1.5, 1319), new Vft.Point(6.6, 731), new Vft.Point(12, 545));
    /** The older soda-lime glass of NIST: as {@link #SRM_710A}. */
    public static final Vft SRM_710 = Vft.through(new Vft.Point(1.5, 1293), new Vft.Point(6.6, 725), new Vft.Point(12, 556));

    public Glass {
        Require.text("name", name);
        Require.within("densityKgPerM3", densityKgPerM3, 1500, 8000);
        Require.within("youngPa", youngPa, 1e10, 2e11);
        Require.within("poisson", poisson, 0, 0.45);
        Require.within("expansionPerK", expansionPerK, 0, 3e-5);
        Require.within("conductivityWPerMK", conductivityWPerMK, 0.1, 10);
        Require.within("emissivity", emissivity, 0.05, 1);
    }

    /** A soda-lime glass with the values of EN 572-1 and a viscosity of its own. */
    public static Glass sodaLime(String name, Vft viscosity) {
        return new Glass(name, viscosity, 2500, 7e10, 0.2, 9e-6, 1.0, HeatCapacity.SODA_LIME, 0.87);
    }

    public static Glass floatGlass() {
        return sodaLime("float", DGG_I);
    }

    public Glass withHeat(HeatCapacity other) {
        return new Glass(name, viscosity, densityKgPerM3, youngPa, poisson, expansionPerK, conductivityWPerMK, other, emissivity);
    }

    public Glass withExpansion(double perK) {
        return new Glass(name, viscosity, densityKgPerM3, youngPa, poisson, perK, conductivityWPerMK, heat, emissivity);
    }

    public Glass named(String other) {
        return new Glass(other, viscosity, densityKgPerM3, youngPa, poisson, expansionPerK, conductivityWPerMK, heat, emissivity);
    }

    /** E / (1 - nu) in Pa: stiffness of a plate strained alike in both directions. */
    public double biaxialPa() {
        return youngPa / (1 - poisson);
    }

    /** E alpha / (1 - nu) in MPa/K: stress of a plate held from expanding. 0.7875 for the values of EN 572-1. */
    public double thermalStressMpaPerK() {
        return biaxialPa() * expansionPerK / 1e6;
    }

    /** E / (2 (1 + nu)) in Pa. */
    public double shearPa() {
        return youngPa / (2 * (1 + poisson));
    }

    /** Maxwell's time of relaxation eta / G in s; infinite where the glass does not flow. */
    public double relaxationS(double temperatureC) {
        return viscosity.etaPaS(temperatureC) / shearPa();
    }

    /** k / (rho c) at 20 degC in m2/s. */
    public double diffusivityM2PerS() {
        return conductivityWPerMK / (densityKgPerM3 * heat.at(20));
    }
}
