package saddlebar.stencil.method;

import java.util.Arrays;

/**
 * Floyd-Steinberg error diffusion with output-dependent feedback: for the decision alone v is raised by h/2 for each painted neighbour that is
 * already set, the one before in the row and the one above, so that dots clump; the error is still that of v, so the tone stays. The
 * arithmetic is that of {@link FloydSteinbergRows}; h = 0 gives its bits. Errors stay within +-(1/2 + h), so products are taken in long.
 *
 * <p>Source: Levien, Output dependent feedback in error diffusion halftoning, IS&amp;T 46th annual conference, 1993.
 */
final class ClumpedRows implements RowDecider {
    private static final int SHIFT = 28;
    private static final int HALF = ONE >> 1;

    private final int dots;
    private final boolean serpentine;
    private final int halfHysteresis;
    private final int[] carried;
    private final int[] above;
    private int y;

    /** @param hysteresis h, 0 to 2 */
    ClumpedRows(int dots, boolean serpentine, double hysteresis) {
        this.dots = dots;
        this.serpentine = serpentine;
        this.halfHysteresis = (int) Math.round(hysteresis * HALF);
        this.carried = new int[dots + 2];
        this.above = new int[dots];
    }

    @Override
    public void decide(int[] coverage, long[] painted, int fromWord) {
        Arrays.fill(painted, fromWord, fromWord + ((dots + 63) >> 6), 0);
        boolean leftwards = serpentine && (y & 1) == 1;
        y++;
        int step = leftwards ? -1 : 1;
        int next = 0;
        int below = 0;
        int belowNext = 0;
        int before = 0;
        for (int i = 0, x = leftwards ? dots - 1 : 0; i < dots; i++, x += step) {
            int v = coverage[x] + carried[x + 1] + next;
            int bit = (HALF - 1 - (v + halfHysteresis * (before + above[x]))) >>> 31;
            int e = v - (bit << SHIFT);
            next = (int) (7L * e >> 4);
            int five = (int) (5L * e >> 4);
            int one = e >> 4;
            carried[x + 1 - step] = below + e - next - five - one;
            below = belowNext + five;
            belowNext = one;
            before = bit;
            above[x] = bit;
            painted[fromWord + (x >> 6)] |= (long) bit << 63 - (x & 63);
        }
        carried[leftwards ? 1 : dots] = below;
    }
}
