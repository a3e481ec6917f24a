package saddlebar.stencil.method;

import java.util.Arrays;

import saddlebar.stencil.Screener;
import saddlebar.stencil.tone.ToneTable;

/**
 * Scattered dots of k x k device px: averages the coverage over each dot's px, has a {@link RowDecider} decide on the coarse grid, paints
 * whole dots. Dots that the right and lower edge cut are averaged over the px that are there. With k = 1 every px is a dot.
 *
 * <p>Edges of shaded areas are those of the device, not of the dots: bare px that stand in a row of k or more stay bare and such solid px solid, and
 * neither counts in a dot's average. Shorter rows of them, as grain in a photograph has, belong to the shading, so that dots stay whole.
 */
final class DotScreener implements Screener {
    /** So many rows of coverage fit an unsigned int: 15 * 2^28 < 2^32. */
    private static final int ROWS_A_SUM = 15;

    private final int widthPx;
    private final int dotPx;
    private final int dots;
    private final int[] tone = new int[256];
    private final RowDecider decider;
    private final byte[] end = new byte[256];
    private final EndRuns runs = new EndRuns();
    private final int[] shadedPx;
    private final int[] solidPx;
    private final int[] columnSums;
    private final long[] dotSums;
    private final int[] coverage;
    private final long[] painted;

    DotScreener(ToneTable table, int dotPx, int widthPx, RowDecider decider) {
        this.widthPx = widthPx;
        this.dotPx = dotPx;
        this.dots = (widthPx + dotPx - 1) / dotPx;
        this.decider = decider;
        for (int code = 0; code < 256; code++) {
            tone[code] = (int) Math.round(table.coverage(code) * RowDecider.ONE);
            end[code] = tone[code] == 0 ? EndRuns.BARE : tone[code] == RowDecider.ONE ? EndRuns.SOLID : 0;
        }
        this.shadedPx = dotPx == 1 ? new int[0] : new int[dots];
        this.solidPx = dotPx == 1 ? new int[0] : new int[dots];
        this.coverage = new int[dots];
        this.columnSums = dotPx == 1 ? new int[0] : new int[widthPx];
        this.dotSums = dotPx == 1 ? new long[0] : new long[dots];
        this.painted = dotPx == 1 ? new long[0] : new long[(dots + 63) >> 6];
    }

    @Override
    public int rowsTogether() {
        return dotPx;
    }

    @Override
    public void screen(byte[] gray, int rows, long[] bits) {
        int words = (widthPx + 63) >> 6;
        if (dotPx == 1) {
            for (int row = 0; row < rows; row++) {
                look(gray, row * widthPx);
                decider.decide(coverage, bits, row * words);
            }
            return;
        }
        for (int row = 0; row < rows; row += dotPx) {
            int rowsOfDot = Math.min(dotPx, rows - row);
            runs.clear();
            for (int r = 0; r < rowsOfDot; r++) {
                runs.find(gray, (row + r) * widthPx, widthPx, end, dotPx, r);
            }
            average(gray, row, rowsOfDot);
            decider.decide(coverage, painted, 0);
            paint(bits, row * words, words);
            for (int copy = 1; copy < rowsOfDot; copy++) {
                System.arraycopy(bits, row * words, bits, (row + copy) * words, words);
            }
            runs.cut(bits, row * words, words);
        }
    }

    private void look(byte[] gray, int from) {
        for (int x = 0; x < widthPx; x++) {
            coverage[x] = tone[gray[from + x] & 255];
        }
    }

    private void average(byte[] gray, int row, int rowsOfDot) {
        Arrays.fill(dotSums, 0);
        for (int dot = 0; dot < dots; dot++) {
            shadedPx[dot] = rowsOfDot * (Math.min(widthPx, (dot + 1) * dotPx) - dot * dotPx);
        }
        Arrays.fill(solidPx, 0);
        runs.leaveOut(shadedPx, solidPx, dotPx);
        int run = 0;
        for (int done = 0; done < rowsOfDot; done += ROWS_A_SUM) {
            Arrays.fill(columnSums, 0);
            int rows = Math.min(ROWS_A_SUM, rowsOfDot - done);
            for (int r = done; r < done + rows; r++) {
                int from = (row + r) * widthPx;
                int x = 0;
                for (; run < runs.count() && runs.row(run) == r; run++) {
                    addRow(gray, from, x, runs.start(run));
                    x = runs.end(run);
                }
                addRow(gray, from, x, widthPx);
            }
            for (int dot = 0, x = 0; dot < dots; dot++) {
                long sum = 0;
                for (int stop = Math.min(widthPx, x + dotPx); x < stop; x++) {
                    sum += columnSums[x] & 0xffffffffL;
                }
                dotSums[dot] += sum;
            }
        }
        for (int dot = 0; dot < dots; dot++) {
            int px = shadedPx[dot];
            coverage[dot] = px > 0 ? (int) ((dotSums[dot] + px / 2) / px) : 2 * solidPx[dot] >= rowsOfDot * dotPx ? RowDecider.ONE : 0;
        }
    }

    private void addRow(byte[] gray, int from, int start, int stop) {
        for (int x = start; x < stop; x++) {
            columnSums[x] += tone[gray[from + x] & 255];
        }
    }

    private void paint(long[] bits, int from, int words) {
        Arrays.fill(bits, from, from + words, 0);
        for (int dot = 0; dot < dots;) {
            if (!isPainted(dot)) {
                dot++;
                continue;
            }
            int first = dot;
            while (dot < dots && isPainted(dot)) {
                dot++;
            }
            BitRuns.set(bits, from, first * dotPx, Math.min(widthPx, dot * dotPx));
        }
    }

    private boolean isPainted(int dot) {
        return (painted[dot >> 6] >>> (63 - (dot & 63)) & 1) != 0;
    }
}
