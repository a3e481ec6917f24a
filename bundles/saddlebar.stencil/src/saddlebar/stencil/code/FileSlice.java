package saddlebar.stencil.code;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;

/** Some bytes of an open file as a stream. Closing it leaves the file open; several may read the same file. */
final class FileSlice extends InputStream {
    private final FileChannel file;
    private long at;
    private final long end;

    FileSlice(FileChannel file, long offset, long bytes) {
        this.file = file;
        this.at = offset;
        this.end = offset + bytes;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] target, int offset, int length) throws IOException {
        if (length == 0) {
            return 0;
        }
        int wanted = (int) Math.min(length, end - at);
        int have = wanted <= 0 ? -1 : file.read(ByteBuffer.wrap(target, offset, wanted), at);
        if (have > 0) {
            at += have;
        }
        return have;
    }
}
