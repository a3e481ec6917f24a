package saddlebar.stencil.method;

import java.util.Arrays;

import saddlebar.stencil.Screener;
import saddlebar.stencil.tone.ToneTable;

/**
 * Compares code values with the distance from the middle of the nearest line, in phase; the phase is exact every 8 px and straight between. To the
 * distance comes a blue noise of half a px either way, one value for 8 x 8 px so that no px stands alone: lines that lie along the device's grid would
 * otherwise have only as many widths as px.
 */
final class LineScreener implements Screener {
    private static final int STEP = 8;
    private static final int SHIFT = 24;
    private static final int WRAP = Integer.SIZE - SHIFT;
    private static final int FINE = 4096;
    private static final int NOISE = BlueNoiseMethod.SIDE;

    private final LinePhase phase;
    private final int widthPx;
    private final byte[] codes = new byte[FINE];
    private final byte[] thresholds;
    /** Phases every {@link #STEP} px of a row. */
    private final double[] ends;
    /** For each px of a row its phase, how far noise moves it, and the distance from the middle of its line. */
    private final int[] fine;
    private final int[] move;
    private final int[] distance;
    private final double perPx;
    private final int[] noise = BlueNoiseRanks.of(NOISE);
    private int y;

    /** @param perPx lines a px, about */
    LineScreener(LinePhase phase, double perPx, ToneTable tone, int widthPx) {
        this.phase = phase;
        this.widthPx = widthPx;
        this.perPx = perPx;
        this.thresholds = new byte[widthPx + STEP];
        this.ends = new double[(widthPx + STEP - 1) / STEP + 1];
        this.fine = new int[widthPx + STEP];
        this.move = new int[widthPx + STEP];
        this.distance = new int[widthPx];
        for (int i = 0; i < FINE; i++) {
            codes[i] = (byte) tone.codesAbove((i + 0.5) / FINE);
        }
    }

    @Override
    public void screen(byte[] gray, int rows, long[] bits) {
        int words = (widthPx + 63) >> 6;
        for (int row = 0; row < rows; row++) {
            fill();
            ThresholdScreener.compare(gray, row * widthPx, widthPx, thresholds, bits, row * words);
            y++;
        }
    }

    /** In three passes, each of them simple enough that several px are done at once. */
    private void fill() {
        if (y % STEP == 0) {
            spreadNoise(y / STEP % NOISE * NOISE);
        }
        phase.row(y + 0.5, 0.5, STEP, ends);
        for (int k = 0, x = 0; x < widthPx; k++, x += STEP) {
            double from = ends[k];
            int at = (int) (long) ((from - Math.floor(from)) * (1 << SHIFT)) << WRAP ^ Integer.MIN_VALUE; // one line is 2^32, its middle 0
            int step = (int) Math.floor((ends[k + 1] - from) / STEP * (1 << SHIFT) + 0.5) << WRAP;
            for (int i = 0; i < STEP; i++) {
                fine[x + i] = at + i * step;
            }
        }
        toDistance(fine, move, distance, widthPx);
        for (int x = 0; x < widthPx; x++) {
            thresholds[x] = codes[distance[x]];
        }
    }

    /** Distance from the middle of the line, moved by the noise, folded back at both ends; in sign masks, since that is what compilers do many at a time. */
    private static void toDistance(int[] fine, int[] move, int[] distance, int widthPx) {
        for (int x = 0; x < widthPx; x++) {
            int phase = fine[x];
            int sign = phase >> 31;
            int off = ((phase ^ sign) - sign >>> WRAP - 1) + move[x];
            sign = off >> 31;
            int moved = (off ^ sign) - sign;
            int past = (2 << SHIFT) - 1 - moved - moved; // a doubling would not be done many at a time
            distance[x] = moved + (past & past >> 31) >>> SHIFT - 12 & FINE - 1;
        }
    }

    private void spreadNoise(int row) {
        int half = (int) Math.round(perPx * (1 << SHIFT));
        for (int x = 0; x < widthPx; x += STEP) {
            Arrays.fill(move, x, x + STEP, (int) ((long) half * (2 * noise[row + x / STEP % NOISE] + 1 - NOISE * NOISE) / (NOISE * NOISE)));
        }
    }
}
