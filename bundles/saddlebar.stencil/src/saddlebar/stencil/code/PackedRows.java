package saddlebar.stencil.code;

/** Rows as files keep them: each a whole number of bytes, first px highest; between them and rows of longs. */
final class PackedRows {
    private PackedRows() {
    }

    static int bytesPerRow(int widthPx) {
        return (widthPx + 7) >> 3;
    }

    /** Writes rows of longs as rows of bytes. */
    static void pack(long[] rows, int rowCount, int widthPx, byte[] target, int targetAt) {
        int words = (widthPx + 63) >> 6;
        int bytes = bytesPerRow(widthPx);
        int whole = bytes >> 3;
        for (int row = 0; row < rowCount; row++) {
            int from = row * words;
            int to = targetAt + row * bytes;
            for (int word = 0; word < whole; word++) {
                CodeBits.LONG.set(target, to + (word << 3), rows[from + word]);
            }
            for (int at = whole << 3; at < bytes; at++) {
                target[to + at] = (byte) (rows[from + whole] >>> (56 - ((at & 7) << 3)));
            }
        }
    }

    /** Reads one row of bytes into longs; bits past the width become 0 whatever the bytes say. */
    static void unpack(byte[] packed, int packedAt, int widthPx, long[] target, int firstWord) {
        int bytes = bytesPerRow(widthPx);
        int whole = bytes >> 3;
        for (int word = 0; word < whole; word++) {
            target[firstWord + word] = (long) CodeBits.LONG.get(packed, packedAt + (word << 3));
        }
        if (whole << 3 < bytes) {
            long word = 0;
            for (int at = whole << 3; at < bytes; at++) {
                word |= (packed[packedAt + at] & 0xFFL) << (56 - ((at & 7) << 3));
            }
            target[firstWord + whole] = word;
        }
        if ((widthPx & 63) != 0) {
            target[firstWord + (widthPx >> 6)] &= -1L << (64 - (widthPx & 63));
        }
    }
}
