package saddlebar.stencil.mesh;

/** The Bessel function J1 by its integral, (1/pi) integral over 0 to pi of cos(t - x sin t); Abramowitz and Stegun, 9.1.21. */
final class Bessel {
    /** The midpoint rule errs by about J(2n-1)(x): below 1e-15 for |x| up to 60. */
    private static final int POINTS = 64;

    private Bessel() {
    }

    static double j1(double x) {
        double sum = 0;
        for (int k = 0; k < POINTS; k++) {
            double t = (k + 0.5) * Math.PI / POINTS;
            sum += StrictMath.cos(t - x * StrictMath.sin(t));
        }
        return sum / POINTS;
    }
}
