package saddlebar.stencil.code;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;

import saddlebar.model.file.Hashes;
import saddlebar.model.file.PendingFile;
import saddlebar.model.problem.LockedException;
import saddlebar.model.work.Work;
import saddlebar.stencil.BitBands;

/**
 * A pending file whose every failure to write is told as a {@link LockedException} with the target's name, so that it is never taken for a fault
 * of the bits that are being written. Closed without {@link #commit()} it leaves nothing behind.
 */
public final class OutputFile extends OutputStream {
    private final Path target;
    private final PendingFile pending;
    private final OutputStream out;

    private OutputFile(Path target) throws IOException {
        this.target = target;
        this.pending = PendingFile.beside(target);
        this.out = pending.out();
    }

    /** @throws LockedException if the target is a folder, exists and may not be replaced, or its folder cannot be written */
    public static OutputFile open(Path target, boolean replace) throws LockedException {
        if (Files.isDirectory(target)) {
            throw new LockedException(target + " is a folder; name a file in it");
        }
        if (!replace && Files.exists(target)) {
            throw new LockedException(target + " exists already; choose another name or allow that it is replaced");
        }
        try {
            return new OutputFile(target);
        } catch (IOException e) {
            throw told(target, e);
        }
    }

    @Override
    public void write(int oneByte) throws LockedException {
        try {
            out.write(oneByte);
        } catch (IOException e) {
            throw told(target, e);
        }
    }

    @Override
    public void write(byte[] bytes, int offset, int length) throws LockedException {
        try {
            out.write(bytes, offset, length);
        } catch (IOException e) {
            throw told(target, e);
        }
    }

    @Override
    public void flush() throws LockedException {
        try {
            out.flush();
        } catch (IOException e) {
            throw told(target, e);
        }
    }

    /** Where the bytes are now, all of them; for whoever reads back before the commit. */
    public Path written() throws LockedException {
        flush();
        return pending.hidden();
    }

    /**
     * Makes the file visible if the bits read back from it have the hash of those that were to be written. The time is mostly that of decoding,
     * and the bits are looked at by the reader that others will use.
     *
     * @param readBack the rows of the file as it lies at {@link #written()}, from the first; closed by this
     */
    WrittenBits commitIfSame(String sha256OfBits, BitBands readBack, String compression, String choice, Work work) throws IOException {
        String read = BitsHash.of(readBack, work);
        if (!read.equals(sha256OfBits)) {
            throw new LockedException(target + " reads back other bits than were written; nothing was changed; check the disk");
        }
        String sha256OfFile = Hashes.sha256(written());
        long bytes = Files.size(written());
        commit();
        return new WrittenBits(target, sha256OfFile, read, bytes, readBack.widthPx(), readBack.heightPx(), compression, choice);
    }

    /** The only moment at which the world sees a change. */
    public void commit() throws LockedException {
        try {
            pending.commit();
        } catch (IOException e) {
            throw told(target, e);
        }
    }

    @Override
    public void close() throws IOException {
        pending.close();
    }

    private static LockedException told(Path target, IOException cause) {
        String reason = cause instanceof FileSystemException system && system.getReason() != null ? system.getReason() : cause.getMessage();
        return new LockedException(target + " cannot be written (" + cause.getClass().getSimpleName() + ": " + reason
                + "); nothing was changed; free space or choose another place", cause);
    }
}
