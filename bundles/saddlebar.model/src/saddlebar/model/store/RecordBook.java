package saddlebar.model.store;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import saddlebar.model.file.Hashes;
import saddlebar.model.store.RecordFiles.RecordFile;
import saddlebar.model.store.RecordFiles.Tail;

/**
 * The making record of a folder: what happened, in the order in which it was told, never changed. A record is confirmed when {@code append}
 * returns: it is then on the disk. Each writer (a user on a machine) has a chain of its own, in which every line holds the hash of the line
 * before it; so folders that two desks have written can be merged by taking both sets of files.
 *
 * <p>Reading needs no lock and holds no record in memory. Appending takes the folder's lock for that moment, unless it is held already.
 */
public final class RecordBook {
    private final Path folder;
    private final RecordFiles files;
    private final String writer;
    private final WriteGate gate;
    private final Surroundings surroundings;
    private final Disk disk;
    private ChainEnd end;

    RecordBook(Path folder, WriteGate gate, Surroundings surroundings, Disk disk) {
        this.folder = folder;
        this.files = new RecordFiles(folder);
        this.writer = RecordFiles.writer(surroundings.user(), surroundings.host());
        this.gate = gate;
        this.surroundings = surroundings;
        this.disk = disk;
    }

    /** The name of the chain that this user on this machine appends to. */
    public String writer() {
        return writer;
    }

    public Path folder() {
        return folder;
    }

    public RecordLine append(RecordDraft draft) throws IOException {
        return append(List.of(draft)).get(0);
    }

    /**
     * Appends many with one sync. If the program is killed within, the first of them may be there and the rest not; if the call fails, none is.
     *
     * @return the records as they stand, in the order of the drafts
     */
    public synchronized List<RecordLine> append(List<RecordDraft> drafts) throws IOException {
        if (drafts.isEmpty()) {
            return List.of();
        }
        try (WriteGate.Hold hold = gate.hold()) {
            hold.requireHeld();
            return appendHeld(drafts);
        }
    }

    private List<RecordLine> appendHeld(List<RecordDraft> drafts) throws IOException {
        Instant written = surroundings.now();
        YearMonth month = YearMonth.from(written.atZone(ZoneOffset.UTC));
        Optional<RecordFile> last = files.last(writer);
        if (last.isPresent() && last.get().month().isAfter(month)) {
            month = last.get().month(); // a clock that was set back must not begin a month before the chain's end
        }
        RecordFile file = files.file(month, writer);
        if (end == null || !end.stillHolds(last)) {
            end = endOf(last);
        }
        boolean goesOn = end.file().equals(file.path());
        boolean isNew = !goesOn && !Files.exists(file.path());
        long start = goesOn ? end.size() : 0;
        int number = goesOn ? end.lines() : 0;
        String prev = end.sha256();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        List<RecordLine> lines = new ArrayList<>();
        for (RecordDraft draft : drafts) {
            String text = RecordLine.text(draft.id().orElseGet(surroundings::newId), written, writer, prev, draft,
                    draft.who().orElseGet(surroundings::user));
            byte[] line = text.getBytes(StandardCharsets.UTF_8);
            prev = Hashes.sha256(line);
            lines.add(RecordLine.parse(text, prev, file.name(), ++number, start + bytes.size()));
            bytes.writeBytes(line);
            bytes.write('\n');
        }
        end = null; // unknown, should the writing fail
        write(file.path(), isNew, start, bytes.toByteArray());
        end = new ChainEnd(file.path(), start + bytes.size(), number, prev);
        return List.copyOf(lines);
    }

    private void write(Path file, boolean isNew, long start, byte[] bytes) throws IOException {
        if (!Files.isDirectory(folder)) {
            disk.createFolders(folder);
            disk.syncFolder(folder.toAbsolutePath().getParent());
        }
        try {
            disk.append(file, bytes);
            disk.sync(file);
            if (isNew) {
                disk.syncFolder(folder);
            }
        } catch (IOException | RuntimeException e) {
            takeBack(file, start, e);
            throw e;
        }
    }

    /** What was not confirmed should not be there either. If even this fails, the torn line is told by whoever reads next. */
    private void takeBack(Path file, long start, Exception failure) {
        try {
            if (Files.exists(file)) {
                disk.truncate(file, start);
                disk.sync(file);
            }
        } catch (IOException e) {
            failure.addSuppressed(e);
        }
    }

