package saddlebar.kiln.paint;

import saddlebar.kiln.glass.Vft;
import saddlebar.kiln.schedule.HeatCurve;

/**
 * Reduced flow time Phi, the integral of dt / eta(T(t)) in 1/Pa: how far a glass or a flux has flowed under its own surface. Two firings mature a
 * paint alike if Phi, with the viscosity of its flux, is alike: levelling and sintering depend on it alone (Frenkel, J. Phys. USSR 9, 1945; from
 * memory of that paper).
 */
public final class HeatWork {
    /** Three points of Gauss on each piece of at most this many K: the fluidity changes by less than a fifth there. */
    private static final double STEP_K = 3;
    private static final double GAUSS = Math.sqrt(0.6);
    /** Below this fluidity a week adds nothing that shows. */
    private static final double NOTHING = 1e-22;

    private HeatWork() {
    }

    /** Phi of a whole curve in 1/Pa. */
    public static double of(HeatCurve curve, Vft viscosity) {
        double sum = 0;
        for (int i = 1; i < curve.points(); i++) {
            sum += piece(curve.timeS(i) - curve.timeS(i - 1), curve.temperatureC(i - 1), curve.temperatureC(i), viscosity);
        }
        return sum;
    }

    private static double piece(double seconds, double fromC, double toC, Vft viscosity) {
        if (seconds == 0 || viscosity.fluidity(Math.max(fromC, toC)) < NOTHING) {
            return 0;
        }
        if (fromC == toC) {
            return seconds * viscosity.fluidity(fromC);
        }
        int steps = (int) Math.min(1000, Math.max(1, Math.ceil(Math.abs(toC - fromC) / STEP_K)));
        double width = (toC - fromC) / steps;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double middle = fromC + (i + 0.5) * width;
            sum += 5 * viscosity.fluidity(middle - GAUSS * width / 2) + 8 * viscosity.fluidity(middle)
                    + 5 * viscosity.fluidity(middle + GAUSS * width / 2);
        }
        return seconds * sum / (18.0 * steps);
    }

    /** Seconds at a temperature that do the same work. */
    public static double equivalentSoakS(double phi, double temperatureC, Vft viscosity) {
        return phi * viscosity.etaPaS(temperatureC);
    }

    /** The temperature at which so many seconds do the same work, in degC. */
    public static double equivalentC(double phi, double seconds, Vft viscosity) {
        return viscosity.temperatureC(Math.log10(seconds / phi));
    }
}
