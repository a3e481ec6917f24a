package saddlebar.stencil.code;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;

import saddlebar.stencil.BitBands;

/** Rows of one strip, however packed, from a stream that is closed with it; 1 = black. */
final class StreamBits implements BitBands {
    private final InputStream in;
    private final int widthPx;
    private final int heightPx;
    private final byte[] packed;
    /** Null where rows are bytes as they are. */
    private final T6Decoder decoder;
    private int row;

    StreamBits(InputStream in, int widthPx, int heightPx, BitPacking packing) {
        this.in = packing == BitPacking.DEFLATE ? new InflatedBytes(in) : in;
        this.widthPx = widthPx;
        this.heightPx = heightPx;
        this.packed = new byte[PackedRows.bytesPerRow(widthPx)];
        this.decoder = packing == BitPacking.T6 ? new T6Decoder(in, widthPx) : null;
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
        int rows = Math.min(maxRows, heightPx - row);
        for (int i = 0; i < rows; i++) {
            if (!next(target, i * wordsPerRow())) {
                throw new EOFException("row " + row + ": the rows end before the last of " + heightPx);
            }
            row++;
        }
        return rows;
    }

    private boolean next(long[] target, int firstWord) throws IOException {
        if (decoder != null) {
            return decoder.next(target, firstWord);
        }
        if (in.readNBytes(packed, 0, packed.length) < packed.length) {
            return false;
        }
        PackedRows.unpack(packed, 0, widthPx, target, firstWord);
        return true;
    }

    @Override
    public void close() {
        try {
            in.close();
        } catch (IOException e) {
            throw new IllegalStateException("a stream that was read cannot be closed", e);
        }
    }
}
