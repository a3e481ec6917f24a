package saddlebar.stencil.code;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.OutputStream;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.zip.Adler32;
import java.util.zip.Deflater;

/**
 * One zlib stream (RFC 1950, RFC 1951) deflated in pieces of a fixed size, several at a time: each is told the 32 KiB before it and ends at a whole byte, so
 * that joined in order they are one stream. Its bytes depend on what is written and on the machine's zlib, not on the number of threads.
 */
final class ZlibStream implements AutoCloseable {
    private static final int PIECE_BYTES = 1 << 20;
    private static final int WINDOW_BYTES = 1 << 15;
    /** On bits that T.6 does badly with, higher levels take three times the time for a fiftieth of the size. */
    private static final int LEVEL = 1;
    /** Deflate with a window of 32 KiB; least effort; such that the two bytes are a multiple of 31. */
    private static final byte[] HEAD = {0x78, 0x01};

    private final OutputStream out;
    private final ExecutorService pool;
    private final int mostUnderWay;
    private final Adler32 check = new Adler32();
    private final ArrayDeque<Future<byte[]>> underWay = new ArrayDeque<>();
    private byte[] piece = new byte[WINDOW_BYTES + PIECE_BYTES];
    private int before;
    private int bytes;
    private long written;

    /**
     * @param pool         deflates pieces; null to deflate them here
     * @param mostUnderWay pieces that may wait
     */
    ZlibStream(OutputStream out, ExecutorService pool, int mostUnderWay) throws IOException {
        this.out = out;
        this.pool = pool;
        this.mostUnderWay = mostUnderWay;
        put(HEAD);
    }

    void write(byte[] from, int length) throws IOException {
        check.update(from, 0, length);
        for (int done = 0; done < length;) {
            int more = Math.min(length - done, PIECE_BYTES - bytes);
            System.arraycopy(from, done, piece, before + bytes, more);
            bytes += more;
            done += more;
            if (bytes == PIECE_BYTES) {
                handOver(false);
            }
        }
    }

    /** Ends the stream and gives its length. */
    long finish() throws IOException {
        handOver(true);
        while (!underWay.isEmpty()) {
            put(first());
        }
        int sum = (int) check.getValue();
        put(new byte[] {(byte) (sum >>> 24), (byte) (sum >>> 16), (byte) (sum >>> 8), (byte) sum});
        return written;
    }

    private void handOver(boolean last) throws IOException {
        byte[] from = piece;
        int start = before;
        int length = bytes;
        if (pool == null) {
            put(deflated(from, start, length, last));
        } else {
            underWay.add(pool.submit(() -> deflated(from, start, length, last)));
            if (underWay.size() > mostUnderWay) {
                put(first());
            }
        }
        piece = new byte[WINDOW_BYTES + PIECE_BYTES];
        before = Math.min(WINDOW_BYTES, start + length);
        bytes = 0;
        System.arraycopy(from, start + length - before, piece, 0, before);
    }

    private static byte[] deflated(byte[] from, int start, int length, boolean last) {
        Deflater deflater = new Deflater(LEVEL, true);
        try {
            if (start > 0) {
                deflater.setDictionary(from, 0, start);
            }
            deflater.setInput(from, start, length);
            if (last) {
                deflater.finish();
            }
            byte[] packed = new byte[length + length / 100 + 256];
            int have = 0;
            while (true) {
                int more = deflater.deflate(packed, have, packed.length - have, last ? Deflater.NO_FLUSH : Deflater.SYNC_FLUSH);
                have += more;
                if (have < packed.length) {
                    return Arrays.copyOf(packed, have);
                }
                packed = Arrays.copyOf(packed, 2 * packed.length);
            }
        } finally {
            deflater.end();
        }
    }

    private byte[] first() throws IOException {
        try {
            return underWay.remove().get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("stopped while rows were deflated");
        } catch (ExecutionException e) {
            throw new IllegalStateException("rows could not be deflated", e.getCause());
        }
    }

    private void put(byte[] some) throws IOException {
        out.write(some, 0, some.length);
        written += some.length;
    }

    /** Gives up what is under way. */
    @Override
    public void close() {
        underWay.forEach(piece -> piece.cancel(false));
        underWay.clear();
    }
}
