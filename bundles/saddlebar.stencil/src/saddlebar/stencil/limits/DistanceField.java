package saddlebar.stencil.limits;

import saddlebar.stencil.BitPicture;

/**
 * Exact squared distances, in px from middle to middle, of every px to the nearest 1 (or 0) of a picture; O(px).
 *
 * <p>Source: Felzenszwalb and Huttenlocher, Distance transforms of sampled functions, Theory of Computing 8, 2012, 415-428.
 */
public final class DistanceField {
    /** Where there is nothing to be near to. */
    public static final int NONE = Integer.MAX_VALUE;

    private final int widthPx;
    private final int[] squared;

    private DistanceField(int widthPx, int[] squared) {
        this.widthPx = widthPx;
        this.squared = squared;
    }

    /**
     * To the nearest px that is {@code bit}.
     *
     * @param outside whether what lies outside the picture is such a px too
     */
    public static DistanceField to(BitPicture bits, boolean bit, boolean outside) {
        int width = bits.widthPx();
        int height = bits.heightPx();
        int[] down = new int[Math.multiplyExact(width, height)]; // distance along the column
        int far = width + height + 2;
        for (int x = 0; x < width; x++) {
            int since = outside ? 0 : far;
            for (int y = 0; y < height; y++) {
                since = bits.get(x, y) == bit ? 0 : Math.min(far, since + 1);
                down[y * width + x] = since;
            }
            since = outside ? 0 : far;
            for (int y = height - 1; y >= 0; y--) {
                since = bits.get(x, y) == bit ? 0 : Math.min(far, since + 1);
                down[y * width + x] = Math.min(down[y * width + x], since);
            }
        }
        int[] squared = new int[down.length];
        int shift = outside ? 1 : 0;
        int n = width + 2 * shift;
        long[] f = new long[n];
        int[] lowest = new int[n];
        double[] from = new double[n + 1];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int d = down[y * width + x];
                f[x + shift] = d >= far ? Long.MAX_VALUE : (long) d * d;
            }
            if (outside) {
                f[0] = 0;
                f[n - 1] = 0;
            }
            row(f, lowest, from, squared, y * width, shift, width);
        }
        return new DistanceField(width, squared);
    }

    /** The lower envelope of the parabolas f(q) + (x - q)^2. */
    private static void row(long[] f, int[] lowest, double[] from, int[] squared, int at, int shift, int width) {
        int k = -1;
        for (int q = 0; q < f.length; q++) {
            if (f[q] == Long.MAX_VALUE) {
                continue;
            }
            double meets = Double.NEGATIVE_INFINITY;
            while (k >= 0) {
                int p = lowest[k];
                meets = (f[q] + (double) q * q - f[p] - (double) p * p) / (2.0 * (q - p));
                if (meets > from[k]) {
                    break;
                }
                k--;
                meets = Double.NEGATIVE_INFINITY;
            }
            k++;
            lowest[k] = q;
            from[k] = meets;
        }
        for (int x = 0, j = 0; x < width; x++) {
            if (k < 0) {
                squared[at + x] = NONE;
                continue;
            }
            while (j < k && from[j + 1] < x + shift) {
                j++;
            }
            long d = x + shift - lowest[j];
            squared[at + x] = (int) Math.min(NONE, d * d + f[lowest[j]]);
        }
    }

    public int squared(int x, int y) {
        return squared[y * widthPx + x];
    }
}
