package saddlebar.stencil.tone;

/**
 * A smooth curve through points that nowhere turns back between them: f: [x0, xn] -> R, cubic Hermite pieces. Slopes are the means of the
 * neighbouring secants, 0 where these differ in sign; with alpha, beta the slopes over the secant, alpha^2 + beta^2 above 9 is brought back
 * to 9. Outside its range it keeps the value of the end.
 *
 * <p>Source: Fritsch and Carlson, Monotone piecewise cubic interpolation, SIAM J. Numer. Anal. 17(2), 1980, 238-246.
 */
public final class MonotoneCubic {
    private final double[] x;
    private final double[] y;
    private final double[] slope;

    /** @param x ascending, at least 2; @param y as many values */
    public MonotoneCubic(double[] x, double[] y) {
        if (x.length < 2 || x.length != y.length) {
            throw new IllegalArgumentException("a curve needs two points at least, but there are " + x.length + " x and " + y.length + " y");
        }
        for (int i = 1; i < x.length; i++) {
            if (!(x[i] > x[i - 1])) {
                throw new IllegalArgumentException("x must rise, but x[" + i + "] = " + x[i] + " follows " + x[i - 1]);
            }
        }
        this.x = x.clone();
        this.y = y.clone();
        this.slope = slopes(x, y);
    }

    private static double[] slopes(double[] x, double[] y) {
        int pieces = x.length - 1;
        double[] secant = new double[pieces];
        for (int i = 0; i < pieces; i++) {
            secant[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
        }
        double[] slope = new double[x.length];
        slope[0] = secant[0];
        slope[pieces] = secant[pieces - 1];
        for (int i = 1; i < pieces; i++) {
            slope[i] = secant[i - 1] * secant[i] <= 0 ? 0 : (secant[i - 1] + secant[i]) / 2;
        }
        for (int i = 0; i < pieces; i++) {
            if (secant[i] == 0) {
                slope[i] = 0;
                slope[i + 1] = 0;
                continue;
            }
            double alpha = slope[i] / secant[i];
            double beta = slope[i + 1] / secant[i];
            double square = alpha * alpha + beta * beta;
            if (square > 9) {
                double shrink = 3 / Math.sqrt(square);
                slope[i] = shrink * alpha * secant[i];
                slope[i + 1] = shrink * beta * secant[i];
            }
        }
        return slope;
    }

    public double at(double where) {
        if (where <= x[0]) {
            return y[0];
        }
        int last = x.length - 1;
        if (where >= x[last]) {
            return y[last];
        }
        int i = 0;
        while (where > x[i + 1]) {
            i++;
        }
        double h = x[i + 1] - x[i];
        double t = (where - x[i]) / h;
        double s = 1 - t;
        return (1 + 2 * t) * s * s * y[i] + t * s * s * h * slope[i] + t * t * (3 - 2 * t) * y[i + 1] - t * t * s * h * slope[i + 1];
    }
}
