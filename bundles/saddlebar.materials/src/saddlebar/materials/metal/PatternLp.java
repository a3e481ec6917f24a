package saddlebar.materials.metal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import saddlebar.model.work.Work;

/**
 * The linear relaxation over all cutting patterns, solved by generating columns (Gilmore and Gomory, A linear programming approach to the cutting-stock
 * problem, Operations Research 9, 1961). Lengths descend; a column is a count of each length.
 */
final class PatternLp {
    private static final double TINY = 1e-9;
    private static final int MOST_ROUNDS = 2000;

    private final long capacity;
    private final long[] lengths;
    private final double[] demand;
    private final List<int[]> basis = new ArrayList<>();
    private double[] amounts;
    private double bound;

    private PatternLp(long capacity, long[] lengths, int[] demand) {
        this.capacity = capacity;
        this.lengths = lengths;
        this.demand = Arrays.stream(demand).asDoubleStream().toArray();
    }

    static PatternLp solve(long capacity, long[] lengths, int[] demand, Work work) {
        PatternLp lp = new PatternLp(capacity, lengths, demand);
        lp.run(work);
        return lp;
    }

    List<int[]> columns() {
        return basis;
    }

    double[] amounts() {
        return amounts;
    }

    /** A bound on the relaxation that holds whatever the rounding of the simplex: demand x dual / dearest pattern (Farley). */
    double bound() {
        return bound;
    }

    private void run(Work work) {
        int m = lengths.length;
        for (int i = 0; i < m; i++) {
            int[] column = new int[m];
            column[i] = (int) Math.min(Integer.MAX_VALUE, capacity / lengths[i]);
            basis.add(column);
        }
        double[][] inverse = new double[m][m];
        for (int i = 0; i < m; i++) {
            inverse[i][i] = 1.0 / basis.get(i)[i];
        }
        for (int round = 0;; round++) {
            work.checkpoint();
            amounts = times(inverse, demand);
            double[] dual = new double[m];
            for (int j = 0; j < m; j++) {
                for (int i = 0; i < m; i++) {
                    dual[j] += inverse[i][j];
                }
                dual[j] = Math.max(0, dual[j]);
            }
            BestPattern.Found found = BestPattern.of(capacity, lengths, dual);
            double worth = 0;
            for (int j = 0; j < m; j++) {
                worth += dual[j] * demand[j];
            }
            bound = Math.max(bound, worth / Math.max(1, found.ceiling()));
            if (found.worth() <= 1 + TINY || round == MOST_ROUNDS) {
                return;
            }
            enter(inverse, found.column());
        }
    }

    private void enter(double[][] inverse, int[] column) {
        int m = lengths.length;
        double[] direction = times(inverse, Arrays.stream(column).asDoubleStream().toArray());
        int leaves = -1;
        double least = Double.MAX_VALUE;
        for (int i = 0; i < m; i++) {
            if (direction[i] > TINY && Math.max(0, amounts[i]) / direction[i] < least) {
                least = Math.max(0, amounts[i]) / direction[i];
                leaves = i;
            }
        }
        basis.set(leaves, column);
        double pivot = direction[leaves];
        for (int j = 0; j < m; j++) {
            inverse[leaves][j] /= pivot;
        }
        for (int i = 0; i < m; i++) {
            if (i != leaves && direction[i] != 0) {
                for (int j = 0; j < m; j++) {
                    inverse[i][j] -= direction[i] * inverse[leaves][j];
                }
            }
        }
    }

    private static double[] times(double[][] matrix, double[] vector) {
        double[] product = new double[vector.length];
        for (int i = 0; i < product.length; i++) {
            for (int j = 0; j < vector.length; j++) {
                product[i] += matrix[i][j] * vector[j];
            }
        }
        return product;
    }
}
