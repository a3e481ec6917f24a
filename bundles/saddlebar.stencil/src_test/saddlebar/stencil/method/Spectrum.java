package saddlebar.stencil.method;

import saddlebar.stencil.BitPicture;

/**
 * Power of a square pattern whose side is a power of two: |DFT(pattern - mean)|^2 / px, over g (1 - g), so that white noise has 1. Frequencies
 * in cycles a px.
 */
final class Spectrum {
    private final int n;
    private final double[] power;

    private Spectrum(int n, double[] power) {
        this.n = n;
        this.power = power;
    }

    static Spectrum of(BitPicture bits) {
        int n = bits.widthPx();
        double mean = (double) bits.count() / (n * n);
        double[] re = new double[n * n];
        double[] im = new double[n * n];
        for (int i = 0; i < n * n; i++) {
            re[i] = (bits.get(i % n, i / n) ? 1 : 0) - mean;
        }
        for (int y = 0; y < n; y++) {
            transform(re, im, y * n, 1, n);
        }
        for (int x = 0; x < n; x++) {
            transform(re, im, x, n, n);
        }
        double[] power = new double[n * n];
        for (int i = 0; i < n * n; i++) {
            power[i] = (re[i] * re[i] + im[i] * im[i]) / (n * n) / (mean * (1 - mean));
        }
        return new Spectrum(n, power);
    }

    /** Mean over all frequencies above 0 and below {@code limit}. */
    double meanBelow(double limit) {
        return meanBetween(0, limit);
    }

    /** Mean over the frequencies from {@code least} (but not 0) to below {@code limit}. */
    double meanBetween(double least, double limit) {
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

    private double frequency(int i) {
        int fx = Math.min(i % n, n - i % n);
        int fy = Math.min(i / n, n - i / n);
        return Math.hypot(fx, fy) / n;
    }

    /** Blue noise: sqrt(g) up to one half, sqrt(1 - g) above. Ulichney, Digital Halftoning, MIT Press, 1987. */
    static double principalFrequency(double g) {
        return Math.sqrt(Math.min(g, 1 - g));
    }

    /** Radix-2 Cooley-Tukey in place. */
    private static void transform(double[] re, double[] im, int from, int step, int n) {
        for (int i = 1, j = 0; i < n; i++) {
            int bit = n >> 1;
            for (; (j & bit) != 0; bit >>= 1) {
                j ^= bit;
            }
            j ^= bit;
            if (i < j) {
                double t = re[from + i * step];
                re[from + i * step] = re[from + j * step];
                re[from + j * step] = t;
                t = im[from + i * step];
                im[from + i * step] = im[from + j * step];
                im[from + j * step] = t;
            }
        }
        for (int length = 2; length <= n; length <<= 1) {
            for (int k = 0; k < length / 2; k++) {
                double c = Math.cos(-2 * Math.PI * k / length);
                double s = Math.sin(-2 * Math.PI * k / length);
                for (int i = k; i < n; i += length) {
                    int p = from + i * step;
                    int q = from + (i + length / 2) * step;
                    double r = re[q] * c - im[q] * s;
                    double m = re[q] * s + im[q] * c;
                    re[q] = re[p] - r;
                    im[q] = im[p] - m;
                    re[p] += r;
                    im[p] += m;
                }
            }
        }
    }
}
