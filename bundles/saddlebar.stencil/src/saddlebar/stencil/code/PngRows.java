package saddlebar.stencil.code;

import java.io.IOException;
import java.util.zip.Deflater;

/** Packs rows by deflate into IDAT chunks; each row has filter 0, as is best for 1 bit a px and good for plain drawings. */
final class PngRows implements AutoCloseable {
    private static final int CHUNK_BYTES = 1 << 16;

    private final PngChunks chunks;
    private final Deflater deflater = new Deflater(Deflater.DEFAULT_COMPRESSION);
    private final byte[] packed = new byte[CHUNK_BYTES];
    private int packedBytes;

    PngRows(PngChunks chunks) {
        this.chunks = chunks;
    }

    /** Rows with their filter bytes. */
    void write(byte[] rows, int length) throws IOException {
        deflater.setInput(rows, 0, length);
        while (!deflater.needsInput()) {
            deflate();
        }
    }

    void finish() throws IOException {
        deflater.finish();
        while (!deflater.finished()) {
            deflate();
        }
        if (packedBytes > 0) {
            chunks.write("IDAT", packed, packedBytes);
        }
    }

    private void deflate() throws IOException {
        packedBytes += deflater.deflate(packed, packedBytes, packed.length - packedBytes);
        if (packedBytes == packed.length) {
            chunks.write("IDAT", packed, packedBytes);
            packedBytes = 0;
        }
    }

    @Override
    public void close() {
        deflater.end();
    }
}
