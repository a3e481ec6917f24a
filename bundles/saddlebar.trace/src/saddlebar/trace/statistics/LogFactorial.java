package saddlebar.trace.statistics;

/** ln n! to the last digits of a double: summed for small n, by Stirling's series above (relative error of the series below 1e-16 from n = 64). */
final class LogFactorial {
    private static final double[] SMALL = small();
    private static final double HALF_LOG_TWO_PI = 0.5 * Math.log(2 * Math.PI);

    private LogFactorial() {
    }

    private static double[] small() {
        double[] logs = new double[64];
        double product = 1;
        for (int n = 2; n <= 20; n++) { // 20! is exact in a double's 53 bits up to 18!, and right to its last bit above
            product *= n;
            logs[n] = Math.log(product);
        }
        for (int n = 21; n < logs.length; n++) {
            logs[n] = logs[n - 1] + Math.log(n);
        }
        return logs;
    }

    static double of(long n) {
        if (n < SMALL.length) {
            return SMALL[(int) n];
        }
        double x = n + 1.0;
        double inverse = 1 / x;
        double square = inverse * inverse;
        double series = inverse * (1.0 / 12 - square * (1.0 / 360 - square * (1.0 / 1260 - square / 1680)));
        return (x - 0.5) * Math.log(x) - x + HALF_LOG_TWO_PI + series;
    }

    /** ln of n over k. */
    static double choose(long n, long k) {
        return of(n) - of(k) - of(n - k);
    }
}
