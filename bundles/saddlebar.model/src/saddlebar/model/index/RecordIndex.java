package saddlebar.model.index;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import java.util.zip.CRC32C;

import org.h2.mvstore.MVStoreException;

import saddlebar.model.problem.Problem;
import saddlebar.model.store.RecordBook;
import saddlebar.model.store.RecordFileState;
import saddlebar.model.store.RecordLine;
import saddlebar.model.store.RecordReading;
import saddlebar.model.work.Work;

/**
 * Finds records of one folder by what they speak of. The index lies in {@code made/index/}: {@code records.json} says of what it is an index, and the maps
 * (H2 MVStore) are in the file named there. Both are only ever replaced whole, so several programs may read them at once. On opening:
 *
 * <ol>
 * <li>nothing has changed: it is used as it is, once its checksum holds;
 * <li>records were appended: a few are held in memory beside it, many are taken into a copy that then replaces it;
 * <li>it is absent, damaged, of another format, or a record file is not the one that was read: it is built again from all records. Where the folder cannot
 * be written, it is built in memory.
 * </ol>
 *
 * <p>Building reads each record once: O(n). A question costs what it finds. Not closed by anybody else; safe for several threads.
 */
public final class RecordIndex implements AutoCloseable {
    /** Where it lies in a commission's or studio's folder. */
    public static final String FOLDER = "made/index";
    private static final String STAMP = "records.json";
    private static final long MUCH = 1 << 20;
    private static final long LEFT_OVER_MS = 600_000;
    /** What is told of the folder as it is now, at every opening. */
    private static final Set<String> OF_NOW = Set.of("torn-record", "stray-record-file");
    private static final int OPEN_TRIES = 3;

    /** How the index came about. */
    public enum Origin {
        /** It was there and held. */
        KEPT,
        /** It was there; what was appended since is beside it or was added. */
        GROWN,
        /** It was built from all records. */
        BUILT
    }

    private final RecordBook book;
    private final List<IndexPart> parts;
    private final List<Integer> starts = new ArrayList<>();
    private final Map<String, String> superseded = new HashMap<>();
    private final BitSet supersededRows = new BitSet();
    private final List<Problem> problems;
    private final Origin origin;
    private final int size;

    private RecordIndex(RecordBook book, List<IndexPart> parts, List<Problem> problems, Origin origin) {
        this.book = book;
        this.parts = List.copyOf(parts);
        this.problems = List.copyOf(problems);
        this.origin = origin;
        int start = 0;
        for (IndexPart part : parts) {
            starts.add(start);
            start += part.size();
            superseded.putAll(part.superseded());
        }
        size = start;
        for (int i = 0; i < parts.size(); i++) {
            int first = starts.get(i);
            parts.get(i).rowsOf(superseded.keySet()).stream().forEach(row -> supersededRows.set(first + row));
        }
    }

    /**
     * @param folder of the commission or studio
     * @param book   its records
     * @throws IOException if the records cannot be read; that the index cannot be written is no error
     */
    public static RecordIndex open(Path folder, RecordBook book, RecordLens lens, Work work) throws IOException {
        return new Opening(folder.resolve(FOLDER), book, lens, work).open();
    }

    /** One opening: what is there, what is missing. */
    private record Opening(Path place, RecordBook book, RecordLens lens, Work work) {
        RecordIndex open() throws IOException {
            Optional<IndexStamp> stamp = Optional.empty();
            for (int tries = 0; tries < OPEN_TRIES; tries++) { // another program may replace it while we look
                stamp = IndexStamp.read(place.resolve(STAMP));
                if (stamp.isEmpty() || !holds(stamp.get())) {
                    break;
                }
                try {
                    return use(stamp.get());
                } catch (MVStoreException | NoSuchFileException e) {
                    continue;
                }
            }
            return build(stamp.map(IndexStamp::data));
        }

        private boolean holds(IndexStamp stamp) throws IOException {
            if (stamp.format() != IndexStamp.FORMAT || !stamp.lens().equals(lens.version())) {
                return false;
            }
            Map<String, RecordFileState> now = book.fileStates();
            for (Map.Entry<String, RecordFileState> read : stamp.files().entrySet()) {
                RecordFileState file = now.get(read.getKey());
                RecordFileState then = read.getValue();
                if (file == null || !book.holdsAt(read.getKey(), then.wholeBytes(), then.lastSha256())
                        || file.wholeBytes() == then.wholeBytes() && file.modifiedMs() != then.modifiedMs()) {
                    return false;
                }
            }
            Path data = place.resolve(stamp.data());
            return data.getParent().equals(place) && Files.isRegularFile(data) && Files.size(data) == stamp.size() && crc32c(data) == stamp.crc32c();
        }

