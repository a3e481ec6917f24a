package saddlebar.production.facts;

import saddlebar.model.units.Require;

/**
 * What the studio has measured of its printer on a test page.
 *
 * @param name        of the printer, or empty if the studio has none
 * @param acrossScale printed length over wanted length across the paper as it is fed upright, 0.95 to 1.05
 * @param downScale   likewise down the paper
 * @param skew        mm to the right for each mm down
 */
public record PrinterFacts(String name, double acrossScale, double downScale, double skew) {
    /** Prints every length as it is wanted. */
    public static final PrinterFacts TRUE = new PrinterFacts("", 1, 1, 0);

    public PrinterFacts {
        Require.within("acrossScale", acrossScale, 0.95, 1.05);
        Require.within("downScale", downScale, 0.95, 1.05);
        Require.within("skew", skew, -0.02, 0.02);
    }

    /** Whether sheets need no correction. */
    public boolean isTrue() {
        return acrossScale == 1 && downScale == 1 && skew == 0;
    }
}
