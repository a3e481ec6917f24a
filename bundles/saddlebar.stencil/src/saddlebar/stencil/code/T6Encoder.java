package saddlebar.stencil.code;

import java.util.Arrays;

import saddlebar.model.units.Require;
import saddlebar.stencil.BitPicture;

/**
 * Codes rows of 1-bit px by the two-dimensional scheme of facsimile group 4. The code of a row depends on that row and the one above it alone,
 * so that bands of one picture can be coded apart, each told the row above its first, and their bits joined to the same string.
 *
 * <p>A row is first turned into the places where its colour changes, found 64 px at a time; a row equal to the one above is one bit a change.
 * Cost: O(words + changes). Worst case, a field of single px: about 6 bits a px, which is why {@link CodedBits} also measures plain bits.
 *
 * <p>Source: ITU-T T.6 (11/88), 2.2 with Table 1 (modes), 2.4.1.1 (end of facsimile block); runs ITU-T T.4 Tables 2 and 3.
 */
public final class T6Encoder {
    /** Codes of vertical mode by a1 - b1 + 3: VL3 VL2 VL1 V0 VR1 VR2 VR3, and their lengths. */
    private static final int[] VERTICAL = {0b0000010, 0b000010, 0b010, 0b1, 0b011, 0b000011, 0b0000011};
    private static final int[] VERTICAL_BITS = {7, 6, 3, 1, 3, 6, 7};
    private static final int PASS = 0b0001;
    private static final int PASS_BITS = 4;
    private static final int HORIZONTAL = 0b001;
    private static final int HORIZONTAL_BITS = 3;
    private static final int END_OF_LINE = 0b000000000001;
    private static final int END_OF_LINE_BITS = 12;

    private final int widthPx;
    private final int wordsPerRow;
    private final int[] white = RunCodes.T4.words(RunCodes.WHITE);
    private final int[] black = RunCodes.T4.words(RunCodes.BLACK);
    private int[] above;
    private int[] current;
    private int changesAbove;

    public T6Encoder(int widthPx) {
        this.widthPx = Require.within("widthPx", widthPx, 1, 1 << 20);
        this.wordsPerRow = (widthPx + 63) >> 6;
        this.above = new int[widthPx + 6];
        this.current = new int[widthPx + 6];
        restart();
    }

    /** The code of a whole picture with its end of facsimile block, filled up to bytes: one strip. */
    public static byte[] strip(BitPicture picture) {
        CodeBits bits = new CodeBits(picture.words().length);
        new T6Encoder(picture.widthPx()).rows(picture.words(), 0, picture.heightPx(), bits);
        end(bits);
        return Arrays.copyOf(bits.bytes, bits.length);
    }

    /** Two ends of line, then zeros up to a byte. */
    static void end(CodeBits out) {
        out.put(END_OF_LINE, END_OF_LINE_BITS);
        out.put(END_OF_LINE, END_OF_LINE_BITS);
        out.pad();
    }

    /** The row above the next one is white: the start of a picture or of a strip. */
    void restart() {
        changesAbove = 0;
        close(above, 0);
    }

    /** The row above the next one is this. */
    void continueBelow(long[] rows, int firstWord) {
        changesAbove = changes(rows, firstWord, above);
    }

    /** Codes rows one below the other, without an end. */
    void rows(long[] rows, int firstWord, int rowCount, CodeBits out) {
        for (int row = 0; row < rowCount; row++) {
            int at = firstWord + row * wordsPerRow;
            if (row > 0 && Arrays.equals(rows, at, at + wordsPerRow, rows, at - wordsPerRow, at)) {
                out.putOnes(changesAbove + 1);
                continue;
            }
            int changesHere = changes(rows, at, current);
            if (changesHere == 0 && changesAbove == 0) {
                out.put(1, 1);
            } else {
                row(out);
            }
            int[] swap = above;
            above = current;
            current = swap;
            changesAbove = changesHere;
        }
    }

