package saddlebar.stencil.method;

import java.io.IOException;

import saddlebar.model.art.GrayBands;
import saddlebar.stencil.ScreeningRecipe;

/**
 * The phase of lines that follow the contours of a picture. The darkness of an overview is softened; its gradient, blended with the recipe's own
 * direction where the picture is flat, says which way the phase is to rise; the phase is the one whose slope comes nearest to that in the sense of
 * least squares (Poisson's equation, free edges, successive over-relaxation). Slopes are then brought back to one length and the phase is sought
 * again, so that lines keep their distance. On a grid of at most 160 nodes a side, cubic between. Our own.
 */
final class ContourPhase implements LinePhase {
    private static final int MOST_NODES = 160;
    private static final int ROUNDS = 3;
    private static final int SWEEPS = 240;
    private static final double FLAT = 0.5;
    private static final int SOFTENINGS = 3;
    private static final double MOST_RAISED = 1.5;

    private final int columns;
    private final int rows;
    private final double nodesPerPx;
    private final double[] phase;

    private ContourPhase(int columns, int rows, double nodesPerPx, double[] phase) {
        this.columns = columns;
        this.rows = rows;
        this.nodesPerPx = nodesPerPx;
        this.phase = phase;
    }

    static ContourPhase of(GrayBands overview, double overviewDpi, ScreeningRecipe recipe) throws IOException {
        try (overview) {
            int pxANode = Math.max(1, (Math.max(overview.widthPx(), overview.heightPx()) + MOST_NODES - 1) / MOST_NODES);
            int columns = (overview.widthPx() + pxANode - 1) / pxANode + 1;
            int rows = (overview.heightPx() + pxANode - 1) / pxANode + 1;
            double[] dark = soft(means(overview, pxANode, columns, rows), columns, rows);
            double nodesPerPx = overviewDpi / recipe.dpi() / pxANode;
            double perNode = recipe.lpi() / recipe.dpi() / nodesPerPx;
            return new ContourPhase(columns, rows, nodesPerPx, solved(dark, columns, rows, perNode, recipe.angleDeg()));
        }
    }

    private static double[] means(GrayBands overview, int pxANode, int columns, int rows) throws IOException {
        double[] sum = new double[columns * rows];
        int[] count = new int[columns * rows];
        int width = overview.widthPx();
        byte[] band = new byte[Math.multiplyExact(width, 16)];
        int y = 0;
        for (int read = overview.read(band, 16); read > 0; read = overview.read(band, 16)) {
            for (int r = 0; r < read; r++, y++) {
                for (int x = 0; x < width; x++) {
                    int node = y / pxANode * columns + x / pxANode;
                    sum[node] += 1 - (band[r * width + x] & 255) / 255.0;
                    count[node]++;
                }
            }
        }
        for (int i = 0; i < sum.length; i++) {
            if (count[i] > 0) {
                sum[i] /= count[i];
            } else {
                sum[i] = sum[i % columns == columns - 1 ? i - 1 : i - columns]; // the last row and column go on
            }
        }
        return sum;
    }

    private static double[] soft(double[] values, int columns, int rows) {
        double[] from = values;
        int reach = Math.max(1, Math.max(columns, rows) / 40);
        for (int round = 0; round < SOFTENINGS; round++) {
            from = boxed(boxed(from, columns, rows, reach, 1), columns, rows, reach, columns);
        }
        return from;
    }

