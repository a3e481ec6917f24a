package saddlebar.stencil.limits;

/**
 * Morphological opening of a bit picture by a disc, streamed: what is left is the union of all discs that lie wholly within the 1s. Rows go in
 * from the top; the opened row n - 1 above the last one comes out. A row of the disc is a run of px; erosion by a run of L px takes about log2 L
 * shifts of the whole row, each input row is then and-ed into the n output rows that it touches. Memory 2 n rows.
 */
final class DiscOpening {
    private final Disc disc;
    private final long fill;
    private final long[][] eroding;
    private final long[][] opening;
    private final long[] runs;
    private final long[] run;
    private final int[] rowsByLength;
    private int rowsIn;

    /** @param fill what lies outside the rows, 0 or -1 as a word */
    DiscOpening(Disc disc, int words, long fill) {
        this.disc = disc;
        this.fill = fill;
        int n = disc.sizePx();
        this.eroding = new long[n][words];
        this.opening = new long[n][words];
        this.runs = new long[words];
        this.run = new long[words];
        this.rowsByLength = new int[n];
        for (int row = 0; row < n; row++) { // from both ends inwards: lengths rise
            rowsByLength[row] = row % 2 == 0 ? row / 2 : n - 1 - row / 2;
            BitRow.fill(opening[row], fill);
        }
    }

    /**
     * Takes the next row; the first rows are outside the picture.
     *
     * @param opened takes the opened row, if there is one
     * @return whether there is one: from the n-th row in
     */
    boolean push(long[] row, long[] opened) {
        int n = disc.sizePx();
        BitRow.fill(eroding[rowsIn % n], -1);
        erode(row);
        rowsIn++;
        if (rowsIn < n) {
            return false;
        }
        int y = rowsIn - n;
        dilate(eroding[y % n], y);
        long[] done = opening[y % n];
        System.arraycopy(done, 0, opened, 0, done.length);
        BitRow.fill(done, 0);
        return true;
    }

    /** Row r of the disc at output row y lies over input row y + r. */
    private void erode(long[] row) {
        int n = disc.sizePx();
        System.arraycopy(row, 0, runs, 0, runs.length);
        int power = 1;
        int lengthOfRun = 0;
        for (int discRow : rowsByLength) {
            int length = disc.length(discRow);
            if (length != lengthOfRun) {
                for (; 2 * power <= length; power *= 2) {
                    BitRow.andAhead(runs, power, fill);
                }
                System.arraycopy(runs, 0, run, 0, run.length);
                if (length > power) {
                    BitRow.andAhead(run, length - power, fill);
                }
                lengthOfRun = length;
            }
            if (rowsIn >= discRow) {
                BitRow.andAheadOf(eroding[(rowsIn - discRow) % n], run, disc.indent(discRow), fill);
            }
        }
    }

    /** A disc that fits with its top at row y paints rows y to y + n - 1. */
    private void dilate(long[] row, int y) {
        int n = disc.sizePx();
        System.arraycopy(row, 0, runs, 0, runs.length);
        int power = 1;
        int lengthOfRun = 0;
        for (int discRow : rowsByLength) {
            int length = disc.length(discRow);
            if (length != lengthOfRun) {
                for (; 2 * power <= length; power *= 2) {
                    BitRow.orBehind(runs, power, fill);
                }
                System.arraycopy(runs, 0, run, 0, run.length);
                if (length > power) {
                    BitRow.orBehind(run, length - power, fill);
                }
                lengthOfRun = length;
            }
            BitRow.orBehindOf(opening[(y + discRow) % n], run, disc.indent(discRow), fill);
        }
    }
}
