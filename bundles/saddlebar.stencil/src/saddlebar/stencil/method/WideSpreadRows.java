package saddlebar.stencil.method;

import saddlebar.stencil.DiffusionFilter;

/**
 * Error diffusion with the twelve weights of Jarvis-Judice-Ninke or Stucki in ints: v = coverage + carried error; painted where v >= 1/2; of the error e
 * each tap takes weight * (e / divisor), the quotient cut towards 0, so that what comes together on a px never passes +-1/2 and nothing strays into
 * bare or solid. What the cut loses is below 2^-22 a px. Weights that point outside the picture are dropped.
 *
 * <p>What goes to the next row and to the one after it is kept in one long a px, {@code first + (second << 32)}: one product adds to both.
 *
 * <p>Sources: see {@link DiffusionFilter}.
 */
final class WideSpreadRows implements RowDecider {
    private static final int HALF = ONE >> 1;
    private static final int WRAP = FloydSteinbergRows.WRAP;
    private static final int MARGIN = 2;
    /** e / d = e * ceil(2^35 / d) / 2^35, cut: exact for all errors, since d * ceil(2^35 / d) - 2^35 is less than 2^5. */
    private static final int QUOTIENT_BITS = 35;
    private static final long HALF_OF_LOW = 1L << 31;

    private final int dots;
    private final boolean serpentine;
    private final long reciprocal;
    private final int next1;
    private final int next2;
    private final long below;
    private final long beside;
    private final long outer;
    /** What the row before left, and what the one before it left; px x at x + {@link #MARGIN}. */
    private long[] newer;
    private long[] older;
    private int y;

    WideSpreadRows(int dots, DiffusionFilter filter, boolean serpentine) {
        Spread spread = Spread.of(filter);
        int[] weight = spread.weight(); // two to the right, five below from left to right, five below them
        this.dots = dots;
        this.serpentine = serpentine;
        this.reciprocal = ((1L << QUOTIENT_BITS) + spread.divisor() - 1) / spread.divisor();
        this.next1 = weight[0];
        this.next2 = weight[1];
        this.below = pair(weight[4], weight[9]);
        this.beside = pair(weight[3], weight[8]);
        this.outer = pair(weight[2], weight[7]);
        this.newer = new long[dots + 2 * MARGIN];
        this.older = new long[dots + 2 * MARGIN];
    }

    private static long pair(int first, int second) {
        return first + ((long) second << 32);
    }

    @Override
    public void decide(int[] coverage, long[] painted, int fromWord) {
        boolean leftwards = serpentine && (y & 1) == 1;
        int step = leftwards ? -1 : 1;
        int lastOfWord = leftwards ? 0 : 63;
        long[] above = newer;
        long[] here = older; // read before it is written, two px behind
        int next = 0;
        int afterNext = 0;
        long a0 = 0; // for the px two back, the one before, the one below and the one after it, so far
        long a1 = 0;
        long a2 = 0;
        long a3 = 0;
        long packed = 0;
        for (int i = 0, x = leftwards ? dots - 1 : 0; i < dots; i++, x += step) {
            int at = x + MARGIN;
            int v = coverage[x] + (int) above[at] + (int) (here[at] + HALF_OF_LOW >> 32) + next;
            packed = packed << 1 | (HALF - 1 - v) >>> 31;
            int e = v << WRAP >> WRAP;
            int u = (int) (e * reciprocal >> QUOTIENT_BITS) - (e >> 31);
            next = afterNext + u * next1;
            afterNext = u * next2;
            here[at - 2 * step] = a0 + u * outer;
            a0 = a1 + u * beside;
            a1 = a2 + u * below;
            a2 = a3 + u * beside;
            a3 = u * outer;
            if ((x & 63) == lastOfWord) {
                painted[fromWord + (x >> 6)] = leftwards ? Long.reverse(packed) : packed;
            }
        }
        if (!leftwards && (dots & 63) != 0) {
            painted[fromWord + (dots >> 6)] = packed << (-dots & 63);
        }
        int last = (leftwards ? 0 : dots - 1) + MARGIN;
        here[last - step] = a0;
        here[last] = a1;
        older = above;
        newer = here;
        y++;
    }
}
