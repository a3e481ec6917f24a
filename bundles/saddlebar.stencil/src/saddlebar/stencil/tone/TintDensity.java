package saddlebar.stencil.tone;

import java.util.Locale;

import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Require;

/**
 * From measured densities to the share that paint covers. Transmittance T is flux through over flux in, density D = -log10 T (ISO 5-2 and 5-3;
 * visual density for paint over a light box).
 *
 * <p>Sources: Murray, Monochrome reproduction in photoengraving, J. Franklin Inst. 221, 1936, 721-744; Yule and Nielsen, The penetration of
 * light into paper and its effect on halftone reproduction, TAGA Proc. 3, 1951, 65-76. Light that passes paint and glass does not spread in a
 * substrate: n = 1. Above 1 only for proofs on paper (1.6 to 2).
 *
 * @param bare  D0, density of the glass alone
 * @param solid Ds, density under a solid of the paint, at least 0.05 above {@code bare}
 * @param n     Yule-Nielsen factor, 1 to 3
 */
public record TintDensity(double bare, double solid, double n) {
    private static final double LEAST_RANGE = 0.05;

    public TintDensity {
        Require.finite("bare", bare);
        Require.finite("solid", solid);
        Require.within("n", n, 1, 3);
        if (!(solid - bare >= LEAST_RANGE)) {
            throw new Refusal("wedge", String.format(Locale.ROOT, "solid and bare glass differ by %.3f in density: too pale to measure",
                    solid - bare), "print the wedge with a stronger paint or twice, or measure it over a darker filter");
        }
    }

    public static double density(double transmittance) {
        return -StrictMath.log10(transmittance);
    }

    public static double transmittance(double density) {
        return StrictMath.pow(10, -density);
    }

    /** Share that paint covers where the tint's density is measured: (1 - 10^(-(Dt-D0)/n)) / (1 - 10^(-(Ds-D0)/n)). */
    public double effective(double tint) {
        return (1 - transmittance((tint - bare) / n)) / (1 - transmittance((solid - bare) / n));
    }

    /** The density that a coverage shows: the inverse of {@link #effective}. */
    public double tint(double coverage) {
        return bare + n * density(1 - coverage * (1 - transmittance((solid - bare) / n)));
    }
}
