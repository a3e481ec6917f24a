package saddlebar.stencil;

import java.io.IOException;

/**
 * Bits cut to a mask: 1 where both are 1. Cuts at device resolution, also through scattered dots of several px, so that a matt ends exactly
 * where its mask does. Closes both.
 */
public final class ClippedBands implements BitBands {
    private final BitBands bits;
    private final BitBands mask;
    private long[] maskRows = {};

    /** @param mask 1 where paint may print, as large as {@code bits} */
    public ClippedBands(BitBands bits, BitBands mask) {
        if (mask.widthPx() != bits.widthPx() || mask.heightPx() != bits.heightPx()) {
            throw new IllegalArgumentException("a mask of " + mask.widthPx() + " x " + mask.heightPx() + " px does not fit a picture of "
                    + bits.widthPx() + " x " + bits.heightPx());
        }
        this.bits = bits;
        this.mask = mask;
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
        if (maskRows.length < rows * words) {
            maskRows = new long[rows * words];
        }
        for (int done = 0; done < rows;) {
            int more = mask.read(maskRows, rows - done);
            if (more == 0) {
                throw new IOException("the mask ended before the picture");
            }
            for (int i = 0, at = done * words; i < more * words; i++, at++) {
                target[at] &= maskRows[i];
            }
            done += more;
        }
        return rows;
    }

    @Override
    public void close() {
        try (mask) {
            bits.close();
        }
    }
}
