package saddlebar.stencil.method;

/**
 * Floyd-Steinberg error diffusion in one row buffer of ints, without a branch a px. v = coverage + carried error; painted where v >= 1/2; the
 * error e = v - bit goes 7/16 to the next px and 3/16, 5/16, 1/16 to the three below, each rounded down in units of 2^-28 but the 3/16, which
 * takes what is left: no error is lost but what falls outside the picture. If all errors lie from -1/2 to below 1/2 what comes together on a px does
 * too, rounding included (each share is least and greatest where its error is), so that they all do, and 7 e fits an int.
 *
 * <p>Source: Floyd and Steinberg, An adaptive algorithm for spatial greyscale, Proc. SID 17(2), 1976, 75-77.
 */
final class FloydSteinbergRows implements RowDecider {
    private static final int HALF = ONE >> 1;
    /** Shifting up and down by this takes whole ones away from v until it lies within -1/2 to 1/2: the error, without waiting for the decision. */
    static final int WRAP = Integer.SIZE - SHIFT;

    private final int dots;
    private final boolean serpentine;
    /** Error that the row above left for px x, at x + 1: the two ends take what falls outside and are never read. */
    private final int[] carried;
    private int y;

    FloydSteinbergRows(int dots, boolean serpentine) {
        this(dots, serpentine, new int[dots + 2]);
    }

    /** @param carried error that rows above have left already */
    FloydSteinbergRows(int dots, boolean serpentine, int[] carried) {
        this.dots = dots;
        this.serpentine = serpentine;
        this.carried = carried;
    }

    @Override
    public void decide(int[] coverage, long[] painted, int fromWord) {
        if (serpentine && (y & 1) == 1) {
            leftwards(coverage, painted, fromWord);
        } else {
            rightwards(coverage, painted, fromWord);
        }
        y++;
    }

    private void rightwards(int[] coverage, long[] painted, int fromWord) {
        int[] carry = carried;
        int next = 0;
        int below = 0; // so far for the px under the one before
        int belowNext = 0; // so far for the px under this one
        for (int word = fromWord, x = 0; x < dots; word++) {
            long packed = 0;
            for (int end = Math.min(dots, x + 64); x < end; x++) {
                int v = coverage[x] + carry[x + 1] + next;
                int bit = (HALF - 1 - v) >>> 31;
                int e = v << WRAP >> WRAP;
                next = 7 * e >> 4;
                int five = 5 * e >> 4;
                int one = e >> 4;
                carry[x] = below + e - next - five - one;
                below = belowNext + five;
                belowNext = one;
                packed = packed << 1 | bit;
            }
            painted[word] = packed << (-x & 63);
        }
        carry[dots] = below;
    }

    private void leftwards(int[] coverage, long[] painted, int fromWord) {
        int[] carry = carried;
        int next = 0;
        int below = 0;
        int belowNext = 0;
        for (int word = (dots - 1) >> 6, x = dots - 1; word >= 0; word--) {
            long packed = 0;
            for (int end = word << 6; x >= end; x--) {
                int v = coverage[x] + carry[x + 1] + next;
                int bit = (HALF - 1 - v) >>> 31;
                int e = v << WRAP >> WRAP;
                next = 7 * e >> 4;
                int five = 5 * e >> 4;
                int one = e >> 4;
                carry[x + 2] = below + e - next - five - one;
                below = belowNext + five;
                belowNext = one;
                packed = packed >>> 1 | (long) bit << 63;
            }
            painted[fromWord + word] = packed;
        }
        carry[1] = below;
    }
}
