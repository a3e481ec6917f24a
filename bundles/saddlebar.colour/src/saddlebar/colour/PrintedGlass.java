package saddlebar.colour;

import java.util.List;

import saddlebar.model.units.Require;

/**
 * Glass with one or several halftoned matts, as the eye sees it from where dots can no longer be told apart. Light adds up over the area: every
 * overlap of inks is a colour of its own (Neugebauer, Die theoretischen Grundlagen des Mehrfarbenbuchdrucks, Z. wiss. Photogr. 36, 1937), its share
 * that of independent dots (Demichel, 1924): the product of a for each ink that is there and 1-a for each that is not. Both from memory of the
 * sources.
 *
 * <p>Screens of one ruling at nearly one angle are not independent: their true shares change over the moire. With n = 1 the shares add up in
 * transmittance, as they do where light passes paint and glass once and does not spread; n above 1 (Yule and Nielsen, TAGA Proc. 3, 1951) is for
 * proofs on paper, 1.6 to 2.
 */
public final class PrintedGlass {
    public static final int MOST_MATTS = 8;

    private PrintedGlass() {
    }

    /** Over glass, light passing once. */
    public static Spectrum of(Spectrum plain, List<Matt> matts) {
        return of(plain, matts, 1);
    }

    /**
     * @param plain         what the bare glass lets through, 0 to 1
     * @param matts         at most {@value #MOST_MATTS}
     * @param yuleNielsenN  n, 1 to 10
     */
    public static Spectrum of(Spectrum plain, List<Matt> matts, double yuleNielsenN) {
        plain.requireShares("plain");
        Require.within("matts", matts.size(), 0, MOST_MATTS);
        Require.within("yuleNielsenN", yuleNielsenN, 1, 10);
        double[] weights = demichel(matts.stream().mapToDouble(Matt::coverage).toArray());
        return Spectrum.each(band -> {
            double sum = 0;
            for (int inks = 0; inks < weights.length; inks++) {
                double passed = plain.at(band);
                for (int ink = 0; ink < matts.size(); ink++) {
                    passed *= (inks >> ink & 1) == 1 ? matts.get(ink).film().transmittance().at(band) : 1;
                }
                sum += weights[inks] * (yuleNielsenN == 1 ? passed : StrictMath.pow(passed, 1 / yuleNielsenN));
            }
            return Math.min(1, yuleNielsenN == 1 ? sum : StrictMath.pow(sum, yuleNielsenN));
        });
    }

    /**
     * Share of the area of each overlap of independent dots.
     *
     * @param coverages 0 to 1 each
     * @return 2^inks shares; bit i of the index says whether ink i is there; they add up to 1
     */
    public static double[] demichel(double... coverages) {
        Require.within("inks", coverages.length, 0, MOST_MATTS);
        double[] weights = new double[1 << coverages.length];
        for (int inks = 0; inks < weights.length; inks++) {
            double share = 1;
            for (int ink = 0; ink < coverages.length; ink++) {
                double a = Require.within("coverages[" + ink + "]", coverages[ink], 0, 1);
                share *= (inks >> ink & 1) == 1 ? a : 1 - a;
            }
            weights[inks] = share;
        }
        return weights;
    }
}
