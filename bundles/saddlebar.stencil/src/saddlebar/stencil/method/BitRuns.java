package saddlebar.stencil.method;

/** Runs of 1 bits in a row laid out as {@link saddlebar.stencil.BitBands}. */
final class BitRuns {
    private BitRuns() {
    }

    /** Sets px {@code start} to {@code end - 1} of the row that begins at word {@code from}; start below end. */
    static void set(long[] bits, int from, int start, int end) {
        int firstWord = from + (start >> 6);
        int lastWord = from + (end - 1 >> 6);
        long first = -1L >>> (start & 63);
        long last = -1L << 63 - (end - 1 & 63);
        if (firstWord == lastWord) {
            bits[firstWord] |= first & last;
            return;
        }
        bits[firstWord] |= first;
        for (int i = firstWord + 1; i < lastWord; i++) {
            bits[i] = -1L;
        }
        bits[lastWord] |= last;
    }

    /** Clears px {@code start} to {@code end - 1} of the row that begins at word {@code from}; start below end. */
    static void clear(long[] bits, int from, int start, int end) {
        int firstWord = from + (start >> 6);
        int lastWord = from + (end - 1 >> 6);
        long first = -1L >>> (start & 63);
        long last = -1L << 63 - (end - 1 & 63);
        if (firstWord == lastWord) {
            bits[firstWord] &= ~(first & last);
            return;
        }
        bits[firstWord] &= ~first;
        for (int i = firstWord + 1; i < lastWord; i++) {
            bits[i] = 0;
        }
        bits[lastWord] &= ~last;
    }
}
