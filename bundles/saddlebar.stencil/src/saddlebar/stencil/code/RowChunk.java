package saddlebar.stencil.code;

/** Some rows on their way through the coder: read in order by one thread, coded by any, taken in order by the first. */
final class RowChunk {
    final long[] rows;
    /** The row above the first of {@link #rows}, if the chunk continues a strip. */
    final long[] above;
    final CodeBits code;
    int rowCount;
    boolean startsStrip;
    boolean endsStrip;

    RowChunk(int wordsPerRow, int maxRows) {
        rows = new long[wordsPerRow * maxRows];
        above = new long[wordsPerRow];
        code = new CodeBits(rows.length * 2);
    }

    /** Codes the rows afresh; a strip's end is coded too. The result depends on the chunk alone. */
    RowChunk encode(T6Encoder encoder) {
        code.clear();
        if (startsStrip) {
            encoder.restart();
        } else {
            encoder.continueBelow(above, 0);
        }
        encoder.rows(rows, 0, rowCount, code);
        return this;
    }
}
