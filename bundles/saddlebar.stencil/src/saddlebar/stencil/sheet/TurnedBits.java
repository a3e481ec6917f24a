package saddlebar.stencil.sheet;

import saddlebar.stencil.BitPicture;

/** Whole pictures turned by quarters of x towards y (clockwise as seen), 64 x 64 px at a time. */
final class TurnedBits {
    private TurnedBits() {
    }

    static BitPicture turned(BitPicture picture, int quarterTurns) {
        return switch (quarterTurns & 3) {
            case 1 -> quarter(picture, true);
            case 2 -> quarter(quarter(picture, true), true);
            case 3 -> quarter(picture, false);
            default -> picture;
        };
    }

    /** One quarter: clockwise px (x, y) goes to (height - 1 - y, x), else to (y, width - 1 - x). */
    private static BitPicture quarter(BitPicture from, boolean clockwise) {
        BitPicture to = new BitPicture(from.heightPx(), from.widthPx());
        long[] block = new long[64];
        for (int toWord = 0; toWord < to.wordsPerRow(); toWord++) {
            for (int fromWord = 0; fromWord < from.wordsPerRow(); fromWord++) {
                for (int i = 0; i < 64; i++) {
                    int y = clockwise ? from.heightPx() - 1 - (64 * toWord + i) : 64 * toWord + i;
                    block[i] = y >= 0 && y < from.heightPx() ? from.words()[y * from.wordsPerRow() + fromWord] : 0;
                }
                transpose(block);
                int rows = Math.min(64, from.widthPx() - 64 * fromWord);
                for (int j = 0; j < rows; j++) {
                    int y = clockwise ? 64 * fromWord + j : to.heightPx() - 1 - (64 * fromWord + j);
                    to.words()[y * to.wordsPerRow() + toWord] = block[j];
                }
            }
        }
        return to;
    }

    /**
     * Exchanges rows and columns of 64 x 64 bits by exchanging ever smaller quarters.
     * <p>Source: Warren, H. S. (2012). Hacker's Delight, 2nd ed., 7-3, there for 32 x 32.
     */
    private static void transpose(long[] block) {
        long mask = 0x00000000FFFFFFFFL;
        for (int size = 32; size != 0; size >>= 1, mask ^= mask << size) {
            for (int row = 0; row < 64; row = (row | size) + 1 & ~size) {
                long exchanged = (block[row] ^ block[row | size] >>> size) & mask;
                block[row] ^= exchanged;
                block[row | size] ^= exchanged << size;
            }
        }
    }
}
