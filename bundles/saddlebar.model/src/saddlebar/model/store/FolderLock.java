package saddlebar.model.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import saddlebar.model.problem.LockedException;

/**
 * The right to write in a folder. The file {@code .lock} says who holds it; what counts is the operating system's lock on it, which ends
 * with the process however that ends, so that nobody is ever stranded by a crash. Where a disk has no such locks (some network disks), the
 * words in the file count: the same machine's dead process no longer holds it.
 */
final class FolderLock implements AutoCloseable {
    static final String FILE = ".lock";

    /** Beyond the words, so that others can read those on systems where a locked part cannot be read. */
    private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

    /** Somebody else is writing; they may be done in a moment. */
    static final class HeldElsewhere extends LockedException {
        private static final long serialVersionUID = 1;

        HeldElsewhere(String message) {
            super(message);
        }
    }

    /**
     * What this process holds. It belongs to the process because the system's locks do: closing any channel on a file gives up the whole process's
     * locks on it, so a folder that we hold already must never be opened a second time to find out.
     */
    private static final Map<Path, String> HELD = new ConcurrentHashMap<>();

    private final Path folder;
    private final Path key;
    private FileChannel channel;
    private FileLock lock; // none where the disk has no locks

    private FolderLock(Path folder, Path key, String mine, Surroundings surroundings) throws IOException {
        this.folder = folder;
        this.key = key;
        boolean done = false;
        try {
            channel = open(folder, key);
            lock(surroundings);
            channel.truncate(0);
            channel.write(ByteBuffer.wrap(mine.getBytes(StandardCharsets.UTF_8)), 0);
            done = true;
        } finally {
            if (!done) {
                try {
                    if (channel != null) {
                        channel.close();
                    }
                } finally {
                    HELD.remove(key);
                }
            }
        }
    }

    /** @throws LockedException naming who holds the folder, or that it cannot be written */
    static FolderLock take(Path folder, Surroundings surroundings) throws IOException {
        Path key = folder.toRealPath().resolve(FILE);
        String mine = words(surroundings);
        String other = HELD.putIfAbsent(key, mine);
        if (other != null) {
            throw held(folder, other);
        }
        return new FolderLock(folder, key, mine, surroundings);
    }

    private static FileChannel open(Path folder, Path file) throws LockedException {
        try {
            return FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE,
                    LinkOption.NOFOLLOW_LINKS);
        } catch (IOException e) {
            throw new LockedException(folder + " cannot be written (" + e.getMessage()
                    + "); look at its rights and at the disk, or open it for reading", e);
        }
    }

    private void lock(Surroundings surroundings) throws IOException {
        try {
            lock = channel.tryLock(LOCKED_BYTE, 1, false);
        } catch (IOException noLocks) {
            requireDead(folder, read(channel), surroundings);
            return;
        }
        if (lock == null) {
            throw held(folder, read(channel));
        }
    }

    /** Without locks of the system: only a process of this machine can be proved dead. */
    static void requireDead(Path folder, String words, Surroundings surroundings) throws LockedException {
        if (words.isBlank()) {
            return;
        }
        try {
            if (Json.read(words) instanceof Map<?, ?> holder && surroundings.host().equals(holder.get("host"))
                    && holder.get("pid") instanceof Long pid && !surroundings.runs(pid)) {
                return;
            }
        } catch (IOException e) {
            throw new LockedException(folder + " is locked, and its file " + FILE
                    + " cannot be understood; if nobody works on it, delete that file", e);
        }
        throw held(folder, words);
    }

    private static HeldElsewhere held(Path folder, String words) {
        String who = "another program";
        try {
            if (Json.read(words) instanceof Map<?, ?> holder) {
                who = holder.get("user") + " on " + holder.get("host") + " (process " + holder.get("pid") + ", since " + holder.get("since") + ")";
            }
        } catch (IOException e) {
            who = "another program that has not yet said its name"; // between its lock and its words
        }
        return new HeldElsewhere(folder + " is being written by " + who + "; wait until it is closed there, or open it for reading");
    }

    private static String read(FileChannel channel) throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(4096);
        while (buffer.hasRemaining() && channel.read(buffer, buffer.position()) > 0) {
            // until full or at the end
        }
        return new String(buffer.array(), 0, buffer.position(), StandardCharsets.UTF_8);
    }

    private static String words(Surroundings surroundings) {
        Map<String, Object> words = new LinkedHashMap<>();
        words.put("user", surroundings.user());
        words.put("host", surroundings.host());
        words.put("pid", surroundings.pid());
        words.put("since", surroundings.now().toString());
        return Json.write(words);
    }

    /** Gives the folder up. The file stays, empty: deleting it could take it from under somebody who has just opened it. */
    @Override
    public void close() throws IOException {
        try {
            if (channel.isOpen()) {
                channel.truncate(0);
                if (lock != null) {
                    lock.release();
                }
                channel.close();
            }
        } finally {
            HELD.remove(key);
        }
    }
}
