package saddlebar.kiln.glass;

import java.util.List;
import java.util.Locale;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Require;

/**
 * Two glasses fused on each other: what stress their difference of expansion leaves. Stress begins where the stiffer of the two sets, its
 * strain point; from there to room temperature each wants another length.
 * <p>Stress at the seam of a two-layer plate that may bow, and its curvature: Timoshenko, S. (1925). Analysis of bi-metal thermostats, J. Opt. Soc.
 * Am. 11, 233-255, with E/(1 - nu) in place of E since a plate strains both ways. The limit is a studio setting without a source. A strain
 * viewer over a test bar tells more than any calculation: expansion is measured far below the temperature at which glass sets.
 */
public final class FusedLayers {
    /** Lasting stress at the seam above which we caution, MPa: studio setting, no source. */
    public static final double LIMIT_MPA = 5;

    private final Glass lower;
    private final Glass upper;
    private final double lowerMm;
    private final double upperMm;

    public FusedLayers(Glass lower, double lowerMm, Glass upper, double upperMm) {
        this.lower = lower;
        this.upper = upper;
        this.lowerMm = Require.within("lowerMm", lowerMm, 0.1, 100);
        this.upperMm = Require.within("upperMm", upperMm, 0.1, 100);
    }

    /** From room temperature to where the first of the two sets, in K. */
    public double fallK() {
        return Math.max(lower.viscosity().strainC(), upper.viscosity().strainC()) - 20;
    }

    /** Curvature of the free plate in 1/m; positive where the lower glass shrinks more. */
    public double curvaturePerM() {
        double m = lowerMm / upperMm;
        double n = lower.biaxialPa() / upper.biaxialPa();
        double h = (lowerMm + upperMm) / 1000;
        double strain = (lower.expansionPerK() - upper.expansionPerK()) * fallK();
        return 6 * strain * (1 + m) * (1 + m) / (h * (3 * (1 + m) * (1 + m) + (1 + m * n) * (m * m + 1 / (m * n))));
    }

    /** Largest stress at the seam in MPa, without sign: one glass is stretched, the other pressed. */
    public double seamMpa() {
        double curvature = Math.abs(curvaturePerM());
        double e1 = lower.biaxialPa();
        double e2 = upper.biaxialPa();
        double h1 = lowerMm / 1000;
        double h2 = upperMm / 1000;
        double force = curvature * (e1 * h1 * h1 * h1 + e2 * h2 * h2 * h2) / (6 * (h1 + h2));
        double inLower = force / h1 + e1 * h1 * curvature / 2;
        double inUpper = force / h2 + e2 * h2 * curvature / 2;
        return Math.max(inLower, inUpper) / 1e6;
    }

    /** Cautions: different expansion, and different softness. Empty if the two go together by these figures. */
    public List<Problem> cautions() {
        java.util.ArrayList<Problem> found = new java.util.ArrayList<>();
        double mpa = seamMpa();
        if (mpa > LIMIT_MPA) {
            found.add(Problem.of("layers-differ", Severity.WARNING, lower.name() + " under " + upper.name(), String.format(Locale.ROOT,
                    "Fused together they would keep %.1f MPa at the seam (%.2f against %.2f per million K); they may crack on cooling or years "
                            + "later. Test a strip under crossed polarisers first.",
                    mpa, lower.expansionPerK() * 1e6, upper.expansionPerK() * 1e6)));
        }
        double apart = Math.abs(lower.viscosity().annealingC() - upper.viscosity().annealingC());
        if (apart > 15) {
            found.add(Problem.of("layers-anneal-apart", Severity.WARNING, lower.name() + " under " + upper.name(), String.format(Locale.ROOT,
                    "Their annealing points lie %.0f K apart; no one soak anneals both. Soak at the higher and cool slowly past the lower.", apart)));
        }
        return found;
    }
}
