package saddlebar.stencil.sheet;

import java.io.IOException;
import java.util.Arrays;

import saddlebar.stencil.BitBands;

/**
 * A whole sheet bent the other way than its printer bends it, px by px, so that what comes out is true and layers register: px (x, y) of the file takes
 * the px of the plain sheet that the printer would put there. Single rows and columns are left out or come twice; px that come from beyond the sheet
 * are ground. Closes the sheet.
 */
public final class CompensatedBands implements BitBands {
    private final BitBands sheet;
    private final PrinterFit fit;
    private final boolean ground;
    private final long[] row;
    private int rowRead = -1;
    private int y;

    /** @param ground what lies beyond the sheet's edges: true for toner */
    public CompensatedBands(BitBands sheet, PrinterFit fit, boolean ground) {
        this.sheet = sheet;
        this.fit = fit;
        this.ground = ground;
        this.row = new long[sheet.wordsPerRow()];
    }

    @Override
    public int widthPx() {
        return sheet.widthPx();
    }

    @Override
    public int heightPx() {
        return sheet.heightPx();
    }

    @Override
    public int read(long[] target, int maxRows) throws IOException {
        int rows = Math.min(maxRows, heightPx() - y);
        int words = wordsPerRow();
        for (int r = 0; r < rows; r++, y++) {
            Arrays.fill(target, r * words, (r + 1) * words, 0);
            int from = (int) Math.floor(fit.printed(0, y + 0.5)[1]);
            boolean there = from < heightPx();
            while (there && rowRead < from) {
                sheet.read(row, 1);
                rowRead++;
            }
            double shift = fit.skew() * (y + 0.5);
            for (int x = 0; x < widthPx(); x++) {
                int at = (int) Math.floor(fit.acrossScale() * (x + 0.5) + shift);
                boolean bit = there && at >= 0 && at < widthPx() ? (row[at >> 6] >>> (63 - (at & 63)) & 1) != 0 : ground;
                if (bit) {
                    target[r * words + (x >> 6)] |= 1L << 63 - (x & 63);
                }
            }
        }
        return rows;
    }

    @Override
    public void close() {
        sheet.close();
    }
}
