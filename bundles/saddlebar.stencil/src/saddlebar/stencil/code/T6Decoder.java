package saddlebar.stencil.code;

import java.io.IOException;
import java.io.InputStream;

import saddlebar.model.units.Require;
import saddlebar.stencil.BitPicture;

/**
 * Reads rows coded by ITU-T T.6, the way back from {@link T6Encoder}; first row against white. Codes that the standard does not have, rows that
 * do not end at their width and streams that end too early are told with the row; it never reads or writes outside its row, whatever the bytes.
 * Uncompressed mode (an extension) is not read.
 */
public final class T6Decoder {
    private static final int LOOK_BITS = 7;
    private static final int PASS = 7;
    private static final int HORIZONTAL = 8;
    /** For each value of the next 7 bits {@code mode << 4 | length}; modes 0 to 6 are vertical a1 - b1 + 3; 0 where no mode begins so. */
    private static final short[] MODES = modes();

    private final int widthPx;
    private final CodeReader in;
    private final char[][] runs = {RunCodes.T4.looked(RunCodes.WHITE), RunCodes.T4.looked(RunCodes.BLACK)};
    private final CodedRow row;
    private int[] above;
    private int rowsRead;
    private boolean ended;

    public T6Decoder(InputStream coded, int widthPx) {
        this.widthPx = Require.within("widthPx", widthPx, 1, 1 << 20);
        this.in = new CodeReader(coded);
        this.row = new CodedRow(widthPx);
        this.above = new CodedRow(widthPx).changes;
    }

    /** Reads a strip of known height into a picture. */
    public static BitPicture strip(InputStream coded, int widthPx, int heightPx) throws IOException {
        BitPicture picture = new BitPicture(widthPx, heightPx);
        T6Decoder decoder = new T6Decoder(coded, widthPx);
        for (int y = 0; y < heightPx; y++) {
            if (!decoder.next(picture.words(), y * picture.wordsPerRow())) {
                throw new DamagedCodeException(y, "the code ends here, " + heightPx + " rows were announced");
            }
        }
        return picture;
    }

    /**
     * Reads the next row.
     *
     * @param target    takes the row's words
     * @param firstWord where in the target
     * @return false at the end of block or of the stream
     */
    public boolean next(long[] target, int firstWord) throws IOException {
        if (ended || in.exhausted() || in.look(12) == 1) {
            ended = true;
            return false;
        }
        row.start();
        decode();
        row.close();
        row.draw(target, firstWord);
        int[] swap = above;
        above = row.changes;
        row.changes = swap;
        rowsRead++;
        return true;
    }

    private void decode() throws IOException {
        final int width = widthPx;
        final int[] ref = above;
        int colour = RunCodes.WHITE;
        int b = 1;
        int a0 = 0;
        while (a0 < width) {
            int entry = MODES[in.look(LOOK_BITS)];
            int mode = entry >> 4;
            in.take(entry & 15);
            if (mode < PASS && entry != 0) {
                int a1 = ref[b] + mode - 3;
                if (a1 < a0 || a1 > width) {
                    throw damaged("a change of colour at px " + a1 + " is left of px " + a0 + " or beyond the width of " + width);
                }
                row.change(a1);
                a0 = a1;
                colour ^= 1;
                b--;
            } else if (mode == PASS) {
                a0 = ref[b + 1];
                if (a0 == width) {
                    throw damaged("a pass has nothing in the row above to pass");
                }
                b += 2;
            } else if (mode == HORIZONTAL) {
                int a1 = a0 + run(colour);
                int a2 = a1 + run(colour ^ 1);
                if (a2 > width) {
                    throw damaged("runs end at px " + a2 + ", beyond the width of " + width);
                }
                row.change(a1);
                row.change(a2);
                a0 = a2;
            } else {
                throw damaged(in.look(LOOK_BITS) == 1 ? "an extension such as uncompressed mode, which is not read" : "no mode of T.6 begins so");
            }
            if (in.overrun()) {
                throw damaged("the code ends within the row");
            }
            if (a0 < width) {
                while (ref[b] <= a0) {
                    b += 2;
                }
            }
        }
    }

    /** A run with its make-up codes, at most one px longer than the row. */
    private int run(int colour) throws IOException {
        int length = 0;
        while (true) {
            int entry = runs[colour][in.look(RunCodes.LOOK_BITS)];
            if (entry == 0) {
                throw damaged("no " + (colour == RunCodes.WHITE ? "white" : "black") + " run begins so");
            }
            in.take(entry & 15);
            int part = entry >> 4;
            length = Math.min(widthPx + 1, length + part);
            if (part < 64) {
                return length;
            }
            if (in.overrun()) {
                throw damaged("the code ends within the row");
            }
        }
    }

    private DamagedCodeException damaged(String what) {
        return new DamagedCodeException(rowsRead, in.nearEnd() ? "the code ends within the row" : what);
    }

    private static short[] modes() {
        short[] modes = new short[1 << LOOK_BITS];
        String[] words = {"0000010", "000010", "010", "1", "011", "000011", "0000011", "0001", "001"};
        for (int mode = 0; mode < words.length; mode++) {
            int free = LOOK_BITS - words[mode].length();
            int first = Integer.parseInt(words[mode], 2) << free;
            for (int rest = 0; rest < 1 << free; rest++) {
                modes[first + rest] = (short) (mode << 4 | words[mode].length());
            }
        }
        return modes;
    }
}
