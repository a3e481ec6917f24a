package saddlebar.stencil.method;

import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicIntegerArray;

import saddlebar.stencil.Screener;
import saddlebar.stencil.tone.ToneTable;

/**
 * Floyd-Steinberg at one px a dot, every row from left to right: {@link RasterPairs pairs of rows}, on several threads one pair behind the other. A
 * thread takes the next pair when it is free, so that the pair above is always under way; it waits until that one is a block ahead.
 * (Rows that go to and fro cannot run side by side: each begins where the one above ended.)
 */
final class RasterScreener implements Screener {
    private static final int BLOCK = 1024;
    /** Px by which a pair must be ahead of the one below it: what its lower row leaves is complete three px behind its upper row. */
    private static final int AHEAD = 3;

    private static final int SPINS = 500;

    private final int widthPx;
    private final int words;
    private final int threads;
    private final int[] tone = new int[256];
    private final int[] carry;

    RasterScreener(ToneTable table, int widthPx, int threads) {
        this.widthPx = widthPx;
        this.words = (widthPx + 63) >> 6;
        this.threads = threads;
        this.carry = new int[widthPx + 2];
        for (int code = 0; code < 256; code++) {
            tone[code] = (int) Math.round(table.coverage(code) * RowDecider.ONE);
        }
    }

    @Override
    public int rowsTogether() {
        return 2;
    }

    @Override
    public void screen(byte[] gray, int rows, long[] bits) {
        int pairs = rows / 2;
        if (threads == 1 || pairs <= 1 || widthPx <= BLOCK) {
            for (int pair = 0; pair < pairs; pair++) {
                RasterPairs.State state = new RasterPairs.State();
                RasterPairs.run(state, gray, 2 * pair * widthPx, (2 * pair + 1) * widthPx, tone, 0, widthPx, carry, bits, 2 * pair * words,
                        (2 * pair + 1) * words);
                RasterPairs.end(state, gray, (2 * pair + 1) * widthPx, tone, widthPx, carry, bits, (2 * pair + 1) * words);
            }
        } else {
            sideBySide(gray, pairs, bits);
        }
        if ((rows & 1) == 1) {
            lastRow(gray, (rows - 1) * widthPx, bits, (rows - 1) * words);
        }
    }

    private void sideBySide(byte[] gray, int pairs, long[] bits) {
        AtomicInteger taken = new AtomicInteger();
        AtomicIntegerArray done = new AtomicIntegerArray(pairs);
        Runnable work = () -> {
            for (int pair = taken.getAndIncrement(); pair < pairs; pair = taken.getAndIncrement()) {
                pair(gray, pair, bits, done);
            }
        };
        ForkJoinTask<?>[] helpers = new ForkJoinTask<?>[Math.min(threads, pairs) - 1];
        for (int i = 0; i < helpers.length; i++) {
            helpers[i] = ForkJoinPool.commonPool().submit(work);
        }
        work.run();
        for (ForkJoinTask<?> helper : helpers) {
            if (!helper.tryUnfork()) { // not begun yet: nothing is left for it
                helper.join();
            }
        }
    }

    private void pair(byte[] gray, int pair, long[] bits, AtomicIntegerArray done) {
        RasterPairs.State state = new RasterPairs.State();
        int upper = 2 * pair;
        for (int from = 0; from < widthPx; from += BLOCK) {
            int to = Math.min(widthPx, from + BLOCK);
            for (int wait = 0; pair > 0 && done.get(pair - 1) < Math.min(widthPx + 1, to + AHEAD); wait++) {
                if (wait < SPINS) {
                    Thread.onSpinWait();
                } else {
                    Thread.yield(); // the one above may be waiting for this processor
                }
            }
            RasterPairs.run(state, gray, upper * widthPx, (upper + 1) * widthPx, tone, from, to, carry, bits, upper * words, (upper + 1) * words);
            if (to < widthPx) {
                done.set(pair, to);
            }
        }
        RasterPairs.end(state, gray, (upper + 1) * widthPx, tone, widthPx, carry, bits, (upper + 1) * words);
        done.set(pair, widthPx + 1);
    }

    /** The last row of a picture of odd height: nothing follows it. */
    private void lastRow(byte[] gray, int from, long[] bits, int word) {
        int[] coverage = new int[widthPx];
        for (int x = 0; x < widthPx; x++) {
            coverage[x] = tone[gray[from + x] & 255];
        }
        FloydSteinbergRows row = new FloydSteinbergRows(widthPx, false, carry);
        row.decide(coverage, bits, word);
    }
}