    /** Finds where the colour changes: from index 1 on, odd indices turn black, even ones white; sentinels at both ends. */
    private int changes(long[] rows, int firstWord, int[] target) {
        int count = 0;
        long last = 0;
        for (int word = 0; word < wordsPerRow; word++) {
            long px = rows[firstWord + word];
            long changed = px ^ (px >>> 1 | last << 63);
            last = px;
            int base = word << 6;
            while (changed != 0) {
                int at = Long.numberOfLeadingZeros(changed);
                target[++count] = base + at;
                changed ^= Long.MIN_VALUE >>> at;
            }
        }
        if (count > 0 && target[count] == widthPx) {
            count--; // the last px is black and the bits past the width are 0: no change, the row ends
        }
        close(target, count);
        return count;
    }

    private void close(int[] target, int count) {
        target[0] = -1;
        target[count + 1] = widthPx;
        target[count + 2] = widthPx;
        target[count + 3] = widthPx;
        target[count + 4] = widthPx;
    }

    /**
     * Codes {@link #current} against {@link #above}. The next change of a colour has the parity of that colour in both arrays, so colours are
     * the lowest bit of the index: b = index of b1, a = index of a1.
     */
    private void row(CodeBits out) {
        out.ensure(widthPx + widthPx / 1024 + 64); // 7 bits a px at most, and the ends of the row
        final int width = widthPx;
        final int[] ref = above;
        final int[] cur = current;
        byte[] bytes = out.bytes;
        int length = out.length;
        long pending = out.pending;
        int bits = out.pendingBits;
        int a = 1;
        int b = 1;
        int a0 = 0;
        do {
            int a1 = cur[a];
            int b1 = ref[b];
            int vertical = a1 - b1 + 3;
            if (ref[b + 1] < a1) {
                pending = pending << PASS_BITS | PASS;
                bits += PASS_BITS;
                a0 = ref[b + 1];
                b += 2;
            } else if (vertical >= 0 && vertical <= 6) {
                int codeBits = VERTICAL_BITS[vertical];
                pending = pending << codeBits | VERTICAL[vertical];
                bits += codeBits;
                a0 = a1;
                a++;
                if (a0 == width) {
                    break;
                }
                b--;
                while (ref[b] <= a0) {
                    b += 2;
                }
            } else {
                pending = pending << HORIZONTAL_BITS | HORIZONTAL;
                bits += HORIZONTAL_BITS;
                int a2 = cur[a + 1];
                int first = a1 - a0;
                int second = a2 - a1;
                if (first > RunCodes.LONGEST || second > RunCodes.LONGEST) {
                    out.length = length;
                    out.pending = pending;
                    out.pendingBits = bits;
                    longRun(out, first, (a & 1) == 1 ? white : black);
                    longRun(out, second, (a & 1) == 1 ? black : white);
                    bytes = out.bytes;
                    length = out.length;
                    pending = out.pending;
                    bits = out.pendingBits;
                } else {
                    int word = ((a & 1) == 1 ? white : black)[first];
                    int wordBits = word & 31;
                    pending = pending << wordBits | word >>> RunCodes.LENGTH_BITS;
                    bits += wordBits;
                    if (bits >= 32) {
                        bits -= 32;
                        CodeBits.INT.set(bytes, length, (int) (pending >>> bits));
                        length += 4;
                    }
                    word = ((a & 1) == 1 ? black : white)[second];
                    wordBits = word & 31;
                    pending = pending << wordBits | word >>> RunCodes.LENGTH_BITS;
                    bits += wordBits;
                }
                a0 = a2;
                a += 2;
                if (a0 == width) {
                    break;
                }
                while (ref[b] <= a0) {
                    b += 2;
                }
            }
            if (bits >= 32) {
                bits -= 32;
                CodeBits.INT.set(bytes, length, (int) (pending >>> bits));
                length += 4;
            }
        } while (true);
        if (bits >= 32) {
            bits -= 32;
            CodeBits.INT.set(bytes, length, (int) (pending >>> bits));
            length += 4;
        }
        out.length = length;
        out.pending = pending;
        out.pendingBits = bits;
    }

    /** A run of any length. */
    private static void longRun(CodeBits out, int run, int[] words) {
        int left = run;
        while (left > RunCodes.LONGEST) {
            out.put(RunCodes.REPEATED_CODE, RunCodes.REPEATED_BITS);
            left -= RunCodes.REPEATED;
        }
        out.put(words[left] >>> RunCodes.LENGTH_BITS, words[left] & 31);
    }
}
