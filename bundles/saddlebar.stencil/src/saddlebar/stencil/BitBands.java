package saddlebar.stencil;

import java.io.IOException;

/**
 * A 1-bit picture at device resolution in bands of whole rows from the top: f: (x, y) -> {0, 1}. Each row takes {@link #wordsPerRow()} longs; px
 * x is bit {@code 63 - (x & 63)} of word {@code x >> 6}, so the leftmost px is the highest bit; bits at and past the width are 0. What a 1 means
 * is said by whoever hands the bands over: paint that prints before the process, toner after it. One reader, one thread; read once.
 */
public interface BitBands extends AutoCloseable {
    int widthPx();

    int heightPx();

    default int wordsPerRow() {
        return (widthPx() + 63) >> 6;
    }

    /**
     * Reads the next rows.
     *
     * @param target  takes {@code rows * wordsPerRow()} longs from index 0
     * @param maxRows most rows wanted, at least 1
     * @return rows read, at least 1; 0 after the last row
     */
    int read(long[] target, int maxRows) throws IOException;

    @Override
    void close();
}
