package saddlebar.stencil.code;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;

import saddlebar.stencil.BitBands;

/** An uncompressed TIFF in one strip after its header, highest byte first, put together without the writer that is tested. */
final class PlainTiff {
    private PlainTiff() {
    }

    static void write(BitBands bits, Path file) throws IOException {
        write(bits, file, false);
    }

    static void write(BitBands bits, Path file, boolean oneIsWhite) throws IOException {
        int bytesPerRow = (bits.widthPx() + 7) / 8;
        int data = bytesPerRow * bits.heightPx();
        int at = 8 + data + (data & 1);
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            out.write(ByteBuffer.allocate(8).putShort((short) 0x4D4D).putShort((short) 42).putInt(at).array());
            long[] row = new long[bits.wordsPerRow()];
            ByteBuffer bytes = ByteBuffer.allocate(8 * row.length);
            while (bits.read(row, 1) > 0) {
                for (int word = 0; word < row.length; word++) {
                    bytes.putLong(8 * word, oneIsWhite ? ~row[word] : row[word]);
                }
                out.write(bytes.array(), 0, bytesPerRow);
            }
            out.write(new byte[data & 1]);
            int[][] fields = {{256, bits.widthPx()}, {257, bits.heightPx()}, {258, 1}, {259, 1}, {262, oneIsWhite ? 1 : 0}, {273, 8}, {277, 1},
                    {278, bits.heightPx()}, {279, data}};
            ByteBuffer directory = ByteBuffer.allocate(2 + 12 * fields.length + 4).putShort((short) fields.length);
            for (int[] field : fields) {
                directory.putShort((short) field[0]).putShort((short) 4).putInt(1).putInt(field[1]);
            }
            out.write(directory.array());
        }
    }
}
