package saddlebar.trace.statistics;

import java.util.stream.IntStream;

/**
 * Many suspects tested at once: a list cut at q after this adjustment holds on average at most the share q of innocent ones (Benjamini and
 * Hochberg, J. R. Statist. Soc. B 57, 1995; independent or positively dependent tests). Cost: a sort.
 */
public final class FalseDiscovery {
    private FalseDiscovery() {
    }

    /**
     * @param p chances of each test, 0 to 1, in any order
     * @return adjusted values in the same order, each at least its p and at most 1
     */
    public static double[] adjust(double[] p) {
        int n = p.length;
        int[] falling = IntStream.range(0, n).boxed().sorted((i, j) -> Double.compare(p[j], p[i])).mapToInt(Integer::intValue).toArray();
        double[] adjusted = new double[n];
        double least = 1;
        for (int i = 0; i < n; i++) {
            if (!(p[falling[i]] >= 0 && p[falling[i]] <= 1)) {
                throw new IllegalArgumentException("p must lie within 0 to 1, not " + p[falling[i]]);
            }
            least = Math.min(least, Math.max(p[falling[i]], p[falling[i]] * n / (n - i))); // rounding must not bring it below p
            adjusted[falling[i]] = least;
        }
        return adjusted;
    }
}
