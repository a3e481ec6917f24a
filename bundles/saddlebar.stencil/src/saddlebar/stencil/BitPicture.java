package saddlebar.stencil;

import java.io.IOException;
import java.util.Arrays;

import saddlebar.model.units.Require;

/** A whole 1-bit picture in memory, laid out as {@link BitBands}. For stencils and test fields; whole sheets pass as bands. */
public final class BitPicture {
    private final int widthPx;
    private final int heightPx;
    private final int wordsPerRow;
    private final long[] words;

    public BitPicture(int widthPx, int heightPx) {
        this.widthPx = Require.within("widthPx", widthPx, 1, 1 << 20);
        this.heightPx = Require.within("heightPx", heightPx, 1, 1 << 20);
        this.wordsPerRow = (widthPx + 63) >> 6;
        this.words = new long[Math.multiplyExact(wordsPerRow, heightPx)];
    }

    /** Reads bands to their end and closes them. */
    public static BitPicture of(BitBands bands) throws IOException {
        try (bands) {
            BitPicture picture = new BitPicture(bands.widthPx(), bands.heightPx());
            int rowsAtOnce = Math.min(64, picture.heightPx);
            long[] band = new long[rowsAtOnce * picture.wordsPerRow];
            int row = 0;
            for (int rows = bands.read(band, rowsAtOnce); rows > 0; rows = bands.read(band, rowsAtOnce)) {
                System.arraycopy(band, 0, picture.words, row * picture.wordsPerRow, rows * picture.wordsPerRow);
                row += rows;
            }
            if (row != picture.heightPx) {
                throw new IOException("a picture of " + picture.heightPx + " rows ended after " + row);
            }
            return picture;
        }
    }

    public int widthPx() {
        return widthPx;
    }

    public int heightPx() {
        return heightPx;
    }

    public int wordsPerRow() {
        return wordsPerRow;
    }

    public boolean get(int x, int y) {
        return (words[y * wordsPerRow + (x >> 6)] >>> (63 - (x & 63)) & 1) != 0;
    }

    public void set(int x, int y, boolean bit) {
        long mask = 1L << (63 - (x & 63));
        int at = y * wordsPerRow + (x >> 6);
        words[at] = bit ? words[at] | mask : words[at] & ~mask;
    }

    /** The words themselves, not a copy: row y begins at {@code y * wordsPerRow()}. Whoever writes keeps the bits past the width 0. */
    public long[] words() {
        return words;
    }

    /** Sets the 1s of another picture, its top left at this place; what lies outside is left away. */
    public void put(BitPicture part, int left, int top) {
        for (int y = Math.max(0, -top); y < Math.min(part.heightPx(), heightPx - top); y++) {
            for (int x = Math.max(0, -left); x < Math.min(part.widthPx(), widthPx - left); x++) {
                if (part.get(x, y)) {
                    set(left + x, top + y, true);
                }
            }
        }
    }

    /** A copy of a part that lies within. */
    public BitPicture part(int left, int top, int widthPx, int heightPx) {
        BitPicture part = new BitPicture(widthPx, heightPx);
        for (int y = 0; y < heightPx; y++) {
            for (int x = 0; x < widthPx; x++) {
                if (get(left + x, top + y)) {
                    part.set(x, y, true);
                }
            }
        }
        return part;
    }

    /** Number of 1 bits. */
    public long count() {
        long n = 0;
        for (long word : words) {
            n += Long.bitCount(word);
        }
        return n;
    }

    public BitBands bands() {
        return new BitBands() {
            private int row;

            @Override
            public int widthPx() {
                return widthPx;
            }

            @Override
            public int heightPx() {
                return heightPx;
            }

            @Override
            public int read(long[] target, int maxRows) {
                int rows = Math.min(maxRows, heightPx - row);
                System.arraycopy(words, row * wordsPerRow, target, 0, rows * wordsPerRow);
                row += rows;
                return rows;
            }

            @Override
            public void close() {
                // nothing was opened
            }
        };
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof BitPicture that && that.widthPx == widthPx && that.heightPx == heightPx && Arrays.equals(that.words, words);
    }

    @Override
    public int hashCode() {
        return 31 * widthPx + Arrays.hashCode(words);
    }
}
