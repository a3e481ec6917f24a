package saddlebar.model.file;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * A file that becomes visible whole or not at all: written beside its target under a hidden name, synced, renamed over the target, and the
 * folder synced. Closed without {@link #commit()} it leaves the target as it was: absent, or the old file.
 */
public final class PendingFile implements AutoCloseable {
    /** Every hidden name ends so; a left-over of a killed program may be deleted at any time. */
    public static final String SUFFIX = ".pending";

    private final Path target;
    private final Path hidden;
    private final FileChannel channel;
    private final OutputStream out;
    private boolean ended;

    private PendingFile(Path target, Path hidden) throws IOException {
        this.target = target;
        this.hidden = hidden;
        this.channel = FileChannel.open(hidden, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING,
                StandardOpenOption.READ, StandardOpenOption.WRITE);
        this.out = new BufferedOutputStream(Channels.newOutputStream(channel), 1 << 16);
    }

    public static PendingFile beside(Path target) throws IOException {
        Path whole = target.toAbsolutePath();
        Files.createDirectories(whole.getParent());
        try {
            return new PendingFile(whole, whole.resolveSibling("." + whole.getFileName() + "." + ProcessHandle.current().pid() + "-"
                    + Thread.currentThread().getId() + SUFFIX));
        } catch (FileSystemException e) {
            throw namedFor(whole, e);
        }
    }

    /** The same trouble, told of the name that the user knows instead of a hidden one. */
    public static FileSystemException namedFor(Path known, FileSystemException trouble) {
        FileSystemException told = trouble instanceof AccessDeniedException
                ? new AccessDeniedException(known.toString(), null, trouble.getReason())
                : trouble instanceof NoSuchFileException
                        ? new NoSuchFileException(known.toString(), null, trouble.getReason())
                        : new FileSystemException(known.toString(), null, trouble.getReason());
        told.initCause(trouble);
        return told;
    }

    /** Where to write; buffered, so {@link #channel()} sees bytes only after a flush. */
    public OutputStream out() {
        return out;
    }

    /** For writers that go back to fill in offsets. */
    public FileChannel channel() throws IOException {
        out.flush();
        return channel;
    }

    /** Where the bytes lie until the commit, for whoever reads back what was written before it becomes visible; flush {@link #out()} first. */
    public Path hidden() {
        return hidden;
    }

    /** The only moment at which the world sees a change. */
    public void commit() throws IOException {
        out.flush();
        channel.force(true);
        channel.close();
        try {
            Files.move(hidden, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(hidden, target, StandardCopyOption.REPLACE_EXISTING);
        }
        ended = true;
        syncFolder(target.getParent());
    }

    /** A rename lasts only when its folder is on the disk; systems that cannot sync a folder do it by themselves. */
    static void syncFolder(Path folder) {
        try (FileChannel directory = FileChannel.open(folder, StandardOpenOption.READ)) {
            directory.force(true);
        } catch (IOException e) {
            // Windows opens no folder as a file; its rename is already durable
            return;
        }
    }

    @Override
    public void close() throws IOException {
        if (!ended) {
            ended = true;
            try {
                channel.close();
            } finally {
                Files.deleteIfExists(hidden);
            }
        }
    }
}
