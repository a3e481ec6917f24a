package saddlebar.artwork.raster;

import java.io.Closeable;
import java.io.IOException;

/** A picture's rows from the top, 8 bits a sample, samples of a pixel side by side; read once. */
interface PictureRows extends Closeable {
    int widthPx();

    int heightPx();

    /** 1 gray, 2 gray and alpha, 3 red green blue, 4 with alpha; not premultiplied. */
    int channels();

    /**
     * Reads the next row, which must be there.
     *
     * @throws saddlebar.model.problem.Refusal if the file is damaged
     */
    void next(byte[] row) throws IOException;
}
