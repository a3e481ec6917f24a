package saddlebar.kiln.search;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/**
 * Least value of a function of few variables without derivatives. Source: Nelder, J. A., Mead, R. (1965). A simplex method for function minimization,
 * Computer J. 7, 308-313, with their coefficients 1, 2, 1/2, 1/2. The same start gives the same end.
 */
public final class SimplexSearch {
    private SimplexSearch() {
    }

    /**
     * @param start first guess, shape [n]; not changed
     * @param step  first step along each axis
     * @param most  calls of the function
     * @param close done when all corners lie this near to each other in value
     */
    public static double[] least(ToDoubleFunction<double[]> f, double[] start, double step, int most, double close) {
        int n = start.length;
        double[][] corners = new double[n + 1][];
        double[] values = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            corners[i] = start.clone();
            if (i > 0) {
                corners[i][i - 1] += step;
            }
            values[i] = f.applyAsDouble(corners[i]);
        }
        int calls = n + 1;
        while (calls < most) {
            sort(corners, values);
            if (values[n] - values[0] <= close) {
                break;
            }
            double[] centre = new double[n];
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    centre[j] += corners[i][j] / n;
                }
            }
            double[] mirrored = along(centre, corners[n], -1);
            double at = f.applyAsDouble(mirrored);
            calls++;
            if (at < values[0]) {
                double[] farther = along(centre, corners[n], -2);
                double there = f.applyAsDouble(farther);
                calls++;
                replace(corners, values, there < at ? farther : mirrored, Math.min(there, at));
            } else if (at < values[n - 1]) {
                replace(corners, values, mirrored, at);
            } else {
                double[] nearer = along(centre, at < values[n] ? mirrored : corners[n], 0.5);
                double there = f.applyAsDouble(nearer);
                calls++;
                if (there < Math.min(at, values[n])) {
                    replace(corners, values, nearer, there);
                } else {
                    for (int i = 1; i <= n; i++) {
                        corners[i] = along(corners[0], corners[i], 0.5);
                        values[i] = f.applyAsDouble(corners[i]);
                    }
                    calls += n;
                }
            }
        }
        sort(corners, values);
        return corners[0];
    }

    private static double[] along(double[] from, double[] to, double share) {
        double[] point = new double[from.length];
        for (int j = 0; j < point.length; j++) {
            point[j] = from[j] + share * (to[j] - from[j]);
        }
        return point;
    }

    private static void replace(double[][] corners, double[] values, double[] corner, double value) {
        corners[corners.length - 1] = corner;
        values[values.length - 1] = value;
    }

    private static void sort(double[][] corners, double[] values) {
        Integer[] order = new Integer[values.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (a, b) -> Double.compare(values[a], values[b]));
        double[][] oldCorners = corners.clone();
        double[] oldValues = values.clone();
        for (int i = 0; i < order.length; i++) {
            corners[i] = oldCorners[order[i]];
            values[i] = oldValues[order[i]];
        }
    }
}
