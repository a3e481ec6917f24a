package saddlebar.stencil.method;

import java.util.SplittableRandom;

/**
 * Makes the order of a blue-noise threshold array on an n x n torus: whatever share of the ranks is painted, the dots keep as far apart as
 * they can. Energy of a place: sum over the ones of exp(-d^2/(2 s^2)), torus distance.
 * <ol>
 * <li>About a tenth ones at random, from a fixed seed. Move the one of highest energy (tightest cluster) to the zero of lowest energy
 * (largest void) until it returns to where it was.</li>
 * <li>Remove tightest clusters: ranks downwards from the number of ones; then, from that pattern, fill largest voids: ranks upwards. Past
 * one half the zeros are the minority: fill the zero that lies closest among zeros, which is the zero of lowest energy too, since the
 * energies of ones and zeros at a place add up to a constant.</li>
 * </ol>
 * O(n^4). Ties go to the lower index.
 *
 * <p>Source: Ulichney, The void-and-cluster method for dither array generation, Proc. SPIE 1913, 1993, 332-343.
 */
final class VoidAndCluster {
    private final int n;
    private final double[] kernel;
    private final boolean[] one;
    private final double[] energy;

    private VoidAndCluster(int n, double sigmaPx) {
        this.n = n;
        this.one = new boolean[n * n];
        this.energy = new double[n * n];
        this.kernel = new double[n * n];
        for (int i = 0; i < n * n; i++) {
            int dx = Math.min(i % n, n - i % n);
            int dy = Math.min(i / n, n - i / n);
            kernel[i] = StrictMath.exp(-(dx * dx + dy * dy) / (2 * sigmaPx * sigmaPx));
        }
    }

    /** Ranks 0 to n^2 - 1, row by row; the px of rank 0 is painted first. */
    static int[] ranks(int n, double sigmaPx, long seed) {
        VoidAndCluster pattern = new VoidAndCluster(n, sigmaPx);
        int ones = pattern.scatter(n * n / 10, seed);
        pattern.evenOut();
        boolean[] prototype = pattern.one.clone();
        int[] ranks = new int[n * n];
        for (int rank = ones - 1; rank >= 0; rank--) {
            int cluster = pattern.tightestCluster();
            pattern.put(cluster, false);
            ranks[cluster] = rank;
        }
        for (int i = 0; i < n * n; i++) {
            if (prototype[i]) {
                pattern.put(i, true);
            }
        }
        for (int rank = ones; rank < n * n; rank++) {
            int hole = pattern.largestVoid();
            pattern.put(hole, true);
            ranks[hole] = rank;
        }
        return ranks;
    }

    private int scatter(int wanted, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int placed = 0; placed < wanted;) {
            int at = random.nextInt(n * n);
            if (!one[at]) {
                put(at, true);
                placed++;
            }
        }
        return wanted;
    }

    private void evenOut() {
        int from;
        int to;
        do {
            from = tightestCluster();
            put(from, false);
            to = largestVoid();
            put(to, true);
        } while (from != to);
    }

    private void put(int at, boolean isOne) {
        one[at] = isOne;
        double sign = isOne ? 1 : -1;
        int x0 = at % n;
        int y0 = at / n;
        for (int y = 0, i = 0; y < n; y++) {
            int row = Math.floorMod(y - y0, n) * n;
            for (int x = 0; x < n; x++, i++) {
                energy[i] += sign * kernel[row + Math.floorMod(x - x0, n)];
            }
        }
    }

    private int tightestCluster() {
        int best = -1;
        for (int i = 0; i < one.length; i++) {
            if (one[i] && (best < 0 || energy[i] > energy[best])) {
                best = i;
            }
        }
        return best;
    }

    private int largestVoid() {
        int best = -1;
        for (int i = 0; i < one.length; i++) {
            if (!one[i] && (best < 0 || energy[i] < energy[best])) {
                best = i;
            }
        }
        return best;
    }
}