        private RecordIndex use(IndexStamp stamp) throws IOException {
            long more = 0;
            Map<String, Long> ends = new HashMap<>();
            for (Map.Entry<String, RecordFileState> file : book.fileStates().entrySet()) {
                RecordFileState then = stamp.files().get(file.getKey());
                long read = then == null ? 0 : then.wholeBytes();
                more += file.getValue().wholeBytes() - read;
                ends.put(file.getKey(), read);
            }
            if (more > MUCH) {
                return extend(stamp, ends);
            }
            List<Problem> problems = new ArrayList<>(stamp.problems());
            List<IndexPart> parts = new ArrayList<>();
            boolean done = false;
            try (RecordReading reading = book.readAfter(ends)) {
                parts.add(IndexPart.reading(place.resolve(stamp.data())));
                IndexPart tail = IndexPart.inMemory();
                parts.add(tail);
                tail.take(reading, lens, work);
                problems.addAll(reading.problems());
                if (tail.size() == 0) {
                    parts.remove(tail);
                    tail.close();
                }
                done = true;
                return new RecordIndex(book, parts, distinct(problems), parts.size() > 1 ? Origin.GROWN : Origin.KEPT);
            } finally {
                if (!done) {
                    parts.forEach(IndexPart::close);
                }
            }
        }

        private RecordIndex extend(IndexStamp stamp, Map<String, Long> ends) throws IOException {
            try {
                Path draft = draft();
                try {
                    Files.copy(place.resolve(stamp.data()), draft, StandardCopyOption.REPLACE_EXISTING);
                    try (RecordReading reading = book.readAfter(ends)) {
                        return write(draft, reading, stamp.problems(), Optional.of(stamp.data()), Origin.GROWN);
                    }
                } finally {
                    Files.deleteIfExists(draft);
                }
            } catch (IOException e) {
                return build(Optional.of(stamp.data()));
            }
        }

        private RecordIndex build(Optional<String> replaced) throws IOException {
            Optional<Path> draft = Optional.empty();
            try {
                Files.createDirectories(place);
                draft = Optional.of(draft());
                Files.deleteIfExists(draft.get());
                try (RecordReading reading = book.read()) {
                    return write(draft.get(), reading, List.of(), replaced, Origin.BUILT);
                }
            } catch (IOException | MVStoreException cannotWrite) {
                return inMemory(); // a folder that cannot be written, or a full disk, still answers; unreadable records throw again there
            } finally {
                if (draft.isPresent()) {
                    Files.deleteIfExists(draft.get());
                }
            }
        }

        private RecordIndex inMemory() throws IOException {
            IndexPart part = IndexPart.inMemory();
            boolean done = false;
            try (RecordReading reading = book.read()) {
                part.take(reading, lens, work);
                done = true;
                return new RecordIndex(book, List.of(part), reading.problems(), Origin.BUILT);
            } finally {
                if (!done) {
                    part.close();
                }
            }
        }

        private Path draft() {
            return place.resolve(".index-" + ProcessHandle.current().pid() + "-" + Thread.currentThread().getId() + ".pending");
        }

        private RecordIndex write(Path draft, RecordReading reading, List<Problem> before, Optional<String> replaced, Origin origin) throws IOException {
            Map<String, RecordFileState> atStart = book.fileStates();
            try (IndexPart part = IndexPart.writing(draft)) {
                part.take(reading, lens, work);
            }
            Set<Problem> problems = new LinkedHashSet<>(before);
            problems.addAll(reading.problems());
            long crc32c = crc32c(draft);
            String data = String.format(Locale.ROOT, "records-%08x.mv", crc32c);
            long size = Files.size(draft);
            Files.move(draft, place.resolve(data), StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            Map<String, RecordFileState> read = new HashMap<>();
            for (Map.Entry<String, Long> end : reading.ends().entrySet()) {
                read.put(end.getKey(), asRead(end.getKey(), end.getValue(), atStart.get(end.getKey())));
            }
            List<Problem> kept = problems.stream().filter(problem -> !OF_NOW.contains(problem.code())).toList();
            new IndexStamp(IndexStamp.FORMAT, lens.version(), data, size, crc32c, read, kept).write(place.resolve(STAMP));
            sweep(data, replaced);
            return new RecordIndex(book, List.of(IndexPart.reading(place.resolve(data))), List.copyOf(problems), origin);
        }

        /** What was appended while we read has an end of its own; its time of change is then not the one that we saw. */
        private RecordFileState asRead(String file, long wholeBytes, RecordFileState seen) throws IOException {
            if (seen != null && seen.wholeBytes() == wholeBytes) {
                return seen;
            }
            RecordFileState now = book.fileStates().get(file);
            return now.wholeBytes() == wholeBytes ? now : new RecordFileState(wholeBytes, 0, book.hashBefore(file, wholeBytes));
        }

        /** The file that was replaced, and what killed or beaten builders left long ago; one that another program has just made is not ours to take. */
        private void sweep(String kept, Optional<String> replaced) {
            try (Stream<Path> files = Files.list(place)) {
                long now = System.currentTimeMillis();
                for (Path file : files.toList()) {
                    String name = file.getFileName().toString();
                    boolean ours = name.matches("records-[0-9a-f]{8}\\.mv|\\.index-[0-9-]+\\.pending") && !name.equals(kept);
                    if (ours && (replaced.filter(name::equals).isPresent() || now - Files.getLastModifiedTime(file).toMillis() > LEFT_OVER_MS)) {
                        Files.deleteIfExists(file);
                    }
                }
            } catch (IOException e) {
                // a system that does not let go of an open file: swept another time
                return;
            }
        }
    }

