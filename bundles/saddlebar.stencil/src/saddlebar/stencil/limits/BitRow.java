package saddlebar.stencil.limits;

import java.util.Arrays;

/** Operations on one row of bits, leftmost px the highest bit of the first word; outside the row every px is {@code fill}, 0 or -1 as a word. */
final class BitRow {
    private BitRow() {
    }

    /** Px x becomes px x and px x + steps. */
    static void andAhead(long[] row, int steps, long fill) {
        int words = steps >> 6;
        int bits = steps & 63;
        int n = row.length;
        if (bits == 0) {
            for (int i = 0; i < n; i++) {
                row[i] &= i + words < n ? row[i + words] : fill;
            }
            return;
        }
        int inner = Math.max(0, n - words - 1);
        for (int i = 0; i < inner; i++) {
            row[i] &= row[i + words] << bits | row[i + words + 1] >>> 64 - bits;
        }
        for (int i = inner; i < n; i++) {
            long first = i + words < n ? row[i + words] : fill;
            row[i] &= first << bits | fill >>> 64 - bits;
        }
    }

    /** Px x becomes px x or px x - steps. */
    static void orBehind(long[] row, int steps, long fill) {
        int words = steps >> 6;
        int bits = steps & 63;
        int n = row.length;
        if (bits == 0) {
            for (int i = n - 1; i >= 0; i--) {
                row[i] |= i >= words ? row[i - words] : fill;
            }
            return;
        }
        for (int i = n - 1; i > words; i--) {
            row[i] |= row[i - words] >>> bits | row[i - words - 1] << 64 - bits;
        }
        for (int i = Math.min(n - 1, words); i >= 0; i--) {
            long first = i >= words ? row[i - words] : fill;
            row[i] |= first >>> bits | fill << 64 - bits;
        }
    }

    /** {@code sum} px x becomes itself and px x + steps of {@code row}. */
    static void andAheadOf(long[] sum, long[] row, int steps, long fill) {
        int words = steps >> 6;
        int bits = steps & 63;
        int n = row.length;
        if (steps == 0) {
            for (int i = 0; i < n; i++) {
                sum[i] &= row[i];
            }
            return;
        }
        for (int i = 0; i < n; i++) {
            long first = i + words < n ? row[i + words] : fill;
            long second = i + words + 1 < n ? row[i + words + 1] : fill;
            sum[i] &= bits == 0 ? first : first << bits | second >>> 64 - bits;
        }
    }

    /** {@code sum} px x becomes itself or px x - steps of {@code row}. */
    static void orBehindOf(long[] sum, long[] row, int steps, long fill) {
        int words = steps >> 6;
        int bits = steps & 63;
        int n = row.length;
        if (steps == 0) {
            for (int i = 0; i < n; i++) {
                sum[i] |= row[i];
            }
            return;
        }
        for (int i = 0; i < n; i++) {
            long first = i >= words ? row[i - words] : fill;
            long second = i > words ? row[i - words - 1] : fill;
            sum[i] |= bits == 0 ? first : first >>> bits | second << 64 - bits;
        }
    }

    static boolean get(long[] row, int x) {
        return (row[x >> 6] >>> (63 - (x & 63)) & 1) != 0;
    }

    /** Whether any px from start to before end is 1; start below end, both within the row. */
    static boolean any(long[] row, int start, int end) {
        int firstWord = start >> 6;
        int lastWord = end - 1 >> 6;
        long first = -1L >>> (start & 63);
        long last = -1L << 63 - (end - 1 & 63);
        if (firstWord == lastWord) {
            return (row[firstWord] & first & last) != 0;
        }
        if ((row[firstWord] & first) != 0 || (row[lastWord] & last) != 0) {
            return true;
        }
        for (int i = firstWord + 1; i < lastWord; i++) {
            if (row[i] != 0) {
                return true;
            }
        }
        return false;
    }

    static void fill(long[] row, long word) {
        Arrays.fill(row, word);
    }
}
