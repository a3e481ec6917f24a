package saddlebar.stencil.code;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.InflaterInputStream;

import saddlebar.stencil.BitBands;

/** Rows of a 1-bit gray PNG as {@link BitonalPng} writes them (filter 0, no interlace), 1 = black; for reading back what was written. */
final class PngBits implements BitBands {
    private final DataInputStream file;
    private final InputStream rows;
    private final int widthPx;
    private final int heightPx;
    private final byte[] packed;
    private int row;

    PngBits(Path path) throws IOException {
        this.file = new DataInputStream(new BufferedInputStream(Files.newInputStream(path), 1 << 16));
        byte[] signature = new byte[8];
        file.readFully(signature);
        int length = file.readInt();
        byte[] name = file.readNBytes(4);
        this.widthPx = file.readInt();
        this.heightPx = file.readInt();
        byte[] rest = file.readNBytes(length - 8 + 4);
        if (!Arrays.equals(signature, PngChunks.SIGNATURE) || !new String(name, StandardCharsets.US_ASCII).equals("IHDR") || rest[0] != 1
                || rest[1] != 0 || rest[4] != 0) {
            throw new IOException("no 1-bit gray PNG");
        }
        this.packed = new byte[PackedRows.bytesPerRow(widthPx)];
        this.rows = new InflaterInputStream(new Data());
    }

    @Override
    public int widthPx() {
        return widthPx;
    }

    @Override
    public int heightPx() {
        return heightPx;
    }

    @Override
    public int read(long[] target, int maxRows) throws IOException {
        int count = Math.min(maxRows, heightPx - row);
        for (int i = 0; i < count; i++) {
            if (rows.read() != 0 || rows.readNBytes(packed, 0, packed.length) < packed.length) {
                throw new EOFException("row " + row + ": filtered or cut short");
            }
            int first = i * wordsPerRow();
            for (int at = 0; at < packed.length; at++) {
                packed[at] = (byte) ~packed[at];
            }
            PackedRows.unpack(packed, 0, widthPx, target, first);
            row++;
        }
        return count;
    }

    @Override
    public void close() {
        try {
            rows.close();
            file.close();
        } catch (IOException e) {
            throw new IllegalStateException("a file that was read cannot be closed", e);
        }
    }

    /** The bytes of all IDAT chunks, one after the other. */
    private final class Data extends InputStream {
        private int left;

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
        }

        @Override
        public int read(byte[] target, int offset, int length) throws IOException {
            while (left == 0) {
                int bytes = file.readInt();
                String name = new String(file.readNBytes(4), StandardCharsets.US_ASCII);
                if (name.equals("IEND")) {
                    return -1;
                }
                if (name.equals("IDAT")) {
                    left = bytes;
                } else {
                    file.skipNBytes(bytes);
                }
                if (left == 0) {
                    file.skipNBytes(4);
                }
            }
            int have = file.read(target, offset, Math.min(left, length));
            left -= Math.max(0, have);
            if (left == 0) {
                file.skipNBytes(4); // check value
            }
            return have;
        }
    }
}
