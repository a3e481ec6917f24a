package saddlebar.nesting.outline;

/**
 * Distance from the middle of each cell of a picture to the nearest cell that is not set; cells beyond the border are not set. Two passes of
 * lower envelopes of parabolas, O(cells).
 *
 * <p>Source: Felzenszwalb, P. F., Huttenlocher, D. P. (2012). Distance transforms of sampled functions. Theory of Computing 8, 415-428.
 */
final class DistanceMap {
    private DistanceMap() {
    }

    /** With a frame of one cell around: (columns + 2) * (rows + 2) values, in units of {@code cell} length; half a cell is taken off. */
    static float[] of(boolean[] set, int columns, int rows, double cell) {
        int w = columns + 2;
        int h = rows + 2;
        double far = (double) w * w + (double) h * h;
        double[] square = new double[w * h];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                square[(row + 1) * w + column + 1] = set[row * columns + column] ? far : 0;
            }
        }
        int most = Math.max(w, h);
        double[] line = new double[most];
        int[] vertex = new int[most];
        double[] bound = new double[most + 1];
        for (int x = 0; x < w; x++) {
            pass(square, x, w, h, line, vertex, bound);
        }
        for (int y = 0; y < h; y++) {
            pass(square, y * w, 1, w, line, vertex, bound);
        }
        float[] distance = new float[w * h];
        for (int i = 0; i < distance.length; i++) {
            distance[i] = square[i] == 0 ? 0 : (float) ((Math.sqrt(square[i]) - 0.5) * cell);
        }
        return distance;
    }

    private static void pass(double[] square, int from, int stride, int n, double[] line, int[] vertex, double[] bound) {
        for (int i = 0; i < n; i++) {
            line[i] = square[from + i * stride];
        }
        int k = 0;
        vertex[0] = 0;
        bound[0] = Double.NEGATIVE_INFINITY;
        bound[1] = Double.POSITIVE_INFINITY;
        for (int q = 1; q < n; q++) {
            double meet = meet(line, q, vertex[k]);
            while (meet <= bound[k]) {
                k--;
                meet = meet(line, q, vertex[k]);
            }
            k++;
            vertex[k] = q;
            bound[k] = meet;
            bound[k + 1] = Double.POSITIVE_INFINITY;
        }
        k = 0;
        for (int q = 0; q < n; q++) {
            while (bound[k + 1] < q) {
                k++;
            }
            double away = q - vertex[k];
            square[from + q * stride] = away * away + line[vertex[k]];
        }
    }

    private static double meet(double[] line, int q, int v) {
        return (line[q] + (double) q * q - line[v] - (double) v * v) / (2.0 * (q - v));
    }
}
