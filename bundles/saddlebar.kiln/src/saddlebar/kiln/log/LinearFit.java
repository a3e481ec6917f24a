package saddlebar.kiln.log;

import java.util.Arrays;

/**
 * Ordinary least squares of y on a constant and some columns, by Householder's reflections (no normal equations, so that columns that nearly
 * depend on each other are borne).
 * <p>Source: Golub, G. H., Van Loan, C. F. (1996). Matrix Computations, 3rd ed., 5.3. Checked against NIST's certified values of the sets Longley and Norris.
 *
 * @param coefficients   constant first, then one a column
 * @param standardErrors of the coefficients; NaN if there are no spare rows
 * @param residualSd     root of the sum of squared residuals over rows less coefficients; NaN as above
 * @param rSquared       share of the variance explained
 * @param rows           how many rows
 */
public record LinearFit(double[] coefficients, double[] standardErrors, double residualSd, double rSquared, int rows) {
    public LinearFit {
        coefficients = coefficients.clone();
        standardErrors = standardErrors.clone();
    }

    @Override
    public double[] coefficients() {
        return coefficients.clone();
    }

    @Override
    public double[] standardErrors() {
        return standardErrors.clone();
    }

    /**
     * @param x columns, shape [rows][columns]
     * @param y shape [rows], at least as many as there are coefficients
     * @throws IllegalArgumentException if there are too few rows or a column depends on the others
     */
    public static LinearFit of(double[][] x, double[] y) {
        int m = y.length;
        int n = (m == 0 ? 0 : x[0].length) + 1;
        if (m < n || x.length != m) {
            throw new IllegalArgumentException(n + " coefficients need at least as many rows but there are " + m);
        }
        double[][] q = new double[m][n + 1];
        double[] scale = new double[n];
        for (int j = 0; j < n; j++) {
            double sum = 0;
            for (int i = 0; i < m; i++) {
                double value = j == 0 ? 1 : x[i][j - 1];
                sum += value * value;
            }
            scale[j] = sum == 0 ? 1 : Math.sqrt(sum);
        }
        for (int i = 0; i < m; i++) {
            for (int j = 0; j < n; j++) {
                q[i][j] = (j == 0 ? 1 : x[i][j - 1]) / scale[j];
            }
            q[i][n] = y[i];
        }
        double[] diagonal = new double[n];
        for (int k = 0; k < n; k++) {
            double norm = 0;
            for (int i = k; i < m; i++) {
                norm = Math.hypot(norm, q[i][k]);
            }
            if (norm < 1e-11) {
                throw new IllegalArgumentException("column " + k + " depends on the columns before it");
            }
            double alpha = q[k][k] > 0 ? -norm : norm;
            q[k][k] -= alpha;
            double square = 0;
            for (int i = k; i < m; i++) {
                square += q[i][k] * q[i][k];
            }
            for (int j = k + 1; j <= n; j++) {
                double dot = 0;
                for (int i = k; i < m; i++) {
                    dot += q[i][k] * q[i][j];
                }
                double factor = 2 * dot / square;
                for (int i = k; i < m; i++) {
                    q[i][j] -= factor * q[i][k];
                }
            }
            diagonal[k] = alpha;
        }
        double[] beta = new double[n];
        for (int k = n - 1; k >= 0; k--) {
            double sum = q[k][n];
            for (int j = k + 1; j < n; j++) {
                sum -= q[k][j] * beta[j];
            }
            beta[k] = sum / diagonal[k];
        }
        double rest = 0;
        for (int i = n; i < m; i++) {
            rest += q[i][n] * q[i][n];
        }
        double sd = m > n ? Math.sqrt(rest / (m - n)) : Double.NaN;
        double[] errors = new double[n];
        for (int c = 0; c < n; c++) { // variance of beta[c] is sd^2 times the squared length of row c of R^-1
            double sum = 0;
            for (int column = c; column < n; column++) {
                double[] unit = new double[n];
                unit[column] = 1;
                for (int k = column; k >= 0; k--) {
                    double value = unit[k];
                    for (int j = k + 1; j <= column; j++) {
                        value -= q[k][j] * unit[j];
                    }
                    unit[k] = value / diagonal[k];
                }
                sum += unit[c] * unit[c];
            }
            errors[c] = sd * Math.sqrt(sum) / scale[c];
        }
        for (int k = 0; k < n; k++) {
            beta[k] /= scale[k];
        }
        double mean = Arrays.stream(y).average().orElseThrow();
        double total = Arrays.stream(y).map(v -> (v - mean) * (v - mean)).sum();
        return new LinearFit(beta, errors, sd, total == 0 ? 1 : 1 - rest / total, m);
    }

    public double at(double... x) {
        double sum = coefficients[0];
        for (int j = 1; j < coefficients.length; j++) {
            sum += coefficients[j] * x[j - 1];
        }
        return sum;
    }
}
