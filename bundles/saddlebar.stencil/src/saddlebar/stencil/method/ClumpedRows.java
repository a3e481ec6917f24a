package saddlebar.stencil.method;

import java.util.Arrays;

/**
 * Floyd-Steinberg error diffusion with output-dependent feedback, so that dots clump: for the decision alone h (F - a + n) is added to v, with F
 * the share of painted neighbours that are already set (the one before weighs 0.25, those above 0.15, 0.45, 0.15), a the coverage, so that light
 * and dark behave alike, and n a fixed noise within +-1/4 that keeps rows from marching in step. The error is still that of v, so the tone
 * stays. Bare stays bare and solid stays solid, whatever the neighbours; beyond +-1/2, error is dropped there, lest it wander to the next shape.
 * The arithmetic is that of {@link FloydSteinbergRows}; h = 0 gives its bits.
 *
 * <p>Source of the feedback: Levien, Output dependent feedback in error diffusion halftoning, IS&amp;T 46th annual conference, 1993. The weights
 * and the noise are our own, chosen by eye for clumps that are as wide as they are high.
 */
final class ClumpedRows implements RowDecider {
    private static final int HALF = ONE >> 1;
    private static final double BEFORE = 0.25;
    private static final double ABOVE = 0.45;
    private static final double BESIDE_ABOVE = 0.15;

    private final int dots;
    private final boolean serpentine;
    private final double hysteresis;
    private final int before;
    private final int above;
    private final int besideAbove;
    private final int[] carried;
    /** Bits of the row above and of this one, px x at x + 1. */
    private int[] bitsAbove;
    private int[] bits;
    private int y;

    /** @param hysteresis h, 0 to 2 */
    ClumpedRows(int dots, boolean serpentine, double hysteresis) {
        this.dots = dots;
        this.serpentine = serpentine;
        this.hysteresis = hysteresis;
        this.before = (int) Math.round(BEFORE * hysteresis * ONE);
        this.above = (int) Math.round(ABOVE * hysteresis * ONE);
        this.besideAbove = (int) Math.round(BESIDE_ABOVE * hysteresis * ONE);
        this.carried = new int[dots + 2];
        this.bitsAbove = new int[dots + 2];
        this.bits = new int[dots + 2];
    }

    @Override
    public void decide(int[] coverage, long[] painted, int fromWord) {
        Arrays.fill(painted, fromWord, fromWord + ((dots + 63) >> 6), 0);
        boolean leftwards = serpentine && (y & 1) == 1;
        int step = leftwards ? -1 : 1;
        int next = 0;
        int below = 0;
        int belowNext = 0;
        if (y == 0) {
            imagineRowAbove(coverage);
        }
        int bit = bitsAbove[leftwards ? dots : 1];
        for (int i = 0, x = leftwards ? dots - 1 : 0; i < dots; i++, x += step) {
            int v = coverage[x] + carried[x + 1] + next;
            long wish = (long) before * bit + (long) above * bitsAbove[x + 1] + (long) besideAbove * (bitsAbove[x] + bitsAbove[x + 2])
                    + (long) (hysteresis * (noise(x, y) - coverage[x]));
            int e;
            if (coverage[x] == 0 || coverage[x] == ONE) {
                bit = coverage[x] >> SHIFT;
                e = Math.max(-HALF, Math.min(HALF - 1, v - coverage[x]));
            } else {
                bit = (int) (HALF - 1 - (v + wish) >>> 63);
                e = v - (bit << SHIFT);
            }
            next = (int) (7L * e >> 4); // errors reach +-(1/2 + 5/4 h): products in long
            int five = (int) (5L * e >> 4);
            int one = e >> 4;
            carried[x + 1 - step] = below + e - next - five - one;
            below = belowNext + five;
            belowNext = one;
            bits[x + 1] = bit;
            painted[fromWord + (x >> 6)] |= (long) bit << 63 - (x & 63);
        }
        carried[leftwards ? 1 : dots] = below;
        int[] swap = bitsAbove;
        bitsAbove = bits;
        bits = swap;
        y++;
    }

    /** Above the picture the tone of its first row goes on, or the first rows would miss their neighbours and swing. */
    private void imagineRowAbove(int[] coverage) {
        for (int x = 0; x < dots; x++) {
            bitsAbove[x + 1] = Hash.mix(-1L - x) >>> 64 - SHIFT < coverage[x] ? 1 : 0;
        }
    }

    /** Within +-1/4 in units of 1/{@link #ONE}; the same for the same dot of any picture. */
    private static int noise(int x, int y) {
        return (int) (Hash.mix((long) y << 32 | x) >> 37);
    }
}
