package saddlebar.stencil.code;

import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

import saddlebar.model.work.Work;
import saddlebar.stencil.BitBands;

/**
 * The rows of a picture as they will lie in a file, kept in a hidden file beside the target: coded by T.6, deflated, or plain. T.6 is tried first, which
 * is the smallest for all dots that grow and the most widely read. Where it makes the bits longer (single scattered px can take 2.8 times the
 * plain bits) plain bits go on in its place; and if what is there then takes more than a quarter of the plain bits it is deflated too, and the smaller is kept.
 * Which is decided for the whole picture, since a TIFF has one compression and a PDF image one filter. Several files can be written from one of these.
 *
 * <p>Rows are read in order by the calling thread, coded on several threads in chunks of whole rows that are told the row above them, and joined
 * bit by bit in order: the bytes do not depend on the number of threads or the size of the chunks.
 */
public final class CodedBits implements AutoCloseable {
    private static final int CHUNK_BYTES = 1 << 18;
    /** T.6 is given up once it is longer than the plain bits so far by this part of all: bits that it makes longer deflate does not. */
    private static final int LOST_SHARE = 16;
    /** Below this part of the plain bits T.6 is small enough for deflate, which takes far longer, not to be tried. */
    private static final int DEFLATE_FROM_SHARE = 4;

    /** One strip: where its bytes lie, and how many rows it holds. */
    record Strip(long offset, long bytes, int rows) {
    }

    private final Path near;
    private final int widthPx;
    private final int heightPx;
    private final int rowsPerStrip;
    private final List<Strip> strips = new ArrayList<>();
    private final CodeBits carried = new CodeBits(1 << 16);
    private OutputFile file;
    private BitPacking packing = BitPacking.T6;
    private boolean t6TooLong;
    private long t6Bytes;
    private int rowsDone;
    private long bytesDone;
    private long stripStart;
    private int stripRows;
    private byte[] packed = new byte[0];
    private String sha256OfBits;

    private CodedBits(Path near, BitBands bits, int rowsPerStrip) throws IOException {
        this.near = near;
        this.widthPx = bits.widthPx();
        this.heightPx = bits.heightPx();
        this.rowsPerStrip = rowsPerStrip == 0 ? heightPx : Math.min(rowsPerStrip, heightPx);
        this.file = OutputFile.open(hidden("coded"), true);
    }

    /**
     * Reads bits to their end, closes them and codes them.
     *
     * @param near a file that is going to be written; the rows are kept hidden beside it until this is closed
     * @param work told one unit a row
     */
    public static CodedBits of(BitBands bits, Path near, BitonalSettings settings, Work work) throws IOException {
        try (bits) {
            CodedBits coded = new CodedBits(near, bits, settings.rowsPerStrip());
            try {
                coded.read(bits, settings.threads(), work);
                return coded;
            } catch (IOException | RuntimeException | Error e) {
                coded.close();
                throw e;
            }
        }
    }

    public int widthPx() {
        return widthPx;
    }

    public int heightPx() {
        return heightPx;
    }

    /** {@code T.6}, {@code deflate} or {@code none}. */
    public String compression() {
        return packing.word();
    }

    /** Why not T.6, with the sizes; empty if it is T.6. */
    public String choice() {
        if (packing == BitPacking.T6) {
            return "";
        }
        String t6 = t6TooLong ? "T.6 makes these bits longer" : String.format(Locale.ROOT, "T.6 would take %.1f MB", t6Bytes / 1e6);
        double plainMb = plainBytes() / 1e6;
        return packing == BitPacking.PLAIN
                ? String.format(Locale.ROOT, "plain bits (%.1f MB), since %s and deflate no shorter", plainMb, t6)
                : String.format(Locale.ROOT, "deflate (%.1f MB), since %s and plain bits take %.1f MB", bytesDone / 1e6, t6, plainMb);
    }

    /** Size of the rows without any file around them. */
    public long bytes() {
        return bytesDone;
    }

    /** The hash of the bits, as {@link BitsHash} makes it. */
    public String sha256OfBits() {
        return sha256OfBits;
    }

    BitPacking packing() {
        return packing;
    }

    List<Strip> strips() {
        return strips;
    }

    int rowsPerStrip() {
        return rowsPerStrip;
    }

