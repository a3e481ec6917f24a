package saddlebar.stencil.method;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Points on the unit square whose edges join, as evenly and as irregularly apart as a careful hand sets dots. Each new point is the one of several
 * random ones that lies farthest from those that are there (Mitchell, Spectrally optimal sampling for distribution ray tracing, SIGGRAPH 1991,
 * 157-164); then all move a few times to the middle of what is nearest to them (Lloyd, Least squares quantization in PCM, IEEE Trans. Inf. Theory
 * 28(2), 1982, 129-137), but not until they stand in rows.
 */
final class ScatteredPoints {
    private static final int CANDIDATES = 8;
    private static final int MOVES = 3;
    private static final double SIGMA = 0.8;
    /** Beyond, a bell is below 1e-17. */
    private static final double FAR = 40;

    private final double[] x;
    private final double[] y;

    ScatteredPoints(double[] x, double[] y) {
        this.x = x;
        this.y = y;
    }

    static ScatteredPoints of(int count, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] x = new double[count];
        double[] y = new double[count];
        for (int i = 0; i < count; i++) {
            double best = -1;
            for (int candidate = 0; candidate < CANDIDATES; candidate++) {
                double cx = random.nextDouble();
                double cy = random.nextDouble();
                double nearest = 1;
                for (int other = 0; other < i; other++) {
                    nearest = Math.min(nearest, squared(x[other] - cx, y[other] - cy));
                }
                if (nearest > best) {
                    best = nearest;
                    x[i] = cx;
                    y[i] = cy;
                }
            }
        }
        ScatteredPoints points = new ScatteredPoints(x, y);
        for (int move = 0; move < MOVES; move++) {
            points.centre();
        }
        return points;
    }

    private void centre() {
        int grid = (int) Math.round(Math.sqrt(x.length)) * 8;
        int[] of = new int[grid * grid];
        nearest(grid, new float[grid * grid], of);
        double[] sumX = new double[x.length];
        double[] sumY = new double[x.length];
        int[] count = new int[x.length];
        for (int i = 0; i < of.length; i++) {
            int point = of[i];
            sumX[point] += around((i % grid + 0.5) / grid - x[point]);
            sumY[point] += around((i / grid + 0.5) / grid - y[point]);
            count[point]++;
        }
        for (int point = 0; point < x.length; point++) {
            if (count[point] > 0) {
                x[point] = inSquare(x[point] + sumX[point] / count[point]);
                y[point] = inSquare(y[point] + sumY[point] / count[point]);
            }
        }
    }

    private static double inSquare(double value) {
        return value - Math.floor(value);
    }

    private static double around(double difference) {
        return difference - Math.rint(difference);
    }

    /** Squared distance on the torus. */
    static double squared(double dx, double dy) {
        double ax = around(dx);
        double ay = around(dy);
        return ax * ax + ay * ay;
    }

    int size() {
        return x.length;
    }

    /** Distance to the nearest point and which it is, for the middles of a grid of {@code side} x {@code side} places. */
    void nearest(int side, float[] distance, int[] point) {
        int cells = Math.max(1, (int) Math.sqrt(x.length));
        int[][] inCell = new int[cells * cells][0];
        for (int i = 0; i < x.length; i++) {
            int cell = Math.min(cells - 1, (int) (y[i] * cells)) * cells + Math.min(cells - 1, (int) (x[i] * cells));
            inCell[cell] = Arrays.copyOf(inCell[cell], inCell[cell].length + 1);
            inCell[cell][inCell[cell].length - 1] = i;
        }
        for (int py = 0, at = 0; py < side; py++) {
            for (int px = 0; px < side; px++, at++) {
                nearest((px + 0.5) / side, (py + 0.5) / side, cells, inCell, at, distance, point);
            }
        }
    }

    private void nearest(double px, double py, int cells, int[][] inCell, int at, float[] distance, int[] point) {
        int column = (int) (px * cells);
        int row = (int) (py * cells);
        double best = 4;
        for (int ring = 0; ring <= cells / 2 + 1; ring++) {
            double reach = (ring - 1.0) / cells;
            if (reach > 0 && reach * reach > best) {
                break;
            }
            for (int dy = -ring; dy <= ring; dy++) {
                for (int dx = -ring; dx <= ring; dx += Math.abs(dy) == ring ? 1 : Math.max(1, 2 * ring)) {
                    for (int candidate : inCell[Math.floorMod(row + dy, cells) * cells + Math.floorMod(column + dx, cells)]) {
                        double squared = squared(x[candidate] - px, y[candidate] - py);
                        if (squared < best) {
                            best = squared;
                            point[at] = candidate;
                        }
                    }
                }
            }
        }
        distance[at] = (float) Math.sqrt(best);
    }

    /**
     * For each point its rank, 0 first, so that the first k points always stand well apart: the point in the tightest cluster takes the last rank and
     * goes, again and again (as void-and-cluster ranks below its prototype; Ulichney, Proc. SPIE 1913, 1993).
     */
    int[] order() {
        int n = x.length;
        double[] energy = new double[n];
        double scale = n / (2 * SIGMA * SIGMA * 4);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                energy[i] += bell(scale * squared(x[i] - x[j], y[i] - y[j]));
            }
        }
        int[] rank = new int[n];
        Arrays.fill(rank, -1);
        for (int last = n - 1; last >= 0; last--) {
            int tightest = -1;
            for (int i = 0; i < n; i++) {
                if (rank[i] < 0 && (tightest < 0 || energy[i] > energy[tightest])) {
                    tightest = i;
                }
            }
            rank[tightest] = last;
            for (int i = 0; i < n; i++) {
                energy[i] -= bell(scale * squared(x[i] - x[tightest], y[i] - y[tightest]));
            }
        }
        return rank;
    }

    private static double bell(double exponent) {
        return exponent > FAR ? 0 : StrictMath.exp(-exponent);
    }
}
