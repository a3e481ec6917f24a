package saddlebar.stencil.limits;

import java.io.IOException;

import saddlebar.stencil.BitBands;

/** Bits that pass unchanged while {@link LimitsCheck} looks on. Closes the bits. */
public final class CheckedBands implements BitBands {
    private final BitBands bits;
    private final LimitsCheck check;

    /** @param bits 1 where paint prints, before the process */
    public CheckedBands(BitBands bits, LimitsCheck check) {
        this.bits = bits;
        this.check = check;
    }

    @Override
    public int widthPx() {
        return bits.widthPx();
    }

    @Override
    public int heightPx() {
        return bits.heightPx();
    }

    @Override
    public int read(long[] target, int maxRows) throws IOException {
        int rows = bits.read(target, maxRows);
        check.add(target, rows);
        return rows;
    }

    @Override
    public void close() {
        bits.close();
    }
}