    private static double[] boxed(double[] values, int columns, int rows, int reach, int step) {
        double[] to = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            int at = step == 1 ? i % columns : i / columns;
            int last = (step == 1 ? columns : rows) - 1;
            double sum = 0;
            for (int d = -reach; d <= reach; d++) {
                sum += values[i + (Math.max(0, Math.min(last, at + d)) - at) * step];
            }
            to[i] = sum / (2 * reach + 1);
        }
        return to;
    }

    private static double[] solved(double[] dark, int columns, int rows, double perNode, double angleDeg) {
        int n = dark.length;
        double angle = StrictMath.toRadians(angleDeg);
        double ownX = -StrictMath.sin(angle);
        double ownY = StrictMath.cos(angle);
        double[] gx = new double[n];
        double[] gy = new double[n];
        double mean = 0;
        for (int i = 0; i < n; i++) {
            gx[i] = slope(dark, i, i % columns, columns, 1);
            gy[i] = slope(dark, i, i / columns, rows, columns);
            mean += Math.sqrt(gx[i] * gx[i] + gy[i] * gy[i]) / n;
        }
        double[] phase = new double[n];
        for (int i = 0; i < n; i++) {
            int x = i % columns;
            int y = i / columns;
            double weight = FLAT * mean + 1e-9;
            // of the two ways to cross a contour the one that agrees with the recipe's own direction, or lines would meet head on
            double sign = gx[i] * ownX + gy[i] * ownY < 0 ? -1 : 1;
            gx[i] = sign * gx[i] + weight * ownX;
            gy[i] = sign * gy[i] + weight * ownY;
            phase[i] = perNode * (x * ownX + y * ownY);
        }
        toLength(gx, gy, perNode, Double.POSITIVE_INFINITY);
        for (int round = 0; round < ROUNDS; round++) {
            toLength(gx, gy, perNode, MOST_RAISED);
            relax(phase, gx, gy, columns, rows);
            for (int i = 0; i < n; i++) {
                gx[i] = slope(phase, i, i % columns, columns, 1);
                gy[i] = slope(phase, i, i / columns, rows, columns);
            }
        }
        return phase;
    }

    private static double slope(double[] values, int i, int at, int size, int step) {
        int before = at > 0 ? step : 0;
        int after = at < size - 1 ? step : 0;
        return before + after == 0 ? 0 : (values[i + after] - values[i - before]) / (before + after) * step;
    }

    private static void toLength(double[] gx, double[] gy, double length, double mostRaised) {
        for (int i = 0; i < gx.length; i++) {
            double have = Math.sqrt(gx[i] * gx[i] + gy[i] * gy[i]);
            double by = have > 1e-12 ? Math.min(length / have, mostRaised) : 0; // where courses meet, slopes stay flat rather than turn into whirls
            gx[i] *= by;
            gy[i] *= by;
        }
    }

    /** Least squares over the edges of the grid: the step along an edge is to be the mean of the slopes at its ends. */
    private static void relax(double[] phase, double[] gx, double[] gy, int columns, int rows) {
        double over = 2 / (1 + Math.PI / Math.max(columns, rows));
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            for (int y = 0, i = 0; y < rows; y++) {
                for (int x = 0; x < columns; x++, i++) {
                    double sum = 0;
                    int edges = 0;
                    if (x > 0) {
                        sum += phase[i - 1] + (gx[i - 1] + gx[i]) / 2;
                        edges++;
                    }
                    if (x < columns - 1) {
                        sum += phase[i + 1] - (gx[i + 1] + gx[i]) / 2;
                        edges++;
                    }
                    if (y > 0) {
                        sum += phase[i - columns] + (gy[i - columns] + gy[i]) / 2;
                        edges++;
                    }
                    if (y < rows - 1) {
                        sum += phase[i + columns] - (gy[i + columns] + gy[i]) / 2;
                        edges++;
                    }
                    phase[i] += over * (sum / edges - phase[i]);
                }
            }
        }
    }

    @Override
    public double at(double xPx, double yPx) {
        double x = Math.max(0, Math.min(columns - 1.0, xPx * nodesPerPx - 0.5));
        double y = Math.max(0, Math.min(rows - 1.0, yPx * nodesPerPx - 0.5));
        int column = Math.min(columns - 2, (int) x);
        int row = Math.min(rows - 2, (int) y);
        double t = x - column;
        double[] between = new double[4];
        for (int r = -1; r <= 2; r++) {
            between[r + 1] = cubic(node(column - 1, row + r), node(column, row + r), node(column + 1, row + r), node(column + 2, row + r), t);
        }
        return cubic(between[0], between[1], between[2], between[3], y - row);
    }

    /** Past the edges the phase goes on straight. */
    private double node(int column, int row) {
        int c = Math.max(0, Math.min(columns - 1, column));
        int r = Math.max(0, Math.min(rows - 1, row));
        double value = phase[r * columns + c];
        if (c != column) {
            value += value - phase[r * columns + (c == 0 ? 1 : c - 1)];
        }
        if (r != row) {
            value += phase[r * columns + c] - phase[(r == 0 ? 1 : r - 1) * columns + c];
        }
        return value;
    }

    /** Catmull-Rom. */
    private static double cubic(double a, double b, double c, double d, double t) {
        return b + t / 2 * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
    }
}
