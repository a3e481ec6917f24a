package saddlebar.stencil.code;

import java.util.Arrays;

/** One row while it is decoded: its changes of colour and its px. A run of no px in the midst joins the runs beside it. */
final class CodedRow {
    private final int widthPx;
    /** From index 1 on; odd indices turn black; sentinels as {@link T6Encoder} has them. */
    int[] changes;
    private int count;

    CodedRow(int widthPx) {
        this.widthPx = widthPx;
        this.changes = new int[widthPx + 6];
        start();
        close();
    }

    void start() {
        changes[0] = -1;
        count = 0;
    }

    void change(int atPx) {
        if (count > 0 && changes[count] == atPx) {
            count--;
        } else {
            changes[++count] = atPx;
        }
    }

    void close() {
        if (count > 0 && changes[count] == widthPx) {
            count--;
        }
        for (int i = 1; i <= 4; i++) {
            changes[count + i] = widthPx;
        }
    }

    /** Draws the closed row: clears it and sets its black runs. */
    void draw(long[] target, int firstWord) {
        Arrays.fill(target, firstWord, firstWord + ((widthPx + 63) >> 6), 0);
        for (int i = 1; i <= count; i += 2) {
            int from = changes[i];
            int to = i + 1 <= count ? changes[i + 1] : widthPx;
            int first = firstWord + (from >> 6);
            int last = firstWord + (to - 1 >> 6);
            long head = -1L >>> (from & 63);
            long tail = -1L << (63 - (to - 1 & 63));
            if (first == last) {
                target[first] |= head & tail;
            } else {
                target[first] |= head;
                Arrays.fill(target, first + 1, last, -1L);
                target[last] |= tail;
            }
        }
    }
}
