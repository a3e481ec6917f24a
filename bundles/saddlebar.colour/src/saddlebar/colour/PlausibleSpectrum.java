package saddlebar.colour;

import saddlebar.model.problem.Refusal;

/**
 * A spectrum for a colour of which no spectrum was measured: the smoothest between 0 and 1 that has exactly this colour in daylight (D65).
 *
 * <p>With T = (1 + tanh z)/2 the sum of (z[i+1] - z[i])^2 is made least under the condition that X, Y and Z come out: Newton's method on the Lagrange
 * conditions, 84 unknowns. Where Newton does not settle at once, the colour is approached from the gray of its lightness in steps. Source: Burns,
 * Numerical methods for smoothest reflectance reconstruction, Color Res. Appl. 45, 2020 (least hyperbolic tangent slope squared); made for
 * reflectance, used here for transmittance, which has the same bounds.
 *
 * <p>Limits: infinitely many spectra have one colour. The one found is right in the light it was measured in and plausible in others; real glass with
 * narrow bands (cobalt blue, neodymium) looks different under a lamp than told here. Measure the spectrum where that matters.
 */
public final class PlausibleSpectrum {
    private static final int BANDS = Spectrum.BANDS;
    private static final int COLOURS = 3;
    private static final int MOST_STEPS = 60;
    private static final double EXACT = 1e-11;
    private static final double LEAST_ADVANCE = 1.0 / 4096;
    private static final double MOST_CHANGE = 3;

    private final double[][] weights = Light.D65.weights();

    private PlausibleSpectrum() {
    }

    /**
     * @param where    names the colour in a refusal
     * @param onScreen beside the screen's white; both whites are taken for one
     */
    public static Spectrum of(String where, Srgb onScreen) {
        return of(where, new Bradford(Srgb.WHITE, Light.D65.white()).adapt(onScreen.xyz()));
    }

    /**
     * @param where    names the colour in a refusal
     * @param underD65 Y = 100 for the bare light
     * @throws Refusal if nothing that only takes light away can have the colour
     */
    public static Spectrum of(String where, Xyz underD65) {
        Xyz white = Light.D65.white();
        double y = underD65.y() / 100;
        if (!(y >= -1e-9 && y <= 1 + 1e-9)) {
            throw impossible(where);
        }
        double flat = Math.max(0, Math.min(1, y));
        boolean neutral = Math.abs(underD65.x() - y * white.x()) < 1e-7 && Math.abs(underD65.z() - y * white.z()) < 1e-7;
        if (neutral) {
            return Spectrum.flat(flat);
        }
        double[] target = {underD65.x() / 100, y, underD65.z() / 100};
        double[] gray = {y * white.x() / 100, y, y * white.z() / 100};
        if (flat <= 0 || flat >= 1) {
            throw impossible(where);
        }
        double[] z = new PlausibleSpectrum().solve(gray, target, flat);
        if (z == null) {
            throw impossible(where);
        }
        return Spectrum.each(band -> share(z[band]));
    }

    private static Refusal impossible(String where) {
        return new Refusal(where, "no glass before daylight can have this colour, it is too bright for its strength",
                "measure again against the bare light, or give a paler or darker colour");
    }

    private static double share(double z) {
        return (1 + StrictMath.tanh(z)) / 2;
    }

    /** From the gray towards the target, with ever smaller steps where a step fails; null if the target is out of reach. */
    private double[] solve(double[] gray, double[] target, double flat) {
        double[] known = new double[BANDS + COLOURS];
        double start = Math.log(flat / (1 - flat)) / 2;
        for (int band = 0; band < BANDS; band++) {
            known[band] = start;
        }
        double at = 0;
        double advance = 1;
        while (at < 1) {
            double next = Math.min(1, at + advance);
            double[] wanted = new double[COLOURS];
            for (int i = 0; i < COLOURS; i++) {
                wanted[i] = gray[i] + next * (target[i] - gray[i]);
            }
            double[] found = newton(known, wanted);
            if (found != null) {
                known = found;
                at = next;
            } else {
                advance /= 2;
                if (advance < LEAST_ADVANCE) {
                    return null;
                }
            }
        }
        return known;
    }

    /** Newton's method from a start; null if it does not settle. */
    private double[] newton(double[] start, double[] wanted) {
        double[] u = start.clone();
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] off = conditions(u, wanted);
            if (largest(off) < EXACT) {
                return u;
            }
            double[] change = new LinearEquations(slopes(u), off).solution();
            if (change == null) {
                return null;
            }
            double most = 0;
            for (int band = 0; band < BANDS; band++) {
                most = Math.max(most, Math.abs(change[band]));
            }
            if (!(most < Double.MAX_VALUE)) {
                return null;
            }
            double share = Math.min(1, MOST_CHANGE / most);
            for (int i = 0; i < u.length; i++) {
                u[i] -= share * change[i];
            }
        }
        return null;
    }

    private static double largest(double[] values) {
        double most = 0;
        for (double value : values) {
            most = value != value ? Double.MAX_VALUE : Math.max(most, Math.abs(value));
        }
        return most;
    }

    /** Slope of (1 + tanh z)/2: sech^2(z)/2. */
    private static double steepness(double z) {
        double cosh = StrictMath.cosh(z);
        return 1 / (2 * cosh * cosh);
    }

    private double pull(double[] u, int band) {
        return weights[0][band] * u[BANDS] + weights[1][band] * u[BANDS + 1] + weights[2][band] * u[BANDS + 2];
    }

    private double[] conditions(double[] u, double[] wanted) {
        double[] off = new double[BANDS + COLOURS];
        for (int band = 0; band < BANDS; band++) {
            double bend = (band > 0 ? u[band] - u[band - 1] : 0) + (band + 1 < BANDS ? u[band] - u[band + 1] : 0);
            off[band] = 2 * bend + steepness(u[band]) * pull(u, band);
            for (int i = 0; i < COLOURS; i++) {
                off[BANDS + i] += weights[i][band] * share(u[band]);
            }
        }
        for (int i = 0; i < COLOURS; i++) {
            off[BANDS + i] -= wanted[i];
        }
        return off;
    }

    private double[][] slopes(double[] u) {
        double[][] rows = new double[BANDS + COLOURS][BANDS + COLOURS];
        for (int band = 0; band < BANDS; band++) {
            double steep = steepness(u[band]);
            int neighbours = (band > 0 ? 1 : 0) + (band + 1 < BANDS ? 1 : 0);
            rows[band][band] = 2 * neighbours - 2 * steep * StrictMath.tanh(u[band]) * pull(u, band);
            if (band > 0) {
                rows[band][band - 1] = -2;
            }
            if (band + 1 < BANDS) {
                rows[band][band + 1] = -2;
            }
            for (int i = 0; i < COLOURS; i++) {
                rows[band][BANDS + i] = steep * weights[i][band];
                rows[BANDS + i][band] = steep * weights[i][band];
            }
        }
        return rows;
    }
}
