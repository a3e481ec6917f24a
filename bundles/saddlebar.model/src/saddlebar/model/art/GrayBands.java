package saddlebar.model.art;

import java.io.IOException;

/**
 * A picture in gray at device resolution, handed over from the top in bands of whole rows, so that a sheet is never whole in memory. One
 * reader, one thread; read once.
 */
public interface GrayBands extends AutoCloseable {
    int widthPx();

    int heightPx();

    GrayCoding coding();

    /**
     * Reads the next rows.
     *
     * @param target  takes {@code rows * widthPx} bytes, row by row, 0 black to 255 white
     * @param maxRows most rows wanted, at least 1
     * @return rows read, at least 1; 0 after the last row
     */
    int read(byte[] target, int maxRows) throws IOException;

    /** Lets go of what was opened. Never fails: there is nothing to write. */
    @Override
    void close();
}
