package saddlebar.stencil.sheet;

import java.io.IOException;

import saddlebar.stencil.BitBands;

/** A stencil or mark while the rows of its sheet pass: read row by row and laid into them at its place. */
final class SheetPart {
    /** What its bits do to those of the sheet. */
    enum Way {
        /** Take their place, zeros too. */
        REPLACE,
        /** Ones become toner. */
        ADD,
        /** Ones become clear. */
        CLEAR
    }

    private final String name;
    private final int xPx;
    private final int yPx;
    private final int widthPx;
    private final int heightPx;
    private final Way way;
    private final BitSource source;
    private BitBands bits;
    private long[] band;
    private int rowsLaid;

    SheetPart(String name, int xPx, int yPx, int widthPx, int heightPx, Way way, BitSource source) {
        this.name = name;
        this.xPx = xPx;
        this.yPx = yPx;
        this.widthPx = widthPx;
        this.heightPx = heightPx;
        this.way = way;
        this.source = source;
    }

    int yPx() {
        return yPx;
    }

    int bottomPx() {
        return yPx + heightPx;
    }

    void open() throws IOException {
        bits = source.open();
        if (bits.widthPx() != widthPx || bits.heightPx() != heightPx) {
            throw new IOException(name + " was to be " + widthPx + " x " + heightPx + " px but is " + bits.widthPx() + " x " + bits.heightPx());
        }
    }

    /** Lays its rows that meet rows {@code top} to {@code top + rows} of the sheet, the first of which begins at a word of the target. */
    void draw(long[] target, int firstWord, int wordsPerRow, int top, int rows) throws IOException {
        int own = bits.wordsPerRow();
        int wanted = Math.min(top + rows, bottomPx()) - (yPx + rowsLaid);
        if (band == null || band.length < wanted * own) {
            band = new long[wanted * own];
        }
        while (wanted > 0) {
            int have = bits.read(band, wanted);
            if (have <= 0) {
                throw new IOException(name + " of " + heightPx + " rows ended after " + rowsLaid);
            }
            for (int i = 0; i < have; i++) {
                lay(band, i * own, target, firstWord + (yPx + rowsLaid - top) * wordsPerRow);
                rowsLaid++;
            }
            wanted -= have;
        }
    }

    private void lay(long[] from, int fromWord, long[] to, int toRow) {
        int shift = xPx & 63;
        int first = toRow + (xPx >> 6);
        int words = (widthPx + 63) >> 6;
        for (int i = 0; i < words; i++) {
            long mask = i == words - 1 && (widthPx & 63) != 0 ? -1L << (64 - (widthPx & 63)) : -1L;
            long px = from[fromWord + i];
            to[first + i] = merged(to[first + i], px >>> shift, mask >>> shift);
            if (shift != 0) {
                long rest = mask << (64 - shift);
                if (rest != 0) {
                    to[first + i + 1] = merged(to[first + i + 1], px << (64 - shift), rest);
                }
            }
        }
    }

    private long merged(long sheet, long px, long mask) {
        return switch (way) {
            case REPLACE -> sheet & ~mask | px;
            case ADD -> sheet | px;
            case CLEAR -> sheet & ~px;
        };
    }

    void close() {
        if (bits != null) {
            bits.close();
            bits = null;
        }
    }
}