    /** The bytes of all strips, one after the other. */
    InputStream open() throws IOException {
        return Files.newInputStream(file.written());
    }

    private Path hidden(String what) {
        Path whole = near.toAbsolutePath();
        return whole.resolveSibling(whole.getFileName() + "." + what);
    }

    private long plainBytes() {
        return (long) PackedRows.bytesPerRow(widthPx) * heightPx;
    }

    private void read(BitBands bits, int threads, Work work) throws IOException {
        int wordsPerRow = bits.wordsPerRow();
        int chunkRows = Math.max(1, Math.min(heightPx, CHUNK_BYTES / (8 * wordsPerRow)));
        BitsHash hash = new BitsHash(widthPx, heightPx);
        ThreadLocal<T6Encoder> encoders = ThreadLocal.withInitial(() -> new T6Encoder(widthPx));
        ExecutorService pool = threads > 1 ? Executors.newFixedThreadPool(threads - 1, CodedBits::coder) : null;
        ArrayDeque<Future<RowChunk>> underWay = new ArrayDeque<>();
        ArrayDeque<RowChunk> free = new ArrayDeque<>();
        long[] above = new long[wordsPerRow];
        try {
            int rowsRead = 0;
            while (rowsRead < heightPx) {
                work.checkpoint();
                RowChunk chunk = free.isEmpty() ? new RowChunk(wordsPerRow, chunkRows) : free.pop();
                int inStrip = rowsRead % rowsPerStrip;
                int wanted = Math.min(Math.min(chunkRows, rowsPerStrip - inStrip), heightPx - rowsRead);
                fill(bits, chunk, wanted, rowsRead);
                chunk.startsStrip = inStrip == 0;
                chunk.endsStrip = inStrip + wanted == rowsPerStrip || rowsRead + wanted == heightPx;
                System.arraycopy(above, 0, chunk.above, 0, wordsPerRow);
                System.arraycopy(chunk.rows, (wanted - 1) * wordsPerRow, above, 0, wordsPerRow);
                hash.add(chunk.rows, wanted);
                rowsRead += wanted;
                if (pool == null || isPlain()) {
                    take(isPlain() ? chunk : chunk.encode(encoders.get()));
                    work.advance(wanted);
                    free.push(chunk);
                } else {
                    underWay.add(pool.submit(() -> chunk.encode(encoders.get())));
                    if (underWay.size() > 2 * threads) {
                        free.push(takeFirst(underWay, work));
                    }
                }
                while (isPlain() && !underWay.isEmpty()) {
                    free.push(takeFirst(underWay, work)); // before the first plain chunk that is not under way
                }
            }
            while (!underWay.isEmpty()) {
                work.checkpoint();
                takeFirst(underWay, work);
            }
            if (bytesDone > plainBytes() / DEFLATE_FROM_SHARE) {
                deflateIfSmaller(pool, threads, work);
            }
        } finally {
            if (pool != null) {
                pool.shutdownNow();
            }
        }
        file.written();
        sha256OfBits = hash.hex();
    }

    private static Thread coder(Runnable task) {
        Thread thread = new Thread(task, "saddlebar coder");
        thread.setDaemon(true);
        return thread;
    }

    private static void fill(BitBands bits, RowChunk chunk, int wanted, int rowsRead) throws IOException {
        int wordsPerRow = bits.wordsPerRow();
        int have = bits.read(chunk.rows, wanted);
        if (have > 0 && have < wanted) {
            long[] more = new long[wanted * wordsPerRow];
            while (have < wanted) {
                int rows = bits.read(more, wanted - have);
                if (rows <= 0) {
                    break;
                }
                System.arraycopy(more, 0, chunk.rows, have * wordsPerRow, rows * wordsPerRow);
                have += rows;
            }
        }
        if (have < wanted) {
            throw new IOException("a picture of " + bits.heightPx() + " rows ended after " + (rowsRead + Math.max(0, have)));
        }
        chunk.rowCount = wanted;
    }

    private RowChunk takeFirst(ArrayDeque<Future<RowChunk>> underWay, Work work) throws IOException {
        try {
            RowChunk chunk = underWay.remove().get();
            take(chunk);
            work.advance(chunk.rowCount);
            return chunk;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("stopped while rows were coded");
        } catch (ExecutionException e) {
            throw new IllegalStateException("rows could not be coded", e.getCause());
        }
    }

