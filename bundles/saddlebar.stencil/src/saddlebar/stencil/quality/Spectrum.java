package saddlebar.stencil.quality;

import saddlebar.stencil.BitPicture;

/**
 * Power of a flat tone's dots over frequency: the mean of |DFT(pattern - mean)|^2 / px over square windows of a power of two, over g (1 - g), so that
 * independent chance has 1. Frequencies in cycles a px.
 *
 * <p>Source: Ulichney, Digital Halftoning, MIT Press, 1987; Proc. IEEE 76(1), 1988 (averaged periodograms, annuli, anisotropy).
 */
public final class Spectrum {
    private final int n;
    private final int windows;
    private final double[] power;

    private Spectrum(int n, int windows, double[] power) {
        this.n = n;
        this.windows = windows;
        this.power = power;
    }

    /**
     * Over windows side by side, as many as fit.
     *
     * @param side a power of two, 8 to 1024, that fits the picture at least once
     * @throws IllegalArgumentException if the picture is all bare or all painted
     */
    public static Spectrum of(BitPicture bits, int side) {
        if (Integer.bitCount(side) != 1 || side < 8 || side > 1024 || side > Math.min(bits.widthPx(), bits.heightPx())) {
            throw new IllegalArgumentException("no window of " + side + " px in a picture of " + bits.widthPx() + " x " + bits.heightPx());
        }
        double mean = (double) bits.count() / bits.widthPx() / bits.heightPx();
        if (!(mean > 0 && mean < 1)) {
            throw new IllegalArgumentException("a tone of " + mean + " has no dots");
        }
        double[] power = new double[side * side];
        int windows = 0;
        for (int top = 0; top + side <= bits.heightPx(); top += side) {
            for (int left = 0; left + side <= bits.widthPx(); left += side) {
                add(power, bits, left, top, side, mean);
                windows++;
            }
        }
        for (int i = 0; i < power.length; i++) {
            power[i] /= windows;
        }
        return new Spectrum(side, windows, power);
    }

    private static void add(double[] power, BitPicture bits, int left, int top, int n, double mean) {
        double[] re = new double[n * n];
        double[] im = new double[n * n];
        for (int i = 0; i < n * n; i++) {
            re[i] = (bits.get(left + i % n, top + i / n) ? 1 : 0) - mean;
        }
        Fourier.transform(re, im, n);
        for (int i = 0; i < n * n; i++) {
            power[i] += (re[i] * re[i] + im[i] * im[i]) / (n * n) / (mean * (1 - mean));
        }
    }

    public int windows() {
        return windows;
    }

    /** Mean power of each annulus 1/n wide: index i from frequency i/n to (i + 1)/n, up to 1/2 along the axes; index 0 without frequency 0. */
    public double[] radial() {
        double[] sum = new double[n / 2];
        int[] count = new int[n / 2];
        for (int i = 1; i < n * n; i++) {
            int ring = (int) (frequency(i) * n);
            if (ring < sum.length) {
                sum[ring] += power[i];
                count[ring]++;
            }
        }
        for (int ring = 0; ring < sum.length; ring++) {
            sum[ring] /= Math.max(1, count[ring]);
        }
        return sum;
    }

    /** Anisotropy of an annulus in dB: variance of its power over its squared mean; about -10 lg(windows) where no direction is favoured. */
    public double anisotropyDb(int ring) {
        double mean = radial()[ring];
        double square = 0;
        int count = 0;
        for (int i = 1; i < n * n; i++) {
            if ((int) (frequency(i) * n) == ring) {
                square += (power[i] - mean) * (power[i] - mean);
                count++;
            }
        }
        return 10 * StrictMath.log10(Math.max(1e-12, square / Math.max(1, count - 1) / Math.max(1e-30, mean * mean)));
    }

    /** Mean over the frequencies from {@code least} (but not 0) to below {@code limit}. */
    public double meanBetween(double least, double limit) {
        double sum = 0;
        int count = 0;
        for (int i = 1; i < n * n; i++) {
            if (frequency(i) >= least && frequency(i) < limit) {
                sum += power[i];
                count++;
            }
        }
        return sum / count;
    }

    /** Frequency and power of the strongest single wave below {@code limit}: the worst repeat. Cycles a px, and times the mean power of chance. */
    public Repeat worstRepeat(double limit) {
        int worst = 1;
        for (int i = 1; i < n * n; i++) {
            if (frequency(i) < limit && (power[i] > power[worst] || frequency(worst) >= limit)) {
                worst = i;
            }
        }
        return new Repeat(1 / frequency(worst), power[worst]);
    }

    /**
     * A wave that stands out.
     *
     * @param periodPx from crest to crest
     * @param power    1 is chance
     */
    public record Repeat(double periodPx, double power) {
    }

    private double frequency(int i) {
        int fx = Math.min(i % n, n - i % n);
        int fy = Math.min(i / n, n - i / n);
        return Math.sqrt((double) fx * fx + (double) fy * fy) / n;
    }

    /** Principal frequency of blue noise in cycles a dot: sqrt(g) up to one half, sqrt(1 - g) above, but at most 1/2 (Lau and Ulichney, 2004). */
    public static double principalFrequency(double g) {
        return Math.min(0.5, Math.sqrt(Math.min(g, 1 - g)));
    }

    double powerAt(int fx, int fy) {
        return power[Math.floorMod(fy, n) * n + Math.floorMod(fx, n)];
    }
}
