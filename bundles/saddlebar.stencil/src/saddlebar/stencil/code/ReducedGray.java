package saddlebar.stencil.code;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Arrays;

import saddlebar.model.units.Require;
import saddlebar.model.work.Work;
import saddlebar.stencil.BitBands;

/**
 * A 1-bit picture made small for a person's eye: each px the mean of a box of {@code factor x factor} bits, 0 = all toner, 255 = none; boxes at the
 * right and lower edge count only the bits that are there.
 *
 * @param gray rows from the top, one byte a px
 */
public record ReducedGray(int widthPx, int heightPx, int factor, byte[] gray) {
    /**
     * Reads bits to their end and closes them.
     *
     * @param factor bits a side of a box, 1 to 4096
     * @param work   told one unit a row of bits
     */
    public static ReducedGray of(BitBands bits, int factor, Work work) throws IOException {
        Require.within("factor", factor, 1, 4096);
        try (bits) {
            int widthPx = (bits.widthPx() + factor - 1) / factor;
            int heightPx = (bits.heightPx() + factor - 1) / factor;
            byte[] gray = new byte[Math.multiplyExact(widthPx, heightPx)];
            long[] row = new long[bits.wordsPerRow()];
            int[] counts = new int[widthPx];
            int rows = 0;
            while (bits.read(row, 1) > 0) {
                work.checkpoint();
                count(row, factor, counts);
                rows++;
                work.advance(1);
                if (rows % factor == 0 || rows == bits.heightPx()) {
                    int boxRows = rows % factor == 0 ? factor : rows % factor;
                    int y = (rows - 1) / factor;
                    for (int x = 0; x < widthPx; x++) {
                        int bitsInBox = boxRows * Math.min(factor, bits.widthPx() - x * factor);
                        gray[y * widthPx + x] = (byte) (255 - (255 * counts[x] + bitsInBox / 2) / bitsInBox);
                    }
                    Arrays.fill(counts, 0);
                }
            }
            return new ReducedGray(widthPx, heightPx, factor, gray);
        }
    }

    /** The same as an 8-bit gray picture. */
    public BufferedImage image() {
        BufferedImage image = new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_BYTE_GRAY);
        image.getRaster().setDataElements(0, 0, widthPx, heightPx, gray);
        return image;
    }

    /** Adds the ones of each box of a row. */
    private static void count(long[] row, int factor, int[] counts) {
        for (int x = 0; x < counts.length; x++) {
            int from = x * factor;
            int to = Math.min(from + factor, row.length << 6);
            int ones = 0;
            while (from < to) {
                int inWord = Math.min(64 - (from & 63), to - from);
                ones += Long.bitCount(row[from >> 6] << (from & 63) >>> (64 - inWord));
                from += inWord;
            }
            counts[x] += ones;
        }
    }
}
