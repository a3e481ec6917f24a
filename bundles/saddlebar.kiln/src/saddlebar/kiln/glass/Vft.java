package saddlebar.kiln.glass;

import saddlebar.model.units.Require;

/**
 * Viscosity of a glass over temperature by the equation of Vogel, Fulcher and Tammann: log10 eta = A + B / (T - T0), eta in Pa s, T in degC.
 * At and below T0 the glass does not flow at all: viscosity is infinite there.
 * <p>Reference viscosities: strain 10^13.5, annealing 10^12, softening (Littleton) 10^6.6 Pa s (ASTM C336, C598, C338); working 10^3 Pa s. Points
 * measured by fibre and rate of cooling may lie 5 to 10 K beside these.
 *
 * @param a   A, log10 of Pa s
 * @param b   B in K, above 0
 * @param t0C T0 in degC
 */
public record Vft(double a, double b, double t0C) {
    public static final double LOG_STRAIN = 13.5;
    public static final double LOG_ANNEALING = 12;
    public static final double LOG_SOFTENING = 6.6;
    public static final double LOG_WORKING = 3;

    public Vft {
        Require.within("a", a, -20, 10);
        Require.within("b", b, 100, 50_000);
        Require.within("t0C", t0C, -270, 1000);
    }

    /** One measured point: log10 of the viscosity in Pa s, and where it was found. */
    public record Point(double logEta, double temperatureC) {
        public Point {
            Require.within("logEta", logEta, -5, 20);
            Require.within("temperatureC", temperatureC, 0, 2500);
        }
    }

    /**
     * The curve that passes exactly through three points. l * T = A * T + T0 * l + (B - A * T0) is linear in three unknowns, so the
     * solution is found without iteration.
     *
     * @throws IllegalArgumentException if no curve that falls with temperature passes through the points
     */
    public static Vft through(Point first, Point second, Point third) {
        double l21 = second.logEta - first.logEta;
        double l31 = third.logEta - first.logEta;
        double t21 = second.temperatureC - first.temperatureC;
        double t31 = third.temperatureC - first.temperatureC;
        double r21 = second.logEta * second.temperatureC - first.logEta * first.temperatureC;
        double r31 = third.logEta * third.temperatureC - first.logEta * first.temperatureC;
        double determinant = t21 * l31 - t31 * l21;
        double a = (r21 * l31 - r31 * l21) / determinant;
        double t0 = (t21 * r31 - t31 * r21) / determinant;
        double b = (first.logEta - a) * (first.temperatureC - t0);
        double lowest = Math.min(first.temperatureC, Math.min(second.temperatureC, third.temperatureC));
        if (!(b > 0 && t0 < lowest) || !Double.isFinite(a)) {
            throw new IllegalArgumentException("no viscosity curve passes through " + first + ", " + second + ", " + third
                    + ": viscosity must fall with temperature, steeply at first");
        }
        return new Vft(a, b, t0);
    }

    /** log10 of the viscosity in Pa s; infinite at and below T0. */
    public double logEta(double temperatureC) {
        return temperatureC <= t0C ? Double.POSITIVE_INFINITY : a + b / (temperatureC - t0C);
    }

    /** Viscosity in Pa s; infinite at and below T0. */
    public double etaPaS(double temperatureC) {
        return Math.pow(10, logEta(temperatureC));
    }

    /** 1/eta in 1/(Pa s): 0 where the glass does not flow. */
    public double fluidity(double temperatureC) {
        return temperatureC <= t0C ? 0 : Math.pow(10, -a - b / (temperatureC - t0C));
    }

    /** Where the viscosity is 10^logEta Pa s, in degC; logEta above A. */
    public double temperatureC(double logEta) {
        if (!(logEta > a)) {
            throw new IllegalArgumentException("logEta must be above A = " + a + " but is " + logEta);
        }
        return t0C + b / (logEta - a);
    }

    public double strainC() {
        return temperatureC(LOG_STRAIN);
    }

    public double annealingC() {
        return temperatureC(LOG_ANNEALING);
    }

    public double softeningC() {
        return temperatureC(LOG_SOFTENING);
    }

    public double workingC() {
        return temperatureC(LOG_WORKING);
    }

    /** The same curve, that much further up the scale of temperature (K). */
    public Vft shifted(double byK) {
        return new Vft(a, b, t0C + byK);
    }

    /** Activation energy of flow at a temperature in J/mol: ln 10 * B * R * T^2 / (T - T0)^2 with T in K above the line. */
    public double activationJPerMol(double temperatureC) {
        double kelvin = temperatureC + 273.15;
        return Math.log(10) * b * 8.314462618 * kelvin * kelvin / ((temperatureC - t0C) * (temperatureC - t0C));
    }
}
