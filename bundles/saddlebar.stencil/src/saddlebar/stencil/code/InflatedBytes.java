package saddlebar.stencil.code;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * The plain bytes of a zlib stream (RFC 1950). Damage is told apart from failures to read. A check value at the end is looked at where the end is reached;
 * closing it closes the stream below.
 */
final class InflatedBytes extends InputStream {
    /** The stream is no zlib stream, or is damaged. */
    static final class DamagedBytesException extends IOException {
        private static final long serialVersionUID = 1L;

        DamagedBytesException(String what) {
            super(what);
        }
    }

    private final InputStream packed;
    private final Inflater inflater = new Inflater();
    private final byte[] buffer = new byte[1 << 14];

    InflatedBytes(InputStream packed) {
        this.packed = packed;
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
        try {
            while (true) {
                int have = inflater.inflate(target, offset, length);
                if (have > 0) {
                    return have;
                }
                if (inflater.finished()) {
                    return -1;
                }
                if (inflater.needsDictionary()) {
                    throw new DamagedBytesException("its deflated bytes ask for a dictionary, which there is not");
                }
                int more = packed.read(buffer);
                if (more <= 0) {
                    throw new DamagedBytesException("its deflated bytes end too early");
                }
                inflater.setInput(buffer, 0, more);
            }
        } catch (DataFormatException e) {
            throw new DamagedBytesException("its deflated bytes are damaged (" + e.getMessage() + ")");
        } catch (EOFException e) {
            throw new DamagedBytesException("its deflated bytes end too early");
        }
    }

    @Override
    public void close() throws IOException {
        inflater.end();
        packed.close();
    }
}
