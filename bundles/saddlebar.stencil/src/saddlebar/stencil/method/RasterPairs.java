package saddlebar.stencil.method;

/**
 * Floyd-Steinberg error diffusion of rows that are all scanned from left to right, two rows at a time: the lower one follows two px behind, so that two
 * chains of sums, neither waiting for the other, are under way at once. The bits are those of {@link FloydSteinbergRows}.
 */
final class RasterPairs {
    private static final int WRAP = FloydSteinbergRows.WRAP;
    private static final int HALF = RowDecider.ONE >> 1;

    private RasterPairs() {
    }

    /** What one pair of rows has under way between two calls. */
    static final class State {
        private int next;
        private int below;
        private int belowNext;
        private int lowerNext;
        private int lowerBelow;
        private int lowerBelowNext;
        /** Error that the upper row left for the px that the lower one takes next. */
        private int handed;
        private long lowerBits;
    }

    /**
     * Goes on with both rows.
     *
     * @param from  px of the upper row to begin with, a multiple of 64
     * @param to    px of the upper row before which to stop: a multiple of 64, or the width
     * @param carry error left by the row above, px x at x + 1; takes what the lower row leaves, three px behind
     */
    static void run(State s, byte[] gray, int upper, int lower, int[] tone, int from, int to, int[] carry, long[] bits,
            int upperWord, int lowerWord) {
        int next = s.next;
        int below = s.below;
        int belowNext = s.belowNext;
        int lowerNext = s.lowerNext;
        int lowerBelow = s.lowerBelow;
        int lowerBelowNext = s.lowerBelowNext;
        int handed = s.handed;
        long lowerPacked = s.lowerBits;
        for (int x0 = from; x0 < to; x0 += 64) {
            long packed = 0;
            int end = Math.min(to, x0 + 64);
            for (int x = x0; x < end; x++) {
                int v = tone[gray[upper + x] & 255] + carry[x + 1] + next;
                int bit = (HALF - 1 - v) >>> 31;
                int e = v << WRAP >> WRAP;
                next = 7 * e >> 4;
                int five = 5 * e >> 4;
                int one = e >> 4;
                int done = below + e - next - five - one; // for px x - 1 of the lower row
                below = belowNext + five;
                belowNext = one;
                packed = packed << 1 | bit;
                if (x >= 2) {
                    int w = tone[gray[lower + x - 2] & 255] + handed + lowerNext;
                    int lowerBit = (HALF - 1 - w) >>> 31;
                    int f = w << WRAP >> WRAP;
                    lowerNext = 7 * f >> 4;
                    int lowerFive = 5 * f >> 4;
                    int lowerOne = f >> 4;
                    carry[x - 2] = lowerBelow + f - lowerNext - lowerFive - lowerOne;
                    lowerBelow = lowerBelowNext + lowerFive;
                    lowerBelowNext = lowerOne;
                    lowerPacked = lowerPacked << 1 | lowerBit;
                    if ((x - 1 & 63) == 0) {
                        bits[lowerWord + (x - 2 >> 6)] = lowerPacked;
                    }
                }
                handed = done;
            }
            bits[upperWord + (x0 >> 6)] = packed << (-end & 63);
        }
        s.next = next;
        s.below = below;
        s.belowNext = belowNext;
        s.lowerNext = lowerNext;
        s.lowerBelow = lowerBelow;
        s.lowerBelowNext = lowerBelowNext;
        s.handed = handed;
        s.lowerBits = lowerPacked;
    }

    /** Ends both rows: the last two px of the lower one. */
    static void end(State s, byte[] gray, int lower, int[] tone, int widthPx, int[] carry, long[] bits, int lowerWord) {
        for (int x = Math.max(0, widthPx - 2); x < widthPx; x++) {
            int w = tone[gray[lower + x] & 255] + (x == widthPx - 1 ? s.below : s.handed) + s.lowerNext;
            int bit = (HALF - 1 - w) >>> 31;
            int f = w << WRAP >> WRAP;
            s.lowerNext = 7 * f >> 4;
            int five = 5 * f >> 4;
            int one = f >> 4;
            carry[x] = s.lowerBelow + f - s.lowerNext - five - one;
            s.lowerBelow = s.lowerBelowNext + five;
            s.lowerBelowNext = one;
            s.lowerBits = s.lowerBits << 1 | bit;
            if ((x & 63) == 63 || x == widthPx - 1) {
                bits[lowerWord + (x >> 6)] = s.lowerBits << (-(x + 1) & 63);
            }
        }
        carry[widthPx] = s.lowerBelow;
    }
}
