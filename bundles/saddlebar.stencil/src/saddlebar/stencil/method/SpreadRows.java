package saddlebar.stencil.method;

import java.util.Arrays;

import saddlebar.stencil.ScreeningRecipe.Edge;

/**
 * Error diffusion with any weights, carried in double: v = coverage + carried error, painted where v >= 1/2, the error v - bit spread to px not
 * yet visited, weights mirrored on rows that are scanned from right to left. Weights that point outside are dropped, or shared among those that
 * stay inside. Slower than {@link FloydSteinbergRows}, and used where that does not do.
 */
final class SpreadRows implements RowDecider {
    private static final int ROWS_BELOW = 2;

    private final int dots;
    private final Spread[] byLevel;
    private final boolean serpentine;
    private final boolean shareAtEdge;
    private final double[][] carried;
    private int y;

    /** @param byLevel one for all tones, or 256 by level of coverage */
    SpreadRows(int dots, Spread[] byLevel, boolean serpentine, Edge edge) {
        this.dots = dots;
        this.byLevel = byLevel;
        this.serpentine = serpentine;
        this.shareAtEdge = edge == Edge.SHARED;
        this.carried = new double[ROWS_BELOW + 1][dots];
    }

    @Override
    public void decide(int[] coverage, long[] painted, int fromWord) {
        Arrays.fill(painted, fromWord, fromWord + ((dots + 63) >> 6), 0);
        double[] here = carried[y % carried.length];
        boolean leftwards = serpentine && (y & 1) == 1;
        int step = leftwards ? -1 : 1;
        for (int i = 0, x = leftwards ? dots - 1 : 0; i < dots; i++, x += step) {
            double wanted = (double) coverage[x] / ONE;
            double v = wanted + here[x];
            boolean paints = v >= 0.5;
            if (paints) {
                painted[fromWord + (x >> 6)] |= 1L << 63 - (x & 63);
            }
            Spread spread = byLevel.length == 1 ? byLevel[0] : byLevel[(int) Math.round(wanted * 255)];
            spread(spread, paints ? v - 1 : v, x, step);
        }
        Arrays.fill(here, 0);
        y++;
    }

    private void spread(Spread spread, double error, int x, int step) {
        int[] dx = spread.dx();
        int[] weight = spread.weight();
        int sum = spread.divisor();
        if (shareAtEdge) {
            sum = 0;
            for (int tap = 0; tap < dx.length; tap++) {
                int to = x + step * dx[tap];
                sum += to >= 0 && to < dots ? weight[tap] : 0;
            }
            if (sum == 0) {
                return;
            }
        }
        for (int tap = 0; tap < dx.length; tap++) {
            int to = x + step * dx[tap];
            if (to >= 0 && to < dots) {
                carried[(y + spread.dy()[tap]) % carried.length][to] += error * weight[tap] / sum;
            }
        }
    }
}
