package saddlebar.nesting.outline;

import java.util.Arrays;

/** Where all shapes lie now, who overlaps whom how deep, and how much each pair's overlap weighs at present. Belongs to one thread. */
final class Board {
    private static final float HEAVIEST_RISE = 2.0f;
    private static final float LIGHTEST_RISE = 1.2f;
    private static final float FALL = 0.95f;

    private static final int MOST_MEASURED = 2500;

    final ShapeBook book;
    final int n;
    final int[] shape;
    final double[] x;
    final double[] y;
    private final double[] left;
    private final double[] right;
    private final double[] top;
    private final double[] bottom;
    private final float[][] depth;
    private final float[][] weight;

    Board(ShapeBook book, int n) {
        this.book = book;
        this.n = n;
        shape = new int[n];
        x = new double[n];
        y = new double[n];
        left = new double[n];
        right = new double[n];
        top = new double[n];
        bottom = new double[n];
        depth = new float[n <= MOST_MEASURED ? n : 0][n];
        weight = new float[n <= MOST_MEASURED ? n : 0][n];
        forgetWeights();
    }

    /** Are there few enough for the tables of all pairs? If not, only {@link #put} and {@link #isFree} may be asked. */
    boolean canMeasure() {
        return n <= MOST_MEASURED;
    }

    /** Would the shape overlap none of the others there? */
    boolean isFree(int i, int asShape, double atX, double atY) {
        Shape s = book.shape(asShape);
        for (int j = 0; j < n; j++) {
            if (j != i && near(s, atX, atY, j) && book.pair(asShape, shape[j]).overlaps(x[j] - atX, y[j] - atY)) {
                return false;
            }
        }
        return true;
    }

    void forgetWeights() {
        for (float[] row : weight) {
            Arrays.fill(row, 1);
        }
    }

    /** Puts a shape somewhere without looking at the others; {@link #measure} must follow. */
    void put(int i, int newShape, double newX, double newY) {
        Shape s = book.shape(newShape);
        shape[i] = newShape;
        x[i] = newX;
        y[i] = newY;
        left[i] = newX + s.minX;
        right[i] = newX + s.maxX;
        top[i] = newY + s.minY;
        bottom[i] = newY + s.maxY;
    }

    /** Puts a shape somewhere and measures it against the others. */
    void move(int i, int newShape, double newX, double newY) {
        put(i, newShape, newX, newY);
        for (int j = 0; j < n; j++) {
            if (j != i) {
                float d = (float) depthOf(newShape, newX, newY, j);
                depth[i][j] = d;
                depth[j][i] = d;
            }
        }
    }

    /** Measures all against all. */
    void measure() {
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                float d = near(book.shape(shape[i]), x[i], y[i], j) ? (float) depthOf(shape[i], x[i], y[i], j) : 0;
                depth[i][j] = d;
                depth[j][i] = d;
            }
        }
    }

    double right(int i) {
        return right[i];
    }

    double left(int i) {
        return left[i];
    }

    double depth(int i, int j) {
        return depth[i][j];
    }

    /** Sum of all depths, each pair once. */
    double loss() {
        double sum = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                sum += depth[i][j];
            }
        }
        return sum;
    }

    boolean overlaps(int i) {
        for (int j = 0; j < n; j++) {
            if (depth[i][j] > 0) {
                return true;
            }
        }
        return false;
    }

    /** What the shape's present place costs. */
    double cost(int i) {
        double sum = 0;
        for (int j = 0; j < n; j++) {
            sum += weight[i][j] * depth[i][j];
        }
        return sum;
    }

    /** What another place for the shape would cost; the search may stop counting at {@code enough}. */
    double cost(int i, int asShape, double atX, double atY, double enough) {
        Shape s = book.shape(asShape);
        double gap = book.gap();
        double l = atX + s.minX - gap;
        double r = atX + s.maxX + gap;
        double t = atY + s.minY - gap;
        double b = atY + s.maxY + gap;
        double sum = 0;
        for (int j = 0; j < n; j++) {
            if (left[j] < r && right[j] > l && top[j] < b && bottom[j] > t && j != i) {
                double d = depthOf(asShape, atX, atY, j);
                if (d > 0) {
                    sum += weight[i][j] * d;
                    if (sum >= enough) {
                        return sum;
                    }
                }
            }
        }
        return sum;
    }

    /** Pairs that overlap become heavier, the deeper the more; the others lighter again. */
    void learn() {
        float deepest = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                deepest = Math.max(deepest, depth[i][j]);
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                float w = weight[i][j];
                if (depth[i][j] > 0) {
                    w *= LIGHTEST_RISE + (HEAVIEST_RISE - LIGHTEST_RISE) * depth[i][j] / deepest;
                } else if (w > 1) {
                    w = Math.max(1, w * FALL);
                }
                weight[i][j] = w;
                weight[j][i] = w;
            }
        }
    }

    private boolean near(Shape s, double atX, double atY, int j) {
        double gap = book.gap();
        return left[j] < atX + s.maxX + gap && right[j] > atX + s.minX - gap && top[j] < atY + s.maxY + gap
                && bottom[j] > atY + s.minY - gap;
    }

    private double depthOf(int asShape, double atX, double atY, int j) {
        return book.pair(asShape, shape[j]).depth(x[j] - atX, y[j] - atY);
    }
}
