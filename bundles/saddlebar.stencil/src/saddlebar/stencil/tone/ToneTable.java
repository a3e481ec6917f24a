package saddlebar.stencil.tone;

import java.util.Arrays;
import java.util.Optional;

import saddlebar.model.art.GrayCoding;

/**
 * What each of the 256 code values of a gray band is to cover: f: 0..255 -> [0, 1], the share of glass that paint covers. Never more for a
 * lighter code, and nothing for 255: white paper prints nothing. Immutable.
 */
public final class ToneTable {
    private final double[] coverage;

    private ToneTable(double[] coverage) {
        this.coverage = coverage;
    }

    /** @param coverage 256 values, 0 to 1, never rising, the last 0 */
    public static ToneTable of(double[] coverage) {
        if (coverage.length != 256) {
            throw new IllegalArgumentException("a tone table has 256 values, not " + coverage.length);
        }
        double before = 1;
        for (int code = 0; code < 256; code++) {
            if (!(coverage[code] >= 0 && coverage[code] <= before)) {
                throw new IllegalArgumentException("coverage[" + code + "] = " + coverage[code] + " must be 0 to 1 and not above " + before);
            }
            before = coverage[code];
        }
        if (coverage[255] != 0) {
            throw new IllegalArgumentException("white must cover nothing but covers " + coverage[255]);
        }
        return new ToneTable(coverage.clone());
    }

    /** Coverage = 1 - code/255: no linear light, no stretch, no calibration, no end limits. */
    public static ToneTable linear() {
        double[] coverage = new double[256];
        for (int code = 0; code < 256; code++) {
            coverage[code] = (255 - code) / 255.0;
        }
        return new ToneTable(coverage);
    }

    /**
     * The whole way of tone: darkness of the code, stretched, calibrated if there is a calibration, kept within what prints.
     *
     * @param coding of the bands that will be screened
     */
    public static ToneTable of(GrayCoding coding, Stretch stretch, Optional<Calibration> calibration, EndLimits ends) {
        return of(coding, stretch, Optional.empty(), calibration, ends);
    }

    /**
     * The same with a curve drawn by hand: it says what is wanted for what was drawn, before the calibration says what to screen for it.
     *
     * @param curve drawn for the layer, if any
     */
    public static ToneTable of(GrayCoding coding, Stretch stretch, Optional<DrawnCurve> curve, Optional<Calibration> calibration, EndLimits ends) {
        double[] coverage = new double[256];
        for (int code = 0; code < 255; code++) {
            double drawn = stretch.coverage(Darkness.of(code, coding));
            double wanted = curve.isPresent() ? curve.get().toScreen(drawn) : drawn;
            coverage[code] = ends.held(calibration.isPresent() ? calibration.get().toScreen(wanted) : wanted);
        }
        return of(coverage);
    }

    public double coverage(int code) {
        return coverage[code];
    }

    /** How many codes, from 0 on, cover more than {@code threshold}; 0 to 255 for thresholds of 0 and more. */
    public int codesAbove(double threshold) {
        int least = 0;
        int most = 256;
        while (least < most) {
            int middle = (least + most) >>> 1;
            if (coverage[middle] > threshold) {
                least = middle + 1;
            } else {
                most = middle;
            }
        }
        return least;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ToneTable that && Arrays.equals(that.coverage, coverage);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(coverage);
    }
}
