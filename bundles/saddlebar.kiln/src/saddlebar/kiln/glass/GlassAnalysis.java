package saddlebar.kiln.glass;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import saddlebar.model.units.Require;

/**
 * Viscosity from a supplier's chemical analysis: temperatures at 10, 10^3 and 10^5 Pa s (10^2, 10^4, 10^6 poise) are linear in 100 times the
 * ratio of each oxide to silica by mass, boron oxide also squared; the curve is then led through the three.
 * <p>Source: Lakatos, T., Johansson, L.-G., Simmingskoeld, B. (1976), read in two transcriptions that agree; standard deviations 4.6, 3.3 and
 * 3.1 K. Below the annealing point the curve is an extrapolation: expect 10 K and more.
 */
public final class GlassAnalysis {
    /** The oxides that the model knows. */
    public enum Oxide {
        SIO2, AL2O3, NA2O, K2O, LI2O, CAO, MGO, BAO, ZNO, PBO, B2O3
    }

    private static final double[] LOG_ETA = {1, 3, 5};
    private static final double[] CONSTANT = {1847.8, 1249.7, 962.9};
    private static final double[] BORON_SQUARED = {0.5122, 0.3182, 0.1900};
    /** In the order of {@link Oxide}, silica left out. */
    private static final double[][] SLOPES = {{8.32, -12.65, -5.93, -35.54, -11.27, -5.87, -5.67, -5.37, -4.85, -21.62},
            {5.23, -9.19, -4.17, -30.04, -3.99, -0.12, -3.04, -1.88, -3.17, -11.97},
            {4.01, -7.06, -3.53, -26.45, -0.74, 0.91, -1.88, -0.71, -2.24, -6.42}};

    private final Map<Oxide, Double> percent;

    private GlassAnalysis(Map<Oxide, Double> percent) {
        this.percent = percent;
    }

    /**
     * @param percentByMass shares of the oxides in per cent by mass; oxides left out are 0; silica 30 to 90, the sum at most 101
     * @throws IllegalArgumentException naming the oxide that is out of range
     */
    public static GlassAnalysis of(Map<Oxide, Double> percentByMass) {
        EnumMap<Oxide, Double> copy = new EnumMap<>(Oxide.class);
        double sum = 0;
        for (Oxide oxide : Oxide.values()) {
            double share = Require.within(oxide.name(), percentByMass.getOrDefault(oxide, 0.0), 0, 100);
            copy.put(oxide, share);
            sum += share;
        }
        Require.within("SIO2", copy.get(Oxide.SIO2), 30, 90);
        Require.within("sum of the oxides", sum, 90, 101);
        return new GlassAnalysis(copy);
    }

    /** The three temperatures of the model in degC, at 10, 10^3 and 10^5 Pa s. */
    public double[] isokomsC() {
        double[] found = new double[3];
        for (int i = 0; i < 3; i++) {
            double boron = ratio(Oxide.B2O3);
            double sum = CONSTANT[i] + BORON_SQUARED[i] * boron * boron;
            for (Oxide oxide : Oxide.values()) {
                if (oxide != Oxide.SIO2) {
                    sum += SLOPES[i][oxide.ordinal() - 1] * ratio(oxide);
                }
            }
            found[i] = sum;
        }
        return found;
    }

    public Vft viscosity() {
        double[] at = isokomsC();
        return Vft.through(new Vft.Point(LOG_ETA[0], at[0]), new Vft.Point(LOG_ETA[1], at[1]), new Vft.Point(LOG_ETA[2], at[2]));
    }

    /** What makes the result doubtful; empty for an ordinary soda-lime glass. The bounds are ours: wide around common soda-lime glasses. */
    public List<String> doubts() {
        List<String> doubts = new ArrayList<>();
        doubt(doubts, Oxide.SIO2, 60, 78);
        doubt(doubts, Oxide.NA2O, 8, 20);
        doubt(doubts, Oxide.CAO, 2, 15);
        doubt(doubts, Oxide.PBO, 0, 12);
        doubt(doubts, Oxide.B2O3, 0, 8);
        double sum = percent.values().stream().mapToDouble(Double::doubleValue).sum();
        if (sum < 97) {
            doubts.add(String.format(Locale.ROOT, "only %.1f %% of the glass is accounted for", sum));
        }
        return doubts;
    }

    private void doubt(List<String> doubts, Oxide oxide, double least, double most) {
        double share = percent.get(oxide);
        if (share < least || share > most) {
            doubts.add(String.format(Locale.ROOT, "%s is %.1f %%, outside %.0f to %.0f %%: the model is not made for such a glass", oxide, share,
                    least, most));
        }
    }

    private double ratio(Oxide oxide) {
        return 100 * percent.get(oxide) / percent.get(Oxide.SIO2);
    }
}
