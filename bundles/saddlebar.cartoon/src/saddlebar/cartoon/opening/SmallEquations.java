package saddlebar.cartoon.opening;

/** Linear least squares for a handful of unknowns, by the normal equations and elimination with row exchange. */
final class SmallEquations {
    private SmallEquations() {
    }

    /**
     * @param rows  shape [m][n], m at least n
     * @param right shape [m]
     * @return the n unknowns for which the sum of squares of rows x - right is least; not finite where the rows do not tell them
     */
    static double[] leastSquares(double[][] rows, double[] right) {
        int n = rows[0].length;
        double[][] square = new double[n][n + 1];
        for (int row = 0; row < rows.length; row++) {
            for (int i = 0; i < n; i++) {
                for (int k = 0; k < n; k++) {
                    square[i][k] += rows[row][i] * rows[row][k];
                }
                square[i][n] += rows[row][i] * right[row];
            }
        }
        for (int column = 0; column < n; column++) {
            int largest = column;
            for (int row = column + 1; row < n; row++) {
                largest = Math.abs(square[row][column]) > Math.abs(square[largest][column]) ? row : largest;
            }
            double[] up = square[largest];
            square[largest] = square[column];
            square[column] = up;
            for (int row = column + 1; row < n; row++) {
                double factor = square[row][column] / up[column];
                for (int i = column; i <= n; i++) {
                    square[row][i] -= factor * up[i];
                }
            }
        }
        double[] unknowns = new double[n];
        for (int row = n - 1; row >= 0; row--) {
            double sum = square[row][n];
            for (int i = row + 1; i < n; i++) {
                sum -= square[row][i] * unknowns[i];
            }
            unknowns[row] = sum / square[row][row];
        }
        return unknowns;
    }
}
