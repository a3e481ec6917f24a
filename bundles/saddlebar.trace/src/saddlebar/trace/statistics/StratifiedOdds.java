package saddlebar.trace.statistics;

import java.util.List;

/**
 * One suspect looked at within strata of another, so that the other cannot lend it its guilt: Mantel and Haenszel, J. Natl Cancer Inst. 22,
 * 1959. Strata in which nothing varies say nothing and are passed over.
 *
 * @param oddsRatio    common odds ratio, with the 95 % interval of Robins, Breslow and Greenland (Biometrics 42, 1986); NaN where no stratum
 *                     can tell
 * @param chiSquare    Mantel-Haenszel statistic with the correction of one half, 1 degree of freedom
 * @param p            its chance, two-sided; 1 where no stratum can tell
 * @param heterogeneityP chance of Woolf's statistic (Ann. Hum. Genet. 19, 1955; half a unit added to each count): small means that the strata
 *                     differ and one common ratio tells little
 * @param informative  strata that could tell something
 */
public record StratifiedOdds(Estimate oddsRatio, double chiSquare, double p, double heterogeneityP, int informative) {
    public static StratifiedOdds of(List<TwoByTwo> strata) {
        return of(strata, true);
    }

    /** @param corrected whether the difference is brought half a unit nearer to nothing, as for small counts */
    public static StratifiedOdds of(List<TwoByTwo> strata, boolean corrected) {
        List<TwoByTwo> telling = strata.stream().filter(StratifiedOdds::tells).toList();
        double difference = 0;
        double variance = 0;
        for (TwoByTwo t : telling) {
            double n = t.total();
            double bad = t.bad();
            difference += t.badExposed() - bad * t.exposed() / n;
            variance += bad * (n - bad) * t.exposed() * (n - t.exposed()) / (n * n * (n - 1));
        }
        double apart = Math.max(0, Math.abs(difference) - (corrected ? 0.5 : 0));
        double chiSquare = variance > 0 ? apart * apart / variance : 0;
        return new StratifiedOdds(common(telling), chiSquare, variance > 0 ? Tail.chiSquare(chiSquare, 1) : 1, woolf(telling), telling.size());
    }

    private static boolean tells(TwoByTwo t) {
        return t.bad() > 0 && t.bad() < t.total() && t.exposed() > 0 && t.exposed() < t.total();
    }

    private static Estimate common(List<TwoByTwo> telling) {
        double r = 0;
        double s = 0;
        double pr = 0;
        double psqr = 0;
        double qs = 0;
        for (TwoByTwo t : telling) {
            double n = t.total();
            double ri = t.badExposed() * (double) t.goodOther() / n;
            double si = t.goodExposed() * (double) t.badOther() / n;
            double pi = (t.badExposed() + t.goodOther()) / n;
            r += ri;
            s += si;
            pr += pi * ri;
            psqr += pi * si + (1 - pi) * ri;
            qs += (1 - pi) * si;
        }
        double odds = r / s;
        double spread = TwoByTwo.Z_95 * Math.sqrt(pr / (2 * r * r) + psqr / (2 * r * s) + qs / (2 * s * s));
        return Double.isFinite(odds) && odds > 0
                ? new Estimate(odds, odds * Math.exp(-spread), odds * Math.exp(spread))
                : new Estimate(odds, Double.NaN, Double.NaN);
    }

    private static double woolf(List<TwoByTwo> telling) {
        if (telling.size() < 2) {
            return 1;
        }
        double weights = 0;
        double mean = 0;
        double squares = 0;
        for (TwoByTwo t : telling) {
            double a = t.badExposed() + 0.5;
            double b = t.goodExposed() + 0.5;
            double c = t.badOther() + 0.5;
            double d = t.goodOther() + 0.5;
            double log = Math.log(a * d / (b * c));
            double weight = 1 / (1 / a + 1 / b + 1 / c + 1 / d);
            weights += weight;
            mean += weight * log;
            squares += weight * log * log;
        }
        return Tail.chiSquare(Math.max(0, squares - mean * mean / weights), telling.size() - 1);
    }
}
