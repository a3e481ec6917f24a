package saddlebar.trace.statistics;

import java.util.Arrays;

/**
 * Whether a measured thing (peak temperature, humidity, pull number) differs between flawed and good work, by ranks, so that neither its
 * distribution nor a wild value matters: Mann and Whitney, Ann. Math. Statist. 18, 1947.
 *
 * @param u          pairs in which the flawed one has the higher value, ties a half
 * @param higher     u divided by all pairs: the chance that a flawed one has the higher value; 0.5 means no difference
 * @param p          two-sided chance if there were none: exact for up to {@value #EXACT} pairs without ties, else by the normal distribution with ties
 *                   and the correction of one half
 * @param exact      whether p is exact
 */
public record RankTest(double u, double higher, double p, boolean exact) {
    private static final long EXACT = 2_500;

    /**
     * @param bad  values of flawed work, at least one, finite
     * @param good values of good work, at least one, finite
     */
    public static RankTest of(double[] bad, double[] good) {
        if (bad.length == 0 || good.length == 0) {
            throw new IllegalArgumentException("both groups need a value: " + bad.length + " and " + good.length);
        }
        double[] all = Arrays.copyOf(bad, bad.length + good.length);
        System.arraycopy(good, 0, all, bad.length, good.length);
        if (!Arrays.stream(all).allMatch(Double::isFinite)) {
            throw new IllegalArgumentException("every value must be finite");
        }
        Arrays.sort(all);
        double ties = 0;
        for (int i = 0; i < all.length;) {
            int same = i;
            while (same < all.length && all[same] == all[i]) {
                same++;
            }
            double t = same - i;
            ties += t * t * t - t;
            i = same;
        }
        double[] sortedGood = good.clone();
        Arrays.sort(sortedGood);
        double u = 0;
        for (double value : bad) {
            u += (firstNotBelow(sortedGood, value) + firstAbove(sortedGood, value)) / 2.0;
        }
        double pairs = (double) bad.length * good.length;
        boolean exact = ties == 0 && pairs <= EXACT;
        return new RankTest(u, u / pairs, exact ? exactP(u, bad.length, good.length) : normalP(u, bad.length, good.length, ties), exact);
    }

    /**
     * How far apart the groups lie, -1 to 1: pairs in which the flawed one is higher less those in which it is lower, divided by all pairs; 0 means no
     * difference. Cliff, Psychol. Bull. 114, 1993.
     */
    public double delta() {
        return 2 * higher - 1;
    }

    /** The size of {@link #delta()} in words; the bounds 0.147, 0.33 and 0.474 are those in common use after Romano and others, 2006 (from memory). */
    public String size() {
        double far = Math.abs(delta());
        return far < 0.147 ? "negligible" : far < 0.33 ? "small" : far < 0.474 ? "middling" : "large";
    }

    private static int firstNotBelow(double[] sorted, double value) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] < value) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static int firstAbove(double[] sorted, double value) {
        return firstNotBelow(sorted, Math.nextUp(value));
    }

    /** Share of all orders in which u is at least as far from the middle; orders are counted by the recursion of Mann and Whitney. */
    private static double exactP(double u, int m, int n) {
        double[] ways = new double[m * n + 1];
        ways[0] = 1;
        // the orders of m among n have the generating function prod (1 - q^(n+i)) / (1 - q^i), i = 1..m
        for (int i = 1; i <= m; i++) {
            for (int k = m * n; k >= n + i; k--) {
                ways[k] -= ways[k - n - i];
            }
            for (int k = i; k <= m * n; k++) {
                ways[k] += ways[k - i];
            }
        }
        double all = Arrays.stream(ways).sum();
        double least = Math.min(u, (double) m * n - u);
        double tail = 0;
        for (int k = 0; k <= least; k++) {
            tail += ways[k];
        }
        return Math.min(1, 2 * tail / all);
    }

    private static double normalP(double u, double m, double n, double ties) {
        double total = m + n;
        double variance = m * n / 12 * (total + 1 - ties / (total * (total - 1)));
        if (!(variance > 0)) {
            return 1;
        }
        double apart = Math.max(0, Math.abs(u - m * n / 2) - 0.5);
        return Math.min(1, 2 * Tail.normal(apart / Math.sqrt(variance)));
    }
}
