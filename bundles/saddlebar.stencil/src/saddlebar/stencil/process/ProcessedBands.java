package saddlebar.stencil.process;

import java.io.IOException;

import saddlebar.stencil.BitBands;

/** Bits inverted, mirrored (left and right exchanged), or both, row by row. Bits past the width stay 0. */
public final class ProcessedBands implements BitBands {
    private final BitBands bits;
    private final boolean inverted;
    private final boolean mirrored;

    public ProcessedBands(BitBands bits, boolean inverted, boolean mirrored) {
        this.bits = bits;
        this.inverted = inverted;
        this.mirrored = mirrored;
    }

    @Override
    public int widthPx() {
        return bits.widthPx();
    }

    @Override
    public int heightPx() {
        return bits.heightPx();
    }

    @Override
    public int read(long[] target, int maxRows) throws IOException {
        int rows = bits.read(target, maxRows);
        int words = wordsPerRow();
        int past = words * 64 - widthPx();
        if (mirrored) {
            for (int row = 0; row < rows; row++) {
                mirror(target, row * words, words, past);
            }
        }
        if (inverted) {
            long lastWord = -1L << past;
            for (int row = 0; row < rows; row++) {
                int last = (row + 1) * words - 1;
                for (int i = row * words; i <= last; i++) {
                    target[i] = ~target[i];
                }
                target[last] &= lastWord;
            }
        }
        return rows;
    }

    /** Reverses a whole row of words, then moves it left over the bits past the width, which came to stand in front. */
    private static void mirror(long[] bits, int from, int words, int past) {
        int right = from + words - 1;
        for (int i = from, j = right; i < j; i++, j--) {
            long left = Long.reverse(bits[i]);
            bits[i] = Long.reverse(bits[j]);
            bits[j] = left;
        }
        if ((words & 1) == 1) {
            int middle = from + words / 2;
            bits[middle] = Long.reverse(bits[middle]);
        }
        if (past > 0) {
            for (int i = from; i < right; i++) {
                bits[i] = bits[i] << past | bits[i + 1] >>> 64 - past;
            }
            bits[right] <<= past;
        }
    }

    @Override
    public void close() {
        bits.close();
    }
}
