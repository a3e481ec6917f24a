package saddlebar.stencil.tone;

import java.util.Locale;

import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Require;
import saddlebar.model.units.Units;

/**
 * Tones too light or too dark to hold: below {@code least} the dots are finer than mesh and paint print, above {@code most} the bridges between
 * them are. Bare stays bare and solid stays solid. Common practice, no source.
 *
 * @param least smallest coverage whose dots print, 0 to {@code most}
 * @param most  largest coverage whose bridges hold, to 1
 * @param soft  what becomes of a tone between bare and {@code least}, and of one between {@code most} and solid
 */
public record EndLimits(double least, double most, Soft soft) {
    /** No limits. */
    public static final EndLimits NONE = new EndLimits(0, 1, Soft.NEAREST);

    /** What becomes of a tone that cannot hold. */
    public enum Soft {
        /** Bare or solid below half of the limit, the limit above. */
        NEAREST,
        /** Always bare, or solid. */
        CUT,
        /** Always the limit: fine shading stays, a little too strong. */
        LIFTED
    }

    public EndLimits {
        Require.within("least", least, 0, 1);
        Require.within("most", most, least, 1);
        if (soft == null) {
            throw new IllegalArgumentException("soft must say what becomes of soft tones");
        }
    }

    /** Coverage of a round dot of that diameter in every cell: (pi/4) (d lpi / 25400)^2. */
    public static double roundDotCoverage(double dotUm, double lpi) {
        double share = dotUm * lpi / Units.UM_PER_INCH;
        return Math.PI / 4 * share * share;
    }

    /**
     * The limits of round dots of a ruling.
     *
     * @param dotUm    diameter of the smallest dot that prints
     * @param bridgeUm diameter of the smallest bare spot that holds
     */
    public static EndLimits ofRoundDots(double dotUm, double bridgeUm, double lpi) {
        double least = roundDotCoverage(dotUm, lpi);
        double most = 1 - roundDotCoverage(bridgeUm, lpi);
        if (!(least < most)) {
            throw new Refusal("lpi", String.format(Locale.ROOT, "at %s lines an inch no tone has dots of %.0f um and bridges of %.0f um",
                    Units.plain(lpi), dotUm, bridgeUm), "take a coarser ruling or a finer mesh");
        }
        return new EndLimits(least, most, Soft.NEAREST);
    }

    /** The coverage that is screened for a wanted one; never falls where the wanted rises. */
    public double held(double coverage) {
        if (coverage > 0 && coverage < least) {
            return soft == Soft.LIFTED || soft == Soft.NEAREST && coverage >= least / 2 ? least : 0;
        }
        if (coverage < 1 && coverage > most) {
            return soft == Soft.LIFTED || soft == Soft.NEAREST && 1 - coverage >= (1 - most) / 2 ? most : 1;
        }
        return coverage;
    }
}
