package saddlebar.stencil.method;

import java.util.Arrays;

/** Rows of bare or of solid px, at least so many side by side, in the rows of px that one row of dots covers; row by row from the left. */
final class EndRuns {
    static final byte BARE = 1;
    static final byte SOLID = 2;

    private int[] row = new int[64];
    private int[] start = new int[64];
    private int[] end = new int[64];
    private boolean[] solid = new boolean[64];
    private int count;

    void clear() {
        count = 0;
    }

    /**
     * Finds those of a row.
     *
     * @param kind by code: {@link #BARE}, {@link #SOLID}, or 0 for what is shaded
     * @param least px side by side that make a run; a row that is all of one kind is one however narrow
     */
    void find(byte[] gray, int from, int widthPx, byte[] kind, int least, int ofRow) {
        int wanted = Math.min(least, widthPx);
        for (int x = wanted - 1; x < widthPx;) { // every run of that length holds one of these px
            byte k = kind[gray[from + x] & 255];
            if (k == 0) {
                x += wanted;
                continue;
            }
            int first = x;
            int floor = count > 0 && row[count - 1] == ofRow ? end[count - 1] : 0;
            while (first > floor && kind[gray[from + first - 1] & 255] == k) {
                first--;
            }
            int last = x + 1;
            while (last < widthPx && kind[gray[from + last] & 255] == k) {
                last++;
            }
            if (last - first >= wanted) {
                add(ofRow, first, last, k == SOLID);
            }
            x = last + wanted - 1;
        }
    }

    private void add(int ofRow, int first, int last, boolean isSolid) {
        if (count == row.length) {
            row = Arrays.copyOf(row, 2 * count);
            start = Arrays.copyOf(start, 2 * count);
            end = Arrays.copyOf(end, 2 * count);
            solid = Arrays.copyOf(solid, 2 * count);
        }
        row[count] = ofRow;
        start[count] = first;
        end[count] = last;
        solid[count++] = isSolid;
    }

    int count() {
        return count;
    }

    int row(int run) {
        return row[run];
    }

    int start(int run) {
        return start[run];
    }

    int end(int run) {
        return end[run];
    }

    /** Takes the px of the runs from the px of the dots they lie in, and counts the solid ones. */
    void leaveOut(int[] pxOfDot, int[] solidOfDot, int dotPx) {
        for (int run = 0; run < count; run++) {
            for (int x = start[run]; x < end[run];) {
                int dot = x / dotPx;
                int stop = Math.min(end[run], (dot + 1) * dotPx);
                pxOfDot[dot] -= stop - x;
                solidOfDot[dot] += solid[run] ? stop - x : 0;
                x = stop;
            }
        }
    }

    /** Clears bare and sets solid px. */
    void cut(long[] bits, int from, int words) {
        for (int run = 0; run < count; run++) {
            if (solid[run]) {
                BitRuns.set(bits, from + row[run] * words, start[run], end[run]);
            } else {
                BitRuns.clear(bits, from + row[run] * words, start[run], end[run]);
            }
        }
    }
}
