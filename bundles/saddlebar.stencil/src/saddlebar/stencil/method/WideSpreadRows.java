package saddlebar.stencil.method;

import java.util.Arrays;

import saddlebar.stencil.DiffusionFilter;

/**
 * Error diffusion with the twelve weights of Jarvis-Judice-Ninke or Stucki in ints: v = coverage + carried error; painted where v >= 1/2; of the error e
 * each tap takes weight * (e / divisor), the quotient cut towards 0, so that what comes together on a px never passes +-1/2 and nothing strays into
 * bare or solid. What the cut loses is below 2^-22 a px. Weights that point outside the picture are dropped.
 *
 * <p>Sources: see {@link DiffusionFilter}.
 */
final class WideSpreadRows implements RowDecider {
    private static final int HALF = ONE >> 1;
    private static final int MARGIN = 2;

    private final int dots;
    private final boolean serpentine;
    private final boolean stucki;
    /** Error left for this row, and so far for the next one; px x at x + 2. */
    private int[] here;
    private int[] below;
    private int y;

    WideSpreadRows(int dots, DiffusionFilter filter, boolean serpentine) {
        this.dots = dots;
        this.serpentine = serpentine;
        this.stucki = filter == DiffusionFilter.STUCKI;
        this.here = new int[dots + 2 * MARGIN];
        this.below = new int[dots + 2 * MARGIN];
    }

    @Override
    public void decide(int[] coverage, long[] painted, int fromWord) {
        Arrays.fill(painted, fromWord, fromWord + ((dots + 63) >> 6), 0);
        boolean leftwards = serpentine && (y & 1) == 1;
        int[] nextBelow = here; // read before it is written, two px behind
        if (stucki) {
            stucki(coverage, painted, fromWord, leftwards, nextBelow);
        } else {
            jarvis(coverage, painted, fromWord, leftwards, nextBelow);
        }
        here = below;
        below = nextBelow;
        Arrays.fill(here, 0, MARGIN, 0);
        Arrays.fill(here, dots + MARGIN, dots + 2 * MARGIN, 0);
        Arrays.fill(below, 0, MARGIN, 0);
        Arrays.fill(below, dots + MARGIN, dots + 2 * MARGIN, 0);
        y++;
    }

    private void jarvis(int[] coverage, long[] painted, int fromWord, boolean leftwards, int[] two) {
        int step = leftwards ? -1 : 1;
        int[] carried = here;
        int[] one = below;
        int next = 0;
        int afterNext = 0;
        int a0 = 0; // one row down, two px back
        int a1 = 0;
        int a2 = 0;
        int a3 = 0;
        int b0 = 0; // two rows down
        int b1 = 0;
        int b2 = 0;
        int b3 = 0;
        for (int i = 0, x = leftwards ? dots - 1 : 0; i < dots; i++, x += step) {
            int at = x + MARGIN;
            int v = coverage[x] + carried[at] + next;
            int bit = (HALF - 1 - v) >>> 31;
            int u = (v - (bit << SHIFT)) / 48;
            int three = 3 * u;
            int five = 5 * u;
            int seven = 7 * u;
            next = afterNext + seven;
            afterNext = five;
            int back = at - 2 * step;
            one[back] += a0 + three;
            a0 = a1 + five;
            a1 = a2 + seven;
            a2 = a3 + five;
            a3 = three;
            two[back] = b0 + u;
            b0 = b1 + three;
            b1 = b2 + five;
            b2 = b3 + three;
            b3 = u;
            painted[fromWord + (x >> 6)] |= (long) bit << 63 - (x & 63);
        }
        int last = (leftwards ? 0 : dots - 1) + MARGIN;
        one[last - step] += a0;
        one[last] += a1;
        two[last - step] = b0;
        two[last] = b1;
    }

    private void stucki(int[] coverage, long[] painted, int fromWord, boolean leftwards, int[] two) {
        int step = leftwards ? -1 : 1;
        int[] carried = here;
        int[] one = below;
        int next = 0;
        int afterNext = 0;
        int a0 = 0;
        int a1 = 0;
        int a2 = 0;
        int a3 = 0;
        int b0 = 0;
        int b1 = 0;
        int b2 = 0;
        int b3 = 0;
        for (int i = 0, x = leftwards ? dots - 1 : 0; i < dots; i++, x += step) {
            int at = x + MARGIN;
            int v = coverage[x] + carried[at] + next;
            int bit = (HALF - 1 - v) >>> 31;
            int u = (v - (bit << SHIFT)) / 42;
            int twice = u << 1;
            int four = u << 2;
            int eight = u << 3;
            next = afterNext + eight;
            afterNext = four;
            int back = at - 2 * step;
            one[back] += a0 + twice;
            a0 = a1 + four;
            a1 = a2 + eight;
            a2 = a3 + four;
            a3 = twice;
            two[back] = b0 + u;
            b0 = b1 + twice;
            b1 = b2 + four;
            b2 = b3 + twice;
            b3 = u;
            painted[fromWord + (x >> 6)] |= (long) bit << 63 - (x & 63);
        }
        int last = (leftwards ? 0 : dots - 1) + MARGIN;
        one[last - step] += a0;
        one[last] += a1;
        two[last - step] = b0;
        two[last] = b1;
    }
}