    private static List<Problem> distinct(List<Problem> problems) {
        return List.copyOf(new LinkedHashSet<>(problems));
    }

    private static long crc32c(Path file) throws IOException {
        CRC32C crc = new CRC32C();
        ByteBuffer buffer = ByteBuffer.allocateDirect(1 << 20);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            while (channel.read(buffer) >= 0) {
                crc.update(buffer.flip());
                buffer.clear();
            }
        }
        return crc.getValue();
    }

    public Origin origin() {
        return origin;
    }

    /** Number of records, superseded ones among them. */
    public int size() {
        return size;
    }

    /** What was wrong with the record files when they were read. */
    public List<Problem> problems() {
        return problems;
    }

    /** Where a record stands in the index. */
    public OptionalInt ordinalOf(String recordId) {
        for (int i = parts.size() - 1; i >= 0; i--) {
            OptionalInt row = parts.get(i).rowOf(recordId);
            if (row.isPresent()) {
                return OptionalInt.of(starts.get(i) + row.getAsInt());
            }
        }
        return OptionalInt.empty();
    }

    /** Ordinals of the records that speak so of a thing, ascending; superseded ones among them. */
    public int[] naming(Role role, String thing) {
        if (parts.size() == 1) {
            return parts.get(0).rowsNaming(role, thing);
        }
        int[] base = parts.get(0).rowsNaming(role, thing);
        int[] tail = parts.get(1).rowsNaming(role, thing);
        int[] all = Arrays.copyOf(base, base.length + tail.length);
        for (int i = 0; i < tail.length; i++) {
            all[base.length + i] = starts.get(1) + tail[i];
        }
        return all;
    }

    public IndexedRecord record(int ordinal) {
        int part = part(ordinal);
        IndexedRecord row = parts.get(part).row(ordinal - starts.get(part));
        return new IndexedRecord(ordinal, row.id(), row.time(), row.kind(), row.mentions(), row.measures());
    }

    /** The whole record, from its file. */
    public RecordLine line(int ordinal) throws IOException {
        int part = part(ordinal);
        RowCoding.Place place = parts.get(part).placeOf(ordinal - starts.get(part));
        return book.readAt(place.file(), place.offset(), place.line());
    }

    private int part(int ordinal) {
        Objects.checkIndex(ordinal, size);
        return parts.size() > 1 && ordinal >= starts.get(1) ? 1 : 0;
    }

    /** Whether a later record corrects this one. */
    public boolean isSuperseded(int ordinal) {
        return supersededRows.get(ordinal);
    }

    /** Id of the record that corrects a record. */
    public Optional<String> correctionOf(String recordId) {
        return Optional.ofNullable(superseded.get(recordId));
    }

    /** Every record that stands, in the order of the files; superseded ones are passed over. */
    public void forEach(Consumer<IndexedRecord> consumer) {
        for (int i = 0; i < parts.size(); i++) {
            int first = starts.get(i);
            parts.get(i).forEach(row -> {
                if (!supersededRows.get(first + row.ordinal())) {
                    consumer.accept(
                            first == 0 ? row : new IndexedRecord(first + row.ordinal(), row.id(), row.time(), row.kind(), row.mentions(), row.measures()));
                }
            });
        }
    }

    /** Names of things that begin so, in order, as far as any record speaks of them. */
    public List<String> thingsFrom(String prefix, int most) {
        return parts.stream().flatMap(part -> part.thingsFrom(prefix, most).stream()).sorted().distinct().limit(most).toList();
    }

    @Override
    public void close() {
        parts.forEach(IndexPart::close);
    }
}
