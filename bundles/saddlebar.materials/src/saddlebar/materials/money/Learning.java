package saddlebar.materials.money;

import saddlebar.model.units.Require;

/**
 * Repeated work goes faster: the n-th takes T1 n^log2(b), where b is the share of time left at each doubling.
 *
 * <p>Source: Wright T. P., Factors affecting the cost of airplanes, Journal of the Aeronautical Sciences 3, 1936.
 *
 * @param rate b, 0.5 to 1; 0.9 in a craft (studio setting)
 */
public record Learning(double rate) {
    public static final Learning CRAFT = new Learning(0.9);

    public Learning {
        Require.within("rate", rate, 0.5, 1);
    }

    /** Time of the n-th over that of the first. */
    public double share(int n) {
        Require.within("n", n, 1, 1_000_000);
        return StrictMath.pow(n, StrictMath.log(rate) / StrictMath.log(2));
    }

    /** Time of the first n together over that of the first. */
    public double sum(int n) {
        double sum = 0;
        for (int i = 1; i <= n; i++) {
            sum += share(i);
        }
        return sum;
    }
}
