package saddlebar.stencil.code;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/** Writes the parts of a PNG file: each its length, its name, its bytes and their check value (ISO/IEC 15948, 5.3). */
final class PngChunks {
    static final byte[] SIGNATURE = {(byte) 137, 'P', 'N', 'G', 13, 10, 26, 10};

    private final OutputStream out;

    PngChunks(OutputStream out) throws IOException {
        this.out = out;
        out.write(SIGNATURE);
    }

    void write(String name, byte[] bytes, int length) throws IOException {
        byte[] named = name.getBytes(StandardCharsets.US_ASCII);
        CRC32 check = new CRC32();
        check.update(named);
        check.update(bytes, 0, length);
        out.write(ByteBuffer.allocate(4).putInt(length).array());
        out.write(named);
        out.write(bytes, 0, length);
        out.write(ByteBuffer.allocate(4).putInt((int) check.getValue()).array());
    }

    /** Size, bits a px and colour type (0 gray, 2 red green blue), no interlace. */
    void header(int widthPx, int heightPx, int bitDepth, int colourType) throws IOException {
        byte[] header = ByteBuffer.allocate(13).putInt(widthPx).putInt(heightPx).put((byte) bitDepth).put((byte) colourType).array();
        write("IHDR", header, header.length);
    }

    /** Resolution, which PNG counts in px a metre: exact to half a px a metre. */
    void resolution(double dpi) throws IOException {
        int perMetre = (int) Math.round(dpi / 0.0254);
        write("pHYs", ByteBuffer.allocate(9).putInt(perMetre).putInt(perMetre).put((byte) 1).array(), 9);
    }

    /** A text of any letters under one of the standard's keywords; left out if empty. */
    void text(String keyword, String text) throws IOException {
        if (!text.isEmpty()) {
            byte[] bytes = (keyword + "\0\0\0\0\0" + text.replace('\0', ' ')).getBytes(StandardCharsets.UTF_8);
            write("iTXt", bytes, bytes.length);
        }
    }

    void end() throws IOException {
        write("IEND", new byte[0], 0);
    }
}
