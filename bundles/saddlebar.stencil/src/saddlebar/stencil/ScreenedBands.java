package saddlebar.stencil;

import java.io.IOException;

import saddlebar.model.art.GrayBands;
import saddlebar.model.units.Require;
import saddlebar.stencil.tone.ToneTable;

/** Gray bands on their way through tone and screening: 1 where paint prints. Bands of any height give the same bits. Closes the gray. */
public final class ScreenedBands implements BitBands {
    private final GrayBands gray;
    private final Screener screener;
    private final byte[] grayRows;
    private final long[] bitRows;
    private final int rowsAtOnce;
    private final int wordsPerRow;
    private int rowsRead;
    private int ready;
    private int given;

    public ScreenedBands(GrayBands gray, ToneTable tone, ScreeningMethod method, ScreeningRecipe recipe) {
        this(gray, tone, method, recipe, 1);
    }

    /** @param threads most threads that may screen, at least 1; the bits do not depend on it */
    public ScreenedBands(GrayBands gray, ToneTable tone, ScreeningMethod method, ScreeningRecipe recipe, int threads) {
        this.gray = gray;
        this.screener = method.start(recipe, tone, gray.widthPx(), gray.heightPx(), Require.within("threads", threads, 1, 256));
        this.wordsPerRow = wordsPerRow();
        int together = screener.rowsTogether();
        this.rowsAtOnce = together * Math.max(1, 32 / together);
        this.grayRows = new byte[Math.multiplyExact(rowsAtOnce, gray.widthPx())];
        this.bitRows = new long[Math.multiplyExact(rowsAtOnce, wordsPerRow)];
    }

    @Override
    public int widthPx() {
        return gray.widthPx();
    }

    @Override
    public int heightPx() {
        return gray.heightPx();
    }

    @Override
    public int read(long[] target, int maxRows) throws IOException {
        if (given == ready && !fill()) {
            return 0;
        }
        int rows = Math.min(maxRows, ready - given);
        System.arraycopy(bitRows, given * wordsPerRow, target, 0, rows * wordsPerRow);
        given += rows;
        return rows;
    }

    private boolean fill() throws IOException {
        int rows = 0;
        while (rows < rowsAtOnce && rowsRead < gray.heightPx()) {
            int more = readGray(rows);
            if (more == 0) {
                throw new IOException("a picture of " + gray.heightPx() + " rows ended after " + rowsRead);
            }
            rows += more;
            rowsRead += more;
        }
        if (rows == 0) {
            return false;
        }
        screener.screen(grayRows, rows, bitRows);
        ready = rows;
        given = 0;
        return true;
    }

    /** A reader fills from index 0, so what comes in pieces is put behind what is there. */
    private int readGray(int rowsThere) throws IOException {
        if (rowsThere == 0) {
            return gray.read(grayRows, Math.min(rowsAtOnce, gray.heightPx() - rowsRead));
        }
        byte[] piece = new byte[(rowsAtOnce - rowsThere) * widthPx()];
        int more = gray.read(piece, Math.min(rowsAtOnce - rowsThere, gray.heightPx() - rowsRead));
        System.arraycopy(piece, 0, grayRows, rowsThere * widthPx(), more * widthPx());
        return more;
    }

    @Override
    public void close() {
        gray.close();
    }
}
