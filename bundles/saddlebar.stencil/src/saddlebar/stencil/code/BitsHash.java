package saddlebar.stencil.code;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;

import saddlebar.model.file.Hashes;
import saddlebar.model.work.Work;
import saddlebar.stencil.BitBands;

/**
 * Hash of a 1-bit picture that does not depend on the file it lies in: SHA-256 of the raw PBM file of these bits ({@code P4}, width and height
 * in decimal, one line break after each, then the rows in whole bytes, 1 = black), so that anyone can make it again with common tools.
 */
public final class BitsHash {
    private final MessageDigest digest = Hashes.sha256();
    private final int widthPx;
    private byte[] packed = new byte[0];

    public BitsHash(int widthPx, int heightPx) {
        this.widthPx = widthPx;
        digest.update(("P4\n" + widthPx + " " + heightPx + "\n").getBytes(StandardCharsets.US_ASCII));
    }

    /** Reads bits to their end, closes them and gives their hash. */
    public static String of(BitBands bits, Work work) throws IOException {
        try (bits) {
            BitsHash hash = new BitsHash(bits.widthPx(), bits.heightPx());
            int rowsAtOnce = Math.max(1, (1 << 15) / bits.wordsPerRow());
            long[] band = new long[rowsAtOnce * bits.wordsPerRow()];
            for (int rows = bits.read(band, rowsAtOnce); rows > 0; rows = bits.read(band, rowsAtOnce)) {
                work.checkpoint();
                hash.add(band, rows);
            }
            return hash.hex();
        }
    }

    public void add(long[] rows, int rowCount) {
        int bytes = rowCount * PackedRows.bytesPerRow(widthPx);
        if (packed.length < bytes) {
            packed = new byte[bytes];
        }
        PackedRows.pack(rows, rowCount, widthPx, packed, 0);
        digest.update(packed, 0, bytes);
    }

    /** The hash as lower case hex; nothing can be added after it. */
    public String hex() {
        return Hashes.hex(digest);
    }
}