    /** The next chunk, in order. */
    private void take(RowChunk chunk) throws IOException {
        if (isPlain()) {
            writePlain(chunk.rows, chunk.rowCount);
        } else {
            long before = carried.bitLength() >> 3;
            carried.append(chunk.code);
            if (chunk.endsStrip) {
                T6Encoder.end(carried);
            }
            bytesDone += (carried.bitLength() >> 3) - before;
            carried.drainTo(file);
        }
        rowsDone += chunk.rowCount;
        stripRows += chunk.rowCount;
        if (chunk.endsStrip) {
            strips.add(new Strip(stripStart, bytesDone - stripStart, stripRows));
            stripStart = bytesDone;
            stripRows = 0;
        }
        if (!isPlain() && bytesDone > (long) rowsDone * PackedRows.bytesPerRow(widthPx) + plainBytes() / LOST_SHARE) {
            turnPlain();
        }
    }

    private void writePlain(long[] rows, int rowCount) throws IOException {
        int bytes = rowCount * PackedRows.bytesPerRow(widthPx);
        if (packed.length < bytes) {
            packed = new byte[bytes];
        }
        PackedRows.pack(rows, rowCount, widthPx, packed, 0);
        file.write(packed, 0, bytes);
        bytesDone += bytes;
    }

    /** T.6 makes the bits longer: what was coded is decoded again and goes on plain. */
    private void turnPlain() throws IOException {
        carried.pad();
        carried.drainTo(file);
        List<Strip> codedStrips = new ArrayList<>(strips);
        if (stripRows > 0) {
            codedStrips.add(new Strip(stripStart, Files.size(file.written()) - stripStart, stripRows));
        }
        packing = BitPacking.PLAIN;
        t6TooLong = true;
        strips.clear();
        bytesDone = 0;
        stripStart = 0;
        try (OutputFile coded = file) {
            file = OutputFile.open(hidden("plain"), true);
            try (FileChannel channel = FileChannel.open(coded.written(), StandardOpenOption.READ)) {
                for (Strip strip : codedStrips) {
                    eachRow(channel, strip, BitPacking.T6, row -> writePlain(row, 1));
                    if (strip.rows == rowsPerStrip || rowsDone == heightPx) {
                        strips.add(new Strip(stripStart, bytesDone - stripStart, strip.rows));
                        stripStart = bytesDone;
                    }
                }
            }
        }
    }

    /** Something done with a row. */
    private interface RowTaker {
        void take(long[] row) throws IOException;
    }

    private void eachRow(FileChannel channel, Strip strip, BitPacking packed, RowTaker taker) throws IOException {
        long[] row = new long[(widthPx + 63) >> 6];
        try (BitBands rows = new StreamBits(new FileSlice(channel, strip.offset, strip.bytes), widthPx, strip.rows, packed)) {
            while (rows.read(row, 1) > 0) {
                taker.take(row);
            }
        }
    }

    private void deflateIfSmaller(ExecutorService pool, int threads, Work work) throws IOException {
        t6Bytes = bytesDone;
        List<Strip> deflated = new ArrayList<>();
        byte[] bytes = new byte[PackedRows.bytesPerRow(widthPx)];
        long size = 0;
        OutputFile smaller = OutputFile.open(hidden("deflated"), true);
        try (FileChannel channel = FileChannel.open(file.written(), StandardOpenOption.READ)) {
            for (Strip strip : strips) {
                try (ZlibStream stream = new ZlibStream(smaller, pool, threads)) {
                    eachRow(channel, strip, packing, row -> {
                        work.checkpoint();
                        PackedRows.pack(row, 1, widthPx, bytes, 0);
                        stream.write(bytes, bytes.length);
                    });
                    long stripBytes = stream.finish();
                    deflated.add(new Strip(size, stripBytes, strip.rows));
                    size += stripBytes;
                }
            }
        } catch (IOException | RuntimeException e) {
            smaller.close();
            throw e;
        }
        if (size >= bytesDone) {
            smaller.close();
            return;
        }
        file.close();
        file = smaller;
        packing = BitPacking.DEFLATE;
        strips.clear();
        strips.addAll(deflated);
        bytesDone = size;
    }

    private boolean isPlain() {
        return packing == BitPacking.PLAIN;
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
