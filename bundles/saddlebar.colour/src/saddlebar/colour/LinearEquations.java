package saddlebar.colour;

/** A square set of linear equations, solved once by elimination with row exchange; both arrays are used up. */
final class LinearEquations {
    private static final double SINGULAR = 1e-300;
    private final double[][] rows;
    private final double[] right;

    LinearEquations(double[][] rows, double[] right) {
        this.rows = rows;
        this.right = right;
    }

    /** Null if the equations do not tell the unknowns. */
    double[] solution() {
        int n = right.length;
        for (int column = 0; column < n; column++) {
            if (!bringUpLargest(column)) {
                return null;
            }
            for (int row = column + 1; row < n; row++) {
                double factor = rows[row][column] / rows[column][column];
                if (factor != 0) {
                    for (int i = column; i < n; i++) {
                        rows[row][i] -= factor * rows[column][i];
                    }
                    right[row] -= factor * right[column];
                }
            }
        }
        double[] solution = new double[n];
        for (int row = n - 1; row >= 0; row--) {
            double sum = right[row];
            for (int i = row + 1; i < n; i++) {
                sum -= rows[row][i] * solution[i];
            }
            solution[row] = sum / rows[row][row];
        }
        return solution;
    }

    private boolean bringUpLargest(int column) {
        int largest = column;
        for (int row = column + 1; row < right.length; row++) {
            if (Math.abs(rows[row][column]) > Math.abs(rows[largest][column])) {
                largest = row;
            }
        }
        double[] row = rows[largest];
        rows[largest] = rows[column];
        rows[column] = row;
        double value = right[largest];
        right[largest] = right[column];
        right[column] = value;
        return Math.abs(row[column]) > SINGULAR;
    }
}
