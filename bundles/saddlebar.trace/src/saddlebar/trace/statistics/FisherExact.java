package saddlebar.trace.statistics;

/**
 * Fisher's exact test of a table with both margins given (Fisher, Statistical Methods for Research Workers, 1934): the number of flawed
 * among the exposed is then hypergeometric. Cost: one exponential a possible table, at most the smaller margin + 1.
 */
public final class FisherExact {
    /** Tables whose probability differs from the observed one's by rounding only count as equally likely, as R's fisher.test has it. */
    private static final double SAME = 1 + 1e-7;

    private FisherExact() {
    }

    /** Chance of at least as many flawed among the exposed as were seen, if exposure meant nothing; 1 for a table with an empty margin. */
    public static double moreThanChance(TwoByTwo table) {
        double sum = 0;
        double scale = scale(table);
        long most = Math.min(table.exposed(), table.bad());
        for (long k = most; k >= table.badExposed(); k--) { // smallest first: nothing is lost to rounding
            sum += Math.exp(logWeight(table, k) - scale);
        }
        return Math.min(1, sum);
    }

    /** Chance of a table no likelier than the one seen, in either direction. */
    public static double twoSided(TwoByTwo table) {
        double scale = scale(table);
        double seen = Math.exp(logWeight(table, table.badExposed()) - scale) * SAME;
        double sum = 0;
        for (long k = Math.max(0, table.exposed() + table.bad() - table.total()); k <= Math.min(table.exposed(), table.bad()); k++) {
            double p = Math.exp(logWeight(table, k) - scale);
            if (p <= seen) {
                sum += p;
            }
        }
        return Math.min(1, sum);
    }

    private static double logWeight(TwoByTwo table, long k) {
        return LogFactorial.choose(table.bad(), k) + LogFactorial.choose(table.total() - table.bad(), table.exposed() - k);
    }

    private static double scale(TwoByTwo table) {
        return LogFactorial.choose(table.total(), table.exposed());
    }
}