    /** Where the writer's chain ends; a torn line behind it is put into a file of its own first. */
    private ChainEnd endOf(Optional<RecordFile> last) throws IOException {
        if (last.isEmpty()) {
            return new ChainEnd(folder, 0, 0, RecordLine.NO_PREV);
        }
        Path path = last.get().path();
        Tail tail = RecordFiles.tail(path);
        if (tail.wholeLines() < tail.size()) {
            setAside(last.get(), tail);
        }
        String sha256 = tail.lastSha256().isPresent() ? tail.lastSha256().get() : files.lastSha256Before(last.get().month(), writer);
        try (FileChannel channel = FileChannel.open(path, StandardOpenOption.READ)) {
            return new ChainEnd(path, tail.wholeLines(), RecordFiles.lines(channel, tail.wholeLines()), sha256);
        }
    }

    /** Remembered from one append to the next, so that appending costs the same in a file of any length. */
    private record ChainEnd(Path file, long size, int lines, String sha256) {
        boolean stillHolds(Optional<RecordFile> last) throws IOException {
            return last.isPresent() && last.get().path().equals(file) && Files.size(file) == size;
        }
    }

    private void setAside(RecordFile file, Tail tail) throws IOException {
        ByteBuffer torn = ByteBuffer.allocate(Math.toIntExact(tail.size() - tail.wholeLines()));
        try (FileChannel channel = FileChannel.open(file.path(), StandardOpenOption.READ)) {
            RecordFiles.readFully(channel, torn, tail.wholeLines());
        }
        Path aside;
        int number = 1;
        do {
            aside = folder.resolve(file.month() + "." + file.writer() + ".torn-" + number++ + ".txt");
        } while (Files.exists(aside));
        disk.write(aside, torn.array());
        disk.sync(aside);
        disk.syncFolder(folder);
        disk.truncate(file.path(), tail.wholeLines());
        disk.sync(file.path());
    }

    /** The months that hold records of any writer, in order. */
    public List<YearMonth> months() throws IOException {
        return files.all().stream().map(RecordFile::month).distinct().sorted().toList();
    }

    /** All records, file by file: by month, then writer, each in the order in which it was written. */
    public RecordReading read() throws IOException {
        return new RecordReading(files, files.all(), Map.of());
    }

    /** The records of some months; the chains are checked within them and against the line before them. */
    public RecordReading read(YearMonth from, YearMonth to) throws IOException {
        return new RecordReading(files, files.all().stream().filter(file -> !file.month().isBefore(from) && !file.month().isAfter(to)).toList(), Map.of());
    }

    /**
     * What was appended since an earlier reading.
     *
     * @param ends bytes already read of each file, as {@link RecordReading#ends()} told them
     */
    public RecordReading readAfter(Map<String, Long> ends) throws IOException {
        return new RecordReading(files, files.all(), ends);
    }

    /** Each record file by name, as it stands now. */
    public Map<String, RecordFileState> fileStates() throws IOException {
        Map<String, RecordFileState> states = new TreeMap<>();
        for (RecordFile file : files.all()) {
            Tail tail = RecordFiles.tail(file.path());
            states.put(file.name(), new RecordFileState(tail.wholeLines(), Files.getLastModifiedTime(file.path()).toMillis(), tail.lastSha256().orElse("")));
        }
        return states;
    }

    /** Whether a file still ends with this line at this place, however much was appended since. */
    public boolean holdsAt(String file, long wholeBytes, String lastSha256) throws IOException {
        Path path = folder.resolve(file);
        if (!Files.isRegularFile(path) || Files.size(path) < wholeBytes) {
            return false;
        }
        try (FileChannel channel = FileChannel.open(path, StandardOpenOption.READ)) {
            Tail tail = RecordFiles.tail(channel, wholeBytes);
            return tail.wholeLines() == wholeBytes && tail.lastSha256().orElse("").equals(lastSha256);
        }
    }

    /** Hash of the last whole line within the first bytes of a file; empty if there is none. */
    public String hashBefore(String file, long wholeBytes) throws IOException {
        try (FileChannel channel = FileChannel.open(folder.resolve(file), StandardOpenOption.READ)) {
            return RecordFiles.tail(channel, wholeBytes).lastSha256().orElse("");
        }
    }

    /**
     * The record that stands at a place, as an index remembers it.
     *
     * @param file   name of a record file
     * @param offset where its line starts, in bytes
     * @param line   number of the line
     * @throws IOException if no whole record stands there
     */
    public RecordLine readAt(String file, long offset, int line) throws IOException {
        try (FileChannel channel = FileChannel.open(folder.resolve(file), StandardOpenOption.READ)) {
            byte[] bytes = RecordFiles.lineAt(channel, offset);
            return RecordLine.parse(new String(bytes, StandardCharsets.UTF_8), Hashes.sha256(bytes), file, line, offset);
        }
    }
}
