package saddlebar.kiln.glass;

import saddlebar.model.units.Require;

/**
 * Specific heat that rises linearly from 20 degC to a knee and is constant beyond it, in J/(kg K). Soda-lime glass: 720 at 20 degC (EN 572-1),
 * about 1100 near 550 degC (Sharp and Ginther, J. Am. Ceram. Soc. 34, 1951; from memory of that paper).
 *
 * @param at20    at and below 20 degC
 * @param beyond  at and above the knee
 * @param kneeC   degC, above 20
 */
public record HeatCapacity(double at20, double beyond, double kneeC) {
    public static final HeatCapacity SODA_LIME = new HeatCapacity(720, 1100, 550);

    public HeatCapacity {
        Require.within("at20", at20, 1, 10_000);
        Require.within("beyond", beyond, 1, 10_000);
        Require.within("kneeC", kneeC, 21, 3000);
    }

    public static HeatCapacity constant(double jPerKgK) {
        return new HeatCapacity(jPerKgK, jPerKgK, 500);
    }

    public double at(double temperatureC) {
        double share = Math.max(0, Math.min(1, (temperatureC - 20) / (kneeC - 20)));
        return at20 + (beyond - at20) * share;
    }

    /** Heat in J/kg above that at 20 degC: the integral of {@link #at}. */
    public double enthalpy(double temperatureC) {
        double over = temperatureC - 20;
        if (over <= 0) {
            return at20 * over;
        }
        double slope = (beyond - at20) / (kneeC - 20);
        if (temperatureC <= kneeC) {
            return over * (at20 + slope * over / 2);
        }
        double toKnee = kneeC - 20;
        return toKnee * (at20 + beyond) / 2 + beyond * (temperatureC - kneeC);
    }
}
