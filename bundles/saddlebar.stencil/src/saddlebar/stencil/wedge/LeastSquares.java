package saddlebar.stencil.wedge;

import java.util.List;

/** Linear least squares by the normal equations and Gaussian elimination; for a few unknowns of like size. */
final class LeastSquares {
    private LeastSquares() {
    }

    static double[] solve(List<double[]> rows, List<Double> values) {
        int n = rows.get(0).length;
        double[][] a = new double[n][n + 1];
        for (int r = 0; r < rows.size(); r++) {
            double[] row = rows.get(r);
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    a[i][j] += row[i] * row[j];
                }
                a[i][n] += row[i] * values.get(r);
            }
        }
        return eliminated(a);
    }

    /** Solves n equations, each with its right side behind; rows are exchanged for the largest pivot. */
    static double[] eliminated(double[][] a) {
        int n = a.length;
        for (int column = 0; column < n; column++) {
            int pivot = column;
            for (int row = column + 1; row < n; row++) {
                if (Math.abs(a[row][column]) > Math.abs(a[pivot][column])) {
                    pivot = row;
                }
            }
            double[] swap = a[column];
            a[column] = a[pivot];
            a[pivot] = swap;
            if (Math.abs(a[column][column]) < 1e-14) {
                throw new IllegalArgumentException("equation " + column + " of " + n + " depends on the others");
            }
            for (int row = 0; row < n; row++) {
                if (row != column) {
                    double factor = a[row][column] / a[column][column];
                    for (int i = column; i <= n; i++) {
                        a[row][i] -= factor * a[column][i];
                    }
                }
            }
        }
        double[] result = new double[n];
        for (int i = 0; i < n; i++) {
            result[i] = a[i][n] / a[i][i];
        }
        return result;
    }
}
