package saddlebar.stencil.method;

/** Decides dot by dot, row by row from the top, which dots are painted. Belongs to one picture and thread. */
interface RowDecider {
    /** Binary places of the fixed point of rows: seven times an error still fits an int. */
    int SHIFT = 28;
    /** Coverage 1. */
    int ONE = 1 << SHIFT;

    /**
     * Decides the next row.
     *
     * @param coverage in units of 1/{@link #ONE}, one a dot; not changed
     * @param painted  takes the row's bits as {@link saddlebar.stencil.BitBands} lays them out, all words written
     * @param fromWord index of the row's first word
     */
    void decide(int[] coverage, long[] painted, int fromWord);
}
