package saddlebar.model.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

import saddlebar.model.file.Hashes;
import saddlebar.model.problem.Refusal;

/**
 * Edits that were made but not saved, laid aside in {@code .unsaved} of a commission's folder so that they outlive the program. Each changed
 * model file lies there whole, named by its hash; the list of them is renamed into place last, so that what was laid aside before stays good
 * until then. A save and an orderly end remove it; what is found at opening is what a program that died had not saved.
 */
public final class UnsavedWork {
    static final String FOLDER = ".unsaved";

    private static final String LIST = "list.json";
    private static final String PENDING = LIST + ".pending";
    private static final String PART = ".part";

    /**
     * One changed file.
     *
     * @param file     its relative path with {@code /}
     * @param ofStudio whether that path begins at the studio's folder, not the commission's
     * @param base     hash of the file as the edits found it; empty if it did not exist
     * @param sha256   hash of it with the edits; empty if it goes
     */
    record Change(String file, boolean ofStudio, String base, String sha256) {
    }

    /** What is to be laid aside, taken from the model in one moment; writing it needs the model no more. */
    public static final class Snapshot {
        private final Path folder;
        private final Disk disk;
        private final Instant at;
        private final List<Change> changes;
        private final Map<String, byte[]> bytes;

        Snapshot(Path root, Disk disk, Instant at, List<Change> changes, Map<String, byte[]> bytes) {
            this.folder = root.resolve(FOLDER);
            this.disk = disk;
            this.at = at;
            this.changes = List.copyOf(changes);
            this.bytes = Map.copyOf(bytes);
        }

        public boolean isEmpty() {
            return changes.isEmpty();
        }

        /** Lays it aside in place of what lay there; nothing laid aside before is lost if this fails. */
        public void write() throws IOException {
            disk.createFolders(folder);
            Set<String> kept = new HashSet<>(Set.of(LIST));
            List<Object> list = new ArrayList<>();
            for (Change change : changes) {
                Map<String, Object> entry = new LinkedHashMap<>();
                entry.put("file", change.file());
                entry.put("ofStudio", change.ofStudio());
                entry.put("base", change.base());
                entry.put("sha256", change.sha256());
                list.add(entry);
                if (!change.sha256().isEmpty()) {
                    Path part = folder.resolve(change.sha256() + PART);
                    kept.add(part.getFileName().toString());
                    disk.write(part, bytes.get(change.sha256()));
                    disk.sync(part);
                }
            }
            Map<String, Object> whole = new LinkedHashMap<>();
            whole.put("at", at.toString());
            whole.put("files", list);
            disk.write(folder.resolve(PENDING), Json.write(whole).getBytes(StandardCharsets.UTF_8));
            disk.sync(folder.resolve(PENDING));
            disk.syncFolder(folder);
            disk.rename(folder.resolve(PENDING), folder.resolve(LIST));
            disk.syncFolder(folder);
            for (Path file : inside(folder)) {
                if (!kept.contains(file.getFileName().toString())) {
                    disk.delete(file);
                }
            }
        }
    }

    private final Path commission;
    private final Path folder;
    private final Instant at;
    private final List<Change> changes;

    private UnsavedWork(Path commission, Instant at, List<Change> changes) {
        this.commission = commission;
        this.folder = commission.resolve(FOLDER);
        this.at = at;
        this.changes = changes;
    }

    /**
     * What lies aside in a commission's folder, if it is whole; a list that a crash tore is as good as none.
     *
     * @throws Refusal if the list names a path that leads out of the folder
     */
    static Optional<UnsavedWork> in(Path commission) throws IOException {
        Path list = commission.resolve(FOLDER).resolve(LIST);
        if (!Files.isRegularFile(list)) {
            return Optional.empty();
        }
        try {
            if (Json.read(Files.readString(list, StandardCharsets.UTF_8)) instanceof Map<?, ?> whole && whole.get("at") instanceof String at
                    && whole.get("files") instanceof List<?> files) {
                List<Change> changes = new ArrayList<>();
                for (Object file : files) {
                    changes.add(change(file));
                }
                UnsavedWork found = new UnsavedWork(commission, Instant.parse(at), List.copyOf(changes));
                return found.isWhole() ? Optional.of(found) : Optional.empty();
            }
        } catch (IOException | DateTimeException | IllegalArgumentException e) {
            return Optional.empty();
        }
        return Optional.empty();
    }

    private static Change change(Object entry) {
        if (entry instanceof Map<?, ?> map && map.get("file") instanceof String file && map.get("ofStudio") instanceof Boolean ofStudio
                && map.get("base") instanceof String base && map.get("sha256") instanceof String sha256) {
            return new Change(file, ofStudio, base, sha256);
        }
        throw new IllegalArgumentException("no change: " + entry);
    }

    private boolean isWhole() throws IOException {
        for (Change change : changes) {
            Path part = folder.resolve(change.sha256() + PART);
            if (!change.sha256().isEmpty() && !(Files.isRegularFile(part) && change.sha256().equals(Hashes.sha256(part)))) {
                return false;
            }
        }
        return !changes.isEmpty();
    }

    /** When it was laid aside. */
    public Instant at() {
        return at;
    }

    /** The files that it would change, by relative path. */
    public List<String> files() {
        return changes.stream().map(Change::file).toList();
    }

    /** Whether every file is still as the edits found it; if not, taking the edits up would undo what was saved since. */
    boolean fits(Path studio) throws IOException {
        for (Change change : changes) {
            Path file = new InnerPaths(change.ofStudio() ? studio : commission).resolve(change.file());
            if (!change.base().equals(Files.exists(file) ? Hashes.sha256(file) : "")) {
                return false;
            }
        }
        return true;
    }

    /** The new bytes of the changed files of the studio or of the commission. */
    SortedMap<String, Optional<byte[]>> filesOf(boolean ofStudio) throws IOException {
        SortedMap<String, Optional<byte[]>> files = new TreeMap<>();
        for (Change change : changes) {
            if (change.ofStudio() == ofStudio) {
                files.put(change.file(), change.sha256().isEmpty()
                        ? Optional.empty()
                        : Optional.of(Files.readAllBytes(folder.resolve(change.sha256() + PART))));
            }
        }
        return files;
    }

    /** Removes what lies aside in a commission's folder; the list first, so that no half of it is ever found. */
    static void remove(Path commission, Disk disk) throws IOException {
        Path folder = commission.resolve(FOLDER);
        if (Files.isDirectory(folder)) {
            disk.delete(folder.resolve(LIST));
            disk.syncFolder(folder);
            for (Path file : inside(folder)) {
                disk.delete(file);
            }
            disk.delete(folder);
        }
    }

    private static List<Path> inside(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }
}
