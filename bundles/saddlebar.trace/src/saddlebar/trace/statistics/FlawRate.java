package saddlebar.trace.statistics;

/** The share of flawed work in a group. */
public final class FlawRate {
    private FlawRate() {
    }

    /**
     * The share with its 95 % score interval, which holds for small groups and for none or all flawed (Wilson, J. Am. Statist. Assoc. 22, 1927).
     *
     * @param bad flawed, 0 to n
     * @param n   at least 1
     */
    public static Estimate of(long bad, long n) {
        if (n < 1 || bad < 0 || bad > n) {
            throw new IllegalArgumentException("bad must lie within 0 to n, and n be at least 1: " + bad + " of " + n);
        }
        double z2 = TwoByTwo.Z_95 * TwoByTwo.Z_95;
        double p = (double) bad / n;
        double middle = (p + z2 / (2 * n)) / (1 + z2 / n);
        double half = TwoByTwo.Z_95 / (1 + z2 / n) * Math.sqrt(p * (1 - p) / n + z2 / (4.0 * n * n));
        return new Estimate(p, bad == 0 ? 0 : Math.max(0, middle - half), bad == n ? 1 : Math.min(1, middle + half));
    }
}
