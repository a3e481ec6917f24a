package saddlebar.kiln.fire;

/**
 * Where the heat of a firing went, in J; what went in is what stayed and what was lost.
 *
 * @param electricJ  what the elements gave
 * @param chamberJ   kept by the chamber at the end
 * @param liningJ    kept by the lining
 * @param loadJ      kept by glass and shelf
 * @param lostJ      lost to the room
 */
public record EnergyAccount(double electricJ, double chamberJ, double liningJ, double loadJ, double lostJ) {
    public double kWh() {
        return electricJ / 3.6e6;
    }

    /** What the account does not close by, as a share of what went in. */
    public double openShare() {
        return (electricJ - chamberJ - liningJ - loadJ - lostJ) / Math.max(1, electricJ);
    }

    /** Heat stored by a mass that is heated, kWh: m c dT / 3.6e6. */
    public static double storedKWh(double massKg, double jPerKgK, double riseK) {
        return massKg * jPerKgK * riseK / 3.6e6;
    }
}
