package saddlebar.colour;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;

import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Require;

/**
 * A quantity over the visible wavelengths: the share that glass or paint lets through, or the relative power of a light. One value each 5 nm from 380
 * to 780 nm, the range and step of the CIE tables that it is weighed with.
 */
public final class Spectrum {
    public static final int FIRST_NM = 380;
    public static final int LAST_NM = 780;
    public static final int STEP_NM = 5;
    public static final int BANDS = (LAST_NM - FIRST_NM) / STEP_NM + 1;
    /** What a reading must cover; outside, its end values are held (the eye sees little there). */
    private static final double NEEDED_FROM_NM = 400;
    private static final double NEEDED_TO_NM = 700;
    private static final double WIDEST_STEP_NM = 20;

    private final double[] values;

    private Spectrum(double[] values) {
        this.values = values;
    }

    /**
     * @param values one a band, finite and at least 0
     * @throws IllegalArgumentException if there are not {@value #BANDS} or one is out of range
     */
    public static Spectrum of(double[] values) {
        if (values.length != BANDS) {
            throw new IllegalArgumentException("a spectrum has " + BANDS + " bands but values has " + values.length);
        }
        for (int band = 0; band < BANDS; band++) {
            Require.within("values[" + band + "]", values[band], 0, Double.MAX_VALUE);
        }
        return new Spectrum(values.clone());
    }

    /** One value a band. */
    public static Spectrum each(IntToDoubleFunction valueOfBand) {
        double[] values = new double[BANDS];
        Arrays.setAll(values, valueOfBand);
        return of(values);
    }

    /** The same everywhere: a neutral gray, or the equal-energy light. */
    public static Spectrum flat(double value) {
        return each(band -> value);
    }

    /**
     * From readings of an instrument at any wavelengths: straight between them, the end values held outside.
     *
     * @param where  names the readings in a refusal
     * @param nm     wavelengths in nm, ascending, from 400 or less to 700 or more, at most 20 nm apart
     * @param shares transmittance of each, 0 to 1; measuring noise down to -0.02 and up to 1.02 is taken as 0 and 1
     * @throws Refusal if the readings cannot be a transmittance over the visible range
     */
    public static Spectrum sampled(String where, double[] nm, double[] shares) {
        if (nm.length != shares.length) {
            throw new IllegalArgumentException("nm has " + nm.length + " values, shares has " + shares.length);
        }
        if (nm.length < 2 || !(nm[0] <= NEEDED_FROM_NM) || !(nm[nm.length - 1] >= NEEDED_TO_NM)) {
            throw new Refusal(where, "the readings do not reach from 400 to 700 nm", "measure the whole visible range");
        }
        double[] clean = new double[shares.length];
        for (int i = 0; i < nm.length; i++) {
            if (i > 0 && !(nm[i] > nm[i - 1] && nm[i] - nm[i - 1] <= WIDEST_STEP_NM)) {
                throw new Refusal(where, "the wavelength " + nm[i] + " nm does not follow " + nm[i - 1] + " nm",
                        "give them ascending, at most 20 nm apart");
            }
            if (!(shares[i] >= -0.02 && shares[i] <= 1.02)) {
                throw new Refusal(where, "the transmittance at " + nm[i] + " nm is " + shares[i], "write shares from 0 to 1, not per cent");
            }
            clean[i] = Math.max(0, Math.min(1, shares[i]));
        }
        return each(band -> between(nm, clean, nmOf(band)));
    }

    private static double between(double[] nm, double[] values, double at) {
        if (at <= nm[0]) {
            return values[0];
        }
        for (int i = 1; i < nm.length; i++) {
            if (at <= nm[i]) {
                double share = (at - nm[i - 1]) / (nm[i] - nm[i - 1]);
                return values[i - 1] + share * (values[i] - values[i - 1]);
            }
        }
        return values[nm.length - 1];
    }

    public static int nmOf(int band) {
        return FIRST_NM + STEP_NM * band;
    }

    public double at(int band) {
        return values[band];
    }

    public Spectrum times(Spectrum other) {
        return each(band -> values[band] * other.values[band]);
    }

    public Spectrum map(DoubleUnaryOperator change) {
        return each(band -> change.applyAsDouble(values[band]));
    }

    public double least() {
        return Arrays.stream(values).min().orElseThrow();
    }

    public double most() {
        return Arrays.stream(values).max().orElseThrow();
    }

    /** @throws IllegalArgumentException if a value is above 1 */
    Spectrum requireShares(String name) {
        Require.within("most of " + name, most(), 0, 1);
        return this;
    }

    public double[] toArray() {
        return values.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Spectrum spectrum && Arrays.equals(values, spectrum.values);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }
}
