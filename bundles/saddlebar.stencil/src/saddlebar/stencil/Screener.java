package saddlebar.stencil;

/** One picture being screened, from its first row to its last. Belongs to one thread. */
public interface Screener {
    /**
     * Rows that must come together: a band has a multiple of so many rows, only the last of the picture may have fewer. 1 where each row can
     * be screened by itself.
     */
    default int rowsTogether() {
        return 1;
    }

    /**
     * Screens the next rows.
     *
     * @param gray code values, row by row, {@code rows * widthPx} of them from index 0
     * @param rows rows of the band, a multiple of {@link #rowsTogether()} unless the picture ends with it
     * @param bits takes {@code rows} rows laid out as {@link BitBands}, 1 where paint prints; every word is written
     */
    void screen(byte[] gray, int rows, long[] bits);
}
