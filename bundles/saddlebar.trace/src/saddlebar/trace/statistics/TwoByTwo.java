package saddlebar.trace.statistics;

/**
 * Counts of flawed and good work, with and without something that is suspected: an exposed unit went through that screen, mix or firing.
 *
 * @param badExposed  flawed and exposed, at least 0
 * @param goodExposed good and exposed, at least 0
 * @param badOther    flawed and not exposed, at least 0
 * @param goodOther   good and not exposed, at least 0
 */
public record TwoByTwo(long badExposed, long goodExposed, long badOther, long goodOther) {
    /** The normal distribution's 97.5th percentile. */
    static final double Z_95 = 1.959963984540054;

    public TwoByTwo {
        if (badExposed < 0 || goodExposed < 0 || badOther < 0 || goodOther < 0) {
            throw new IllegalArgumentException(
                    "counts must not be negative: " + badExposed + " " + goodExposed + " " + badOther + " " + goodOther);
        }
    }

    public long exposed() {
        return badExposed + goodExposed;
    }

    public long bad() {
        return badExposed + badOther;
    }

    public long total() {
        return badExposed + goodExposed + badOther + goodOther;
    }

    /** Share of flaws with the suspect divided by the share without; NaN when one side is empty, infinite when nothing else is flawed. */
    public double riskRatio() {
        return (double) badExposed / exposed() / ((double) badOther / (badOther + goodOther));
    }

    /**
     * Odds ratio with half a unit added to each count (Haldane 1956, Anscombe 1956), so that it is finite whatever the counts, with its
     * 95 % interval exp(ln OR +- 1.96 sqrt(sum of 1/(n + 0.5))).
     */
    public Estimate oddsRatio() {
        double a = badExposed + 0.5;
        double b = goodExposed + 0.5;
        double c = badOther + 0.5;
        double d = goodOther + 0.5;
        double odds = a * d / (b * c);
        double spread = Z_95 * Math.sqrt(1 / a + 1 / b + 1 / c + 1 / d);
        return new Estimate(odds, odds * Math.exp(-spread), odds * Math.exp(spread));
    }

    /** Share of flaws to expect with the suspect: the mean of the beta posterior under Jeffreys' prior, (bad + 0.5)/(n + 1). */
    public double rateExposed() {
        return (badExposed + 0.5) / (exposed() + 1);
    }

    /** As {@link #rateExposed()}, without the suspect. */
    public double rateOther() {
        return (badOther + 0.5) / (badOther + goodOther + 1);
    }

    /** Likeness of "flawed" and "exposed", 0 to 1 (Ochiai 1957; for tracing faults: Abreu, Zoeteweij and van Gemund 2007). 0 where nothing is. */
    public double ochiai() {
        double product = (double) bad() * exposed();
        return product == 0 ? 0 : badExposed / Math.sqrt(product);
    }

    /** Share of the flawed that met the suspect against that of the good, 0 to 1 (Jones and Harrold, ASE 2005). 0 where nothing is flawed. */
    public double tarantula() {
        double ofBad = bad() == 0 ? 0 : (double) badExposed / bad();
        long good = goodExposed + goodOther;
        double ofGood = good == 0 ? 0 : (double) goodExposed / good;
        return ofBad + ofGood == 0 ? 0 : ofBad / (ofBad + ofGood);
    }
}
