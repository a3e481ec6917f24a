package saddlebar.model.store;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

import saddlebar.model.file.Hashes;
import saddlebar.model.problem.LockedException;

/** What a commission's and a studio's folder have in common: inner paths, the lock, saving, records. */
final class ModelFolder implements WriteGate, AutoCloseable {
    private static final int TRIES = 40;
    private static final long PAUSE_MS = 50;

    private final InnerPaths paths;
    private final Surroundings surroundings;
    private final Disk disk;
    private final FolderSet set;
    private final boolean writable;
    private final RecordBook records;
    private FolderLock lock;
    private int holds;

    ModelFolder(Path root, FolderSet set, boolean writable, Surroundings surroundings, Disk disk) throws IOException {
        this.paths = new InnerPaths(root);
        this.surroundings = surroundings;
        this.disk = disk;
        this.set = set;
        this.writable = writable;
        this.records = new RecordBook(paths.root().resolve("records"), this, surroundings, disk);
        set.allow(paths);
    }

    InnerPaths paths() {
        return paths;
    }

    Path root() {
        return paths.root();
    }

    RecordBook records() {
        return records;
    }

    boolean isWritable() {
        return writable;
    }

    /** Ends a save that a killed program left, if nobody is saving just now; a reader may do so too, since it loses nothing. */
    void finishSaves() throws IOException {
        SafeSave save = new SafeSave(root(), disk);
        if (save.isUnfinished()) {
            for (int tries = 0; save.isUnfinished(); tries++) {
                try (FolderLock whole = FolderLock.take(root(), surroundings)) {
                    save.finish();
                } catch (FolderLock.HeldElsewhere e) {
                    if (tries >= TRIES) {
                        throw e;
                    }
                    pause();
                }
            }
        }
    }

    /** Copies a file into an inner folder, never over another. */
    BroughtArtwork keep(String inner, Path source) throws IOException {
        try (Hold hold = hold()) {
            hold.requireHeld();
            return new ArtworkFolder(paths.resolve(inner), disk).bring(source);
        }
    }

    /** Waits a moment for somebody who writes as briefly as we do. */
    @Override
    public synchronized Hold hold() throws IOException {
        if (!writable) {
            throw new IllegalStateException(root() + " is open for reading only");
        }
        for (int tries = 0; lock == null; tries++) {
            try {
                take();
            } catch (FolderLock.HeldElsewhere e) {
                if (tries >= TRIES) {
                    throw e;
                }
                pause();
            }
        }
        holds++;
        return new Held();
    }

    /** For as long as the folder is open; does not wait. */
    synchronized Hold holdNow() throws IOException {
        if (lock == null) {
            take();
        }
        holds++;
        return new Held();
    }

    private void take() throws IOException {
        lock = FolderLock.take(root(), surroundings);
        boolean done = false;
        try {
            new SafeSave(root(), disk).finish();
            done = true;
        } finally {
            if (!done) {
                lock.close();
                lock = null;
            }
        }
    }

    private static void pause() throws IOException {
        try {
            Thread.sleep(PAUSE_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new java.io.InterruptedIOException("stopped while waiting for a lock");
        }
    }

    private synchronized void letGo() throws IOException {
        if (--holds == 0 && lock != null) {
            try {
                lock.close();
            } finally {
                lock = null;
            }
        }
    }

    private final class Held implements Hold {
        private boolean open = true;

        @Override
        public void requireHeld() {
            if (!open || lock == null) {
                throw new IllegalStateException("the hold on " + root() + " was let go");
            }
        }

        @Override
        public void close() throws IOException {
            if (open) {
                open = false;
                letGo();
            }
        }
    }

    /**
     * Saves model files of this folder as one step.
     *
     * @param changed what has changed
     * @param removed relative paths of files that go
     * @throws LockedException if a file was changed on the disk by somebody else since it was read; nothing is saved then
     */
    void save(List<ModelResource> changed, List<String> removed) throws IOException {
        if (changed.isEmpty() && removed.isEmpty()) {
            return;
        }
        try (Hold hold = hold()) {
            hold.requireHeld();
            SafeSave save = new SafeSave(root(), disk);
            save.finish();
            SortedMap<String, Optional<byte[]>> files = new TreeMap<>();
            for (ModelResource resource : changed) {
                Path file = Path.of(resource.getURI().toFileString());
                requireUnchanged(file, resource);
                byte[] bytes = bytesOf(resource);
                resource.isTriedAs(Hashes.sha256(bytes));
                files.put(paths.relative(file), Optional.of(bytes));
            }
            removed.forEach(file -> files.put(file, Optional.empty()));
            save.save(files);
            for (ModelResource resource : changed) {
                resource.setModified(false);
                resource.isOnDiskAs(Hashes.sha256(files.get(paths.relative(Path.of(resource.getURI().toFileString()))).get()));
            }
        }
    }

    /** What a save would write; the file stays marked as changed. */
    static byte[] bytesOf(ModelResource resource) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        resource.save(bytes, Map.of());
        resource.setModified(true); // not saved until it is on the disk
        return bytes.toByteArray();
    }

    /** Puts files in place that were written by an earlier session, as one save. */
    void putInPlace(SortedMap<String, Optional<byte[]>> files) throws IOException {
        if (!files.isEmpty()) {
            try (Hold hold = hold()) {
                hold.requireHeld();
                new SafeSave(root(), disk).save(files);
            }
        }
    }

    private void requireUnchanged(Path file, ModelResource resource) throws IOException {
        String now = Files.exists(file) ? Hashes.sha256(file) : "";
        if (!resource.knows(now)) {
            throw new LockedException(file + " was changed by somebody else since it was opened; nothing was saved. Close it without saving, open it"
                    + " again and repeat the change");
        }
    }

    /** The set in which the folder's files are loaded. */
    FolderSet set() {
        return set;
    }

    @Override
    public synchronized void close() throws IOException {
        holds = 0;
        if (lock != null) {
            try {
                lock.close();
            } finally {
                lock = null;
            }
        }
    }
}
