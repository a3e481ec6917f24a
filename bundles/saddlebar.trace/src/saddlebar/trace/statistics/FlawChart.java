package saddlebar.trace.statistics;

import java.util.ArrayList;
import java.util.List;

/**
 * Control chart of the share of flawed work, group by group in time (p-chart: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.3.2). Limits
 * are centre +- 3 sqrt(p(1 - p)/n); where fewer than five flaws are expected that is no good approximation, and the limits are those of the
 * binomial distribution itself, each passed by chance no oftener than 0.135 % of the time (the share beyond 3 standard deviations).
 *
 * @param centre share of flaws over all groups
 * @param points one a group, in the order given
 */
public record FlawChart(double centre, List<Point> points) {
    private static final double BEYOND = 0.0013498980316301;
    /** So many in a row on one side of the centre are a shift (Western Electric rules, in the same handbook, 6.3.2). */
    private static final int RUN = 8;

    /** One group of work: so many flawed of n. */
    public record Group(String name, long bad, long n) {
        public Group {
            if (n < 1 || bad < 0 || bad > n) {
                throw new IllegalArgumentException("group " + name + " has " + bad + " of " + n);
            }
        }
    }

    /**
     * @param low     no fewer than this share is to be expected, at least 0
     * @param high    no more than this share is to be expected, at most 1
     * @param outside above the upper or below the lower limit
     * @param shifted the last of at least eight groups in a row on this side of the centre
     */
    public record Point(Group group, double share, double low, double high, boolean outside, boolean shifted) {
    }

    public FlawChart {
        points = List.copyOf(points);
    }

    /** The chart with its centre taken from the groups themselves. */
    public static FlawChart of(List<Group> groups) {
        long bad = groups.stream().mapToLong(Group::bad).sum();
        long n = groups.stream().mapToLong(Group::n).sum();
        return around(n == 0 ? 0 : (double) bad / n, groups);
    }

    /** @param centre share of flaws known from before, 0 to 1 */
    public static FlawChart around(double centre, List<Group> groups) {
        if (!(centre >= 0 && centre <= 1)) {
            throw new IllegalArgumentException("centre must lie within 0 to 1, not " + centre);
        }
        List<Point> points = new ArrayList<>();
        int run = 0;
        double sideBefore = 0;
        for (Group group : groups) {
            double share = (double) group.bad() / group.n();
            double side = Math.signum(share - centre);
            run = side != 0 && side == sideBefore ? run + 1 : 1;
            sideBefore = side;
            double low = low(centre, group.n());
            double high = high(centre, group.n());
            points.add(new Point(group, share, low, high, share > high || share < low, side != 0 && run >= RUN));
        }
        return new FlawChart(centre, points);
    }

    private static boolean few(double p, long n) {
        return Math.min(p, 1 - p) * n < 5;
    }

    private static double high(double p, long n) {
        if (!few(p, n)) {
            return Math.min(1, p + 3 * Math.sqrt(p * (1 - p) / n));
        }
        double below = 0;
        for (long k = 0; k < n; k++) { // the least count that is passed by chance no oftener than that
            below += binomial(n, k, p);
            if (1 - below <= BEYOND) {
                return (double) k / n;
            }
        }
        return 1;
    }

    private static double low(double p, long n) {
        if (!few(p, n)) {
            return Math.max(0, p - 3 * Math.sqrt(p * (1 - p) / n));
        }
        double upTo = 0;
        for (long k = 0; k <= n; k++) {
            upTo += binomial(n, k, p);
            if (upTo > BEYOND) {
                return (double) k / n;
            }
        }
        return 0;
    }

    private static double binomial(long n, long k, double p) {
        if (p == 0 || p == 1) {
            return k == (p == 0 ? 0 : n) ? 1 : 0;
        }
        return Math.exp(LogFactorial.choose(n, k) + k * Math.log(p) + (n - k) * Math.log1p(-p));
    }
}
