package saddlebar.stencil.quality;

/** The discrete Fourier transform of a square whose side is a power of two, in place: radix 2, Cooley and Tukey, Math. Comp. 19, 1965, 297-301. */
final class Fourier {
    private Fourier() {
    }

    static void transform(double[] re, double[] im, int n) {
        double[] cos = new double[n / 2];
        double[] sin = new double[n / 2];
        for (int k = 0; k < n / 2; k++) {
            cos[k] = StrictMath.cos(-2 * Math.PI * k / n);
            sin[k] = StrictMath.sin(-2 * Math.PI * k / n);
        }
        for (int y = 0; y < n; y++) {
            line(re, im, y * n, 1, n, cos, sin);
        }
        for (int x = 0; x < n; x++) {
            line(re, im, x, n, n, cos, sin);
        }
    }

    private static void line(double[] re, double[] im, int from, int step, int n, double[] cos, double[] sin) {
        for (int i = 1, j = 0; i < n; i++) {
            int bit = n >> 1;
            for (; (j & bit) != 0; bit >>= 1) {
                j ^= bit;
            }
            j ^= bit;
            if (i < j) {
                swap(re, from + i * step, from + j * step);
                swap(im, from + i * step, from + j * step);
            }
        }
        for (int length = 2; length <= n; length <<= 1) {
            int stride = n / length;
            for (int k = 0; k < length / 2; k++) {
                double c = cos[k * stride];
                double s = sin[k * stride];
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

    private static void swap(double[] values, int i, int j) {
        double t = values[i];
        values[i] = values[j];
        values[j] = t;
    }
}
