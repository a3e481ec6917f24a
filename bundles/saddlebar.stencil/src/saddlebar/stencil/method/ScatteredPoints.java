package saddlebar.stencil.method;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

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
        PointCells cells = new PointCells(x, y);
        for (int i = 0; i < count; i++) {
            double best = -1;
            for (int candidate = 0; candidate < CANDIDATES; candidate++) {
                double cx = random.nextDouble();
                double cy = random.nextDouble();
                double nearest = cells.nearestSquared(cx, cy, 1);
                if (nearest > best) {
                    best = nearest;
                    x[i] = cx;
                    y[i] = cy;
                }
            }
            cells.add(i);
        }
        ScatteredPoints points = new ScatteredPoints(x, y);
        for (int move = 0; move < MOVES; move++) {
            points.centre();
        }
        return points;
    }

    private void centre() {
        int grid = (int) Math.round(Math.sqrt(x.length)) * 8;
        int[] of = nearest(grid).point();
        double[] sumX = new double[x.length];
        double[] sumY = new double[x.length];
        int[] count = new int[x.length];
        for (int i = 0; i < of.length; i++) {
            int point = of[i];
            sumX[point] += PointCells.around((i % grid + 0.5) / grid - x[point]);
            sumY[point] += PointCells.around((i / grid + 0.5) / grid - y[point]);
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

    int size() {
        return x.length;
    }

    /** Distance to the nearest point and which it is, for the middles of a grid of {@code side} x {@code side} places. */
    NearestPoints nearest(int side) {
        return NearestPoints.of(x, y, side);
    }

    /**
     * For each point its rank, 0 first, so that the first k points always stand well apart: the point in the tightest cluster takes the last rank and
     * goes, again and again (as void-and-cluster ranks below its prototype; Ulichney, Proc. SPIE 1913, 1993).
     */
    int[] order() {
        int n = x.length;
        int[][] near = new int[n][];
        double[][] bells = new double[n][];
        double[] energy = new double[n];
        IntStream.range(0, n).parallel().forEach(i -> energy[i] = bells(i, near, bells));
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
            int[] others = near[tightest];
            for (int i = 0; i < others.length; i++) {
                energy[others[i]] -= bells[tightest][i];
            }
        }
        return rank;
    }

    /** Finds the points near one, itself among them, and their bells; gives the sum. */
    private double bells(int of, int[][] near, double[][] bells) {
        int n = x.length;
        double scale = n / (2 * SIGMA * SIGMA * 4);
        int[] others = new int[n];
        double[] values = new double[n];
        int count = 0;
        double sum = 0;
        for (int j = 0; j < n; j++) {
            double exponent = scale * PointCells.squared(x[of] - x[j], y[of] - y[j]);
            if (exponent <= FAR) {
                others[count] = j;
                values[count] = StrictMath.exp(-exponent);
                sum += values[count++];
            }
        }
        near[of] = Arrays.copyOf(others, count);
        bells[of] = Arrays.copyOf(values, count);
        return sum;
    }
}
