package saddlebar.stencil.method;

import java.util.Arrays;

import saddlebar.stencil.ScreeningRecipe.Edge;

/**
 * Error diffusion with any weights, carried in double: v = coverage + carried error, painted where v >= 1/2, the error v - bit spread to px not
 * yet visited, weights mirrored on rows that are scanned from right to left. Weights that point outside are dropped, or shared among those that
 * stay inside. Where weights go by tone, more than 1 can come together on a px; bare stays bare and solid stays solid all the same, and error
 * beyond +-1/2 is dropped there. Slower than {@link FloydSteinbergRows}, and used where that does not do.
 */
final class SpreadRows implements RowDecider {
    private static final int ROWS_BELOW = 2;
    /** Px on either side of a row that take what falls outside. */
    private static final int MARGIN = 2;

    private final int dots;
    private final Spread[] byLevel;
    private final double[][] shareByLevel;
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
        this.carried = new double[ROWS_BELOW + 1][dots + 2 * MARGIN];
        this.shareByLevel = new double[byLevel.length][];
        for (int level = 0; level < byLevel.length; level++) {
            Spread spread = byLevel[level];
            shareByLevel[level] = Arrays.stream(spread.weight()).mapToDouble(weight -> (double) weight / spread.divisor()).toArray();
        }
    }

    @Override
    public void decide(int[] coverage, long[] painted, int fromWord) {
        Arrays.fill(painted, fromWord, fromWord + ((dots + 63) >> 6), 0);
        double[] here = carried[y % carried.length];
        boolean leftwards = serpentine && (y & 1) == 1;
        int step = leftwards ? -1 : 1;
        for (int i = 0, x = leftwards ? dots - 1 : 0; i < dots; i++, x += step) {
            double v = (double) coverage[x] / ONE + here[x + MARGIN];
            int bit = v >= 0.5 ? 1 : 0;
            double error = v - bit;
            if (coverage[x] == 0 || coverage[x] == ONE) {
                bit = coverage[x] >> SHIFT;
                error = Math.max(-0.5, Math.min(0.5, v - bit));
            }
            painted[fromWord + (x >> 6)] |= (long) bit << 63 - (x & 63);
            int level = byLevel.length == 1 ? 0 : (int) (255L * coverage[x] + ONE / 2 >> SHIFT);
            if (shareAtEdge && (x < MARGIN || x >= dots - MARGIN)) {
                shareInside(byLevel[level], error, x, step);
            } else {
                spread(byLevel[level], shareByLevel[level], error, x + MARGIN, step);
            }
        }
        Arrays.fill(here, 0);
        y++;
    }

    private void spread(Spread spread, double[] share, double error, int at, int step) {
        int[] dx = spread.dx();
        int[] dy = spread.dy();
        double[] row = carried[y % carried.length];
        int rowsDown = 0;
        for (int tap = 0; tap < share.length; tap++) {
            if (dy[tap] != rowsDown) { // taps come row by row
                rowsDown = dy[tap];
                row = carried[(y + rowsDown) % carried.length];
            }
            row[at + step * dx[tap]] += error * share[tap];
        }
    }

    private void shareInside(Spread spread, double error, int x, int step) {
        int sum = 0;
        for (int tap = 0; tap < spread.dx().length; tap++) {
            sum += isInside(x + step * spread.dx()[tap]) ? spread.weight()[tap] : 0;
        }
        for (int tap = 0; tap < spread.dx().length; tap++) {
            int to = x + step * spread.dx()[tap];
            if (isInside(to) && sum > 0) {
                carried[(y + spread.dy()[tap]) % carried.length][to + MARGIN] += error * spread.weight()[tap] / sum;
            }
        }
    }

    private boolean isInside(int x) {
        return x >= 0 && x < dots;
    }
}
