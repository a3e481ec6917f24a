package saddlebar.stencil.code;

import java.io.IOException;
import java.io.InputStream;

import saddlebar.model.units.Require;

/**
 * Reads rows coded in one dimension: each row by its runs, white first. With ends of line (facsimile group 3) or, without any, each row beginning
 * at a whole byte ("modified Huffman" of TIFF). Two-dimensional group 3 is not read.
 * <p>Source: ITU-T T.4, 4.1; TIFF 6.0, section 10.
 */
final class T4Decoder {
    private static final int END_OF_LINE_BITS = 12;

    private final int widthPx;
    private final CodeReader in;
    private final boolean byteRows;
    private final char[][] runs = {RunCodes.T4.looked(RunCodes.WHITE), RunCodes.T4.looked(RunCodes.BLACK)};
    private final CodedRow row;
    private int rowsRead;

    /**
     * @param byteRows each row begins at a whole byte and none has an end of line
     */
    T4Decoder(InputStream coded, int widthPx, boolean byteRows) {
        this.widthPx = Require.within("widthPx", widthPx, 1, 1 << 20);
        this.in = new CodeReader(coded);
        this.byteRows = byteRows;
        this.row = new CodedRow(widthPx);
    }

    /** Reads the next row; false at the end of the stream. */
    boolean next(long[] target, int firstWord) throws IOException {
        if (byteRows) {
            in.alignToByte();
        } else {
            skipEndsOfLine();
        }
        if (in.exhausted()) {
            return false;
        }
        row.start();
        int at = 0;
        int colour = RunCodes.WHITE;
        while (at < widthPx) {
            at += run(colour);
            if (at > widthPx) {
                throw damaged("runs end at px " + at + ", beyond the width of " + widthPx);
            }
            row.change(at);
            colour ^= 1;
        }
        row.close();
        row.draw(target, firstWord);
        rowsRead++;
        return true;
    }

    /** Ends of line have any number of zeros before their one; six of them are the end. */
    private void skipEndsOfLine() throws IOException {
        while (in.look(END_OF_LINE_BITS - 1) == 0 && !in.exhausted()) {
            while (in.look(1) == 0 && !in.exhausted()) {
                in.take(1);
            }
            in.take(1);
        }
    }

    private int run(int colour) throws IOException {
        int length = 0;
        while (true) {
            int entry = runs[colour][in.look(RunCodes.LOOK_BITS)];
            if (entry == 0) {
                throw damaged("no " + (colour == RunCodes.WHITE ? "white" : "black") + " run begins so");
            }
            in.take(entry & 15);
            if (in.overrun()) {
                throw damaged("the code ends within the row");
            }
            int part = entry >> 4;
            length = Math.min(widthPx + 1, length + part);
            if (part < 64) {
                return length;
            }
        }
    }

    private DamagedCodeException damaged(String what) {
        return new DamagedCodeException(rowsRead, in.nearEnd() ? "the code ends within the row" : what);
    }
}
