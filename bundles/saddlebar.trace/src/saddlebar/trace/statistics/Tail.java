package saddlebar.trace.statistics;

/** Upper tails of the distributions that the tests need. */
final class Tail {
    private static final int LONGEST = 10_000;

    private Tail() {
    }

    /** Chance that a chi-square variable of so many degrees of freedom (at least 1) is at least x; 1 for x not above 0. */
    static double chiSquare(double x, int degrees) {
        return x <= 0 ? 1 : upperGamma(degrees / 2.0, x / 2);
    }

    /** Chance that a standard normal variable is at least z. */
    static double normal(double z) {
        double half = 0.5 * chiSquare(z * z, 1);
        return z >= 0 ? half : 1 - half;
    }

    /** Q(a, x), by the series of P where it is quick and by Lentz's continued fraction elsewhere (Abramowitz and Stegun 6.5.29, 6.5.31). */
    private static double upperGamma(double a, double x) {
        double front = Math.exp(-x + a * Math.log(x) - logGammaOfHalf(a));
        if (x < a + 1) {
            double term = 1 / a;
            double sum = term;
            for (int n = 1; n < LONGEST && term > sum * 1e-17; n++) {
                term *= x / (a + n);
                sum += term;
            }
            return 1 - front * sum;
        }
        double tiny = 1e-300;
        double b = x + 1 - a;
        double c = 1 / tiny;
        double d = 1 / b;
        double h = d;
        for (int n = 1; n < LONGEST; n++) {
            double factor = -n * (n - a);
            b += 2;
            d = factor * d + b;
            d = 1 / (Math.abs(d) < tiny ? tiny : d);
            c = b + factor / c;
            c = Math.abs(c) < tiny ? tiny : c;
            h *= d * c;
            if (Math.abs(d * c - 1) < 1e-16) {
                break;
            }
        }
        return front * h;
    }

    /** ln of the gamma function of a whole or half number. */
    private static double logGammaOfHalf(double a) {
        double log = a == Math.rint(a) ? 0 : 0.5 * Math.log(Math.PI);
        for (double x = a - 1; x > 0; x--) {
            log += Math.log(x);
        }
        return log;
    }
}
