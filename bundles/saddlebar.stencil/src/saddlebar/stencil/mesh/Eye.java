package saddlebar.stencil.mesh;

import saddlebar.model.units.Require;

/**
 * How well a person sees a faint regular pattern, by its fineness. A(q) = 2.6 (0.0192 + 0.114 q) exp(-(0.114 q)^1.1) for q cycles a degree,
 * 0.981 at its best near 8. Below 1/2 cycle a degree it is kept at 0.15, since large soft bands still show (our own floor).
 *
 * <p>Source: Mannos and Sakrison, The effects of a visual fidelity criterion on the encoding of images, IEEE Trans. Inf. Theory 20(4), 1974,
 * 525-536.
 *
 * @param distanceM viewing distance, 0.1 to 100 m
 */
public record Eye(double distanceM) {
    static final double BEST = 0.981;
    private static final double COARSE = 0.5;
    private static final double COARSE_FLOOR = 0.15;
    /** Contrast that is just seen where the eye is best: a half per cent, a common rule. */
    private static final double THRESHOLD = 0.005;

    public Eye {
        Require.within("distanceM", distanceM, 0.1, 100);
    }

    /** Cycles a degree of a pattern of so many cycles a mm. */
    public double cyclesPerDegree(double cyclesPerMm) {
        return cyclesPerMm * distanceM * 1000 * Math.PI / 180;
    }

    /** A(q), 0 to 0.981. */
    public static double sensitivity(double cyclesPerDegree) {
        double x = 0.114 * cyclesPerDegree;
        double sensitivity = 2.6 * (0.0192 + x) * StrictMath.exp(-StrictMath.pow(x, 1.1));
        return cyclesPerDegree < COARSE ? Math.max(COARSE_FLOOR, sensitivity) : sensitivity;
    }

    /** Contrast as it strikes the eye: times A(q) over its best. */
    public double seen(double contrast, double cyclesPerMm) {
        return contrast * sensitivity(cyclesPerDegree(cyclesPerMm)) / BEST;
    }

    /** Whether a pattern of that contrast shows. */
    public boolean sees(double contrast, double cyclesPerMm) {
        return seen(contrast, cyclesPerMm) > THRESHOLD;
    }
}
