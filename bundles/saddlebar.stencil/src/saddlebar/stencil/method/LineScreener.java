package saddlebar.stencil.method;

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
    private static final int FINE = 4096;
    private static final int NOISE = BlueNoiseMethod.SIDE;

    private final LinePhase phase;
    private final int widthPx;
    private final byte[] codes = new byte[FINE];
    private final byte[] thresholds;
    private final double perPx;
    private final int[] noise = BlueNoiseRanks.of(NOISE);
    private int y;

    /** @param perPx lines a px, about */
    LineScreener(LinePhase phase, double perPx, ToneTable tone, int widthPx) {
        this.phase = phase;
        this.widthPx = widthPx;
        this.perPx = perPx;
        this.thresholds = new byte[widthPx + STEP];
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

    private void fill() {
        double from = phase.at(0.5, y + 0.5);
        int half = (int) Math.round(perPx * (1 << SHIFT));
        int row = y / STEP % NOISE * NOISE;
        for (int x = 0; x < widthPx; x += STEP) {
            double to = phase.at(x + STEP + 0.5, y + 0.5);
            int at = (int) (long) ((from - Math.floor(from)) * (1 << SHIFT));
            int step = (int) Math.round((to - from) / STEP * (1 << SHIFT));
            int move = (int) ((long) half * (2 * noise[row + x / STEP % NOISE] + 1 - NOISE * NOISE) / (NOISE * NOISE));
            for (int i = 0; i < STEP; i++) {
                int off = Math.abs(2 * (at & (1 << SHIFT) - 1) - (1 << SHIFT)); // 0 in the middle of the line
                int moved = Math.abs(off + move);
                thresholds[x + i] = codes[Math.min(moved, (2 << SHIFT) - moved - 1) >>> SHIFT - 12 & FINE - 1];
                at += step;
            }
            from = to;
        }
    }
}
