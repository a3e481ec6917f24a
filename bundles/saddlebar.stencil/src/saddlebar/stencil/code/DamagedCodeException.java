package saddlebar.stencil.code;

import java.io.IOException;

/** Coded rows that cannot be read further: a code that the standard does not have, a row that does not fit its width, or an early end. */
public class DamagedCodeException extends IOException {
    private static final long serialVersionUID = 1;
    private final int row;

    /**
     * @param row  row in which it shows, 0 for the first
     * @param what what is wrong, without a full stop
     */
    public DamagedCodeException(int row, String what) {
        super("row " + row + ": " + what);
        this.row = row;
    }

    /** Row in which the damage shows, 0 for the first; its cause may lie in the row before. */
    public int row() {
        return row;
    }
}
