package saddlebar.stencil.method;

/**
 * Error diffusion to the next px, the one below it behind and the one below, in shares that go by tone, in ints: v = coverage + carried error; painted
 * where v >= 1/2. More than 1 can come together on a px where tones change; bare stays bare and solid stays solid all the same, and error beyond +-1/2
 * is dropped there. Shares are rounded to 2^-24, the px below takes the rest. Weights that point outside the picture are dropped.
 *
 * <p>Source: Ostromoukhov, A simple and efficient error-diffusion algorithm, SIGGRAPH 2001, 567-572.
 */
final class TonalSpreadRows implements RowDecider {
    private static final int HALF = ONE >> 1;
    private static final int SHARE_BITS = 24;

    private final int dots;
    private final boolean serpentine;
    private final int[] right = new int[256];
    private final int[] behind = new int[256];
    private final int[] carried;
    private int y;

    TonalSpreadRows(int dots, Spread[] byLevel, boolean serpentine) {
        this.dots = dots;
        this.serpentine = serpentine;
        this.carried = new int[dots + 2];
        for (int level = 0; level < 256; level++) {
            Spread spread = byLevel[level];
            right[level] = share(spread, 0);
            behind[level] = share(spread, 1);
        }
    }

    private static int share(Spread spread, int tap) {
        return (int) Math.round((double) (1 << SHARE_BITS) * spread.weight()[tap] / spread.divisor());
    }

    @Override
    public void decide(int[] coverage, long[] painted, int fromWord) {
        boolean leftwards = serpentine && (y & 1) == 1;
        int step = leftwards ? -1 : 1;
        int lastOfWord = leftwards ? 0 : 63;
        long packed = 0;
        int next = 0;
        int below = 0; // so far for the px under the one before
        int[] carry = carried;
        for (int i = 0, x = leftwards ? dots - 1 : 0; i < dots; i++, x += step) {
            int a = coverage[x];
            int v = a + carry[x + 1] + next;
            int bit = (HALF - 1 - v) >>> 31;
            int e = v - (bit << SHIFT);
            if (a == 0 || a == ONE) {
                bit = a >> SHIFT;
                e = Math.max(-HALF, Math.min(HALF, v - a));
            }
            int level = (int) (255L * a + HALF >> SHIFT);
            next = (int) ((long) e * right[level] >> SHARE_BITS);
            int back = (int) ((long) e * behind[level] >> SHARE_BITS);
            carry[x + 1 - step] = below + back;
            below = e - next - back;
            packed = packed << 1 | bit;
            if ((x & 63) == lastOfWord) {
                painted[fromWord + (x >> 6)] = leftwards ? Long.reverse(packed) : packed;
            }
        }
        if (!leftwards && (dots & 63) != 0) {
            painted[fromWord + (dots >> 6)] = packed << (-dots & 63);
        }
        carry[leftwards ? 1 : dots] = below;
        y++;
    }
}
