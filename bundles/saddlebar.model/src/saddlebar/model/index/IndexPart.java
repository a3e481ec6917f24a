package saddlebar.model.index;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;

import org.h2.mvstore.MVMap;
import org.h2.mvstore.MVStore;

import saddlebar.model.store.RecordLine;
import saddlebar.model.store.RecordReading;
import saddlebar.model.work.Work;

/**
 * Rows and lists of one run of records, in a file or in memory. Maps: {@code words} (word to number) and {@code names} (back), {@code ids} (record id to
 * row), {@code rows} (64 rows a block), {@code lists} (word, role and batch to ascending row numbers), {@code superseded} (record id to the id that corrects
 * it). Taking a million records needs memory for one batch and the words.
 */
final class IndexPart implements AutoCloseable {
    private static final int BLOCK = 64;
    private static final int BATCH = 1 << 17;
    private static final int CACHE_MB = 32;
    private static final String WORD_COUNT = "\u0000words";
    private static final String ROW_COUNT = "\u0000rows";
    private static final String BATCH_COUNT = "\u0000batches";

    private final MVStore store;
    private final MVMap<String, Integer> words;
    private final MVMap<Integer, String> names;
    private final MVMap<String, Integer> ids;
    private final MVMap<Integer, byte[]> rows;
    private final MVMap<Long, byte[]> lists;
    private final MVMap<String, String> superseded;
    private final MVMap<String, Integer> counts;
    private final Map<Integer, String> nameCache = new HashMap<>();

    private IndexPart(MVStore store) {
        this.store = store;
        words = store.openMap("words");
        names = store.openMap("names");
        ids = store.openMap("ids");
        rows = store.openMap("rows");
        lists = store.openMap("lists");
        superseded = store.openMap("superseded");
        counts = store.openMap("counts");
    }

    static IndexPart inMemory() {
        return new IndexPart(new MVStore.Builder().autoCommitDisabled().open());
    }

    /** For taking more; nobody else may have the file open. */
    static IndexPart writing(Path file) {
        return new IndexPart(new MVStore.Builder().fileName(file.toString()).autoCommitDisabled().cacheSize(CACHE_MB).open());
    }

    static IndexPart reading(Path file) {
        return new IndexPart(new MVStore.Builder().fileName(file.toString()).readOnly().cacheSize(CACHE_MB).open());
    }

    int size() {
        return counts.getOrDefault(ROW_COUNT, 0);
    }

    /** Takes all that a reading still gives. */
    void take(RecordReading reading, RecordLens lens, Work work) throws IOException {
        Batch batch = new Batch();
        for (Optional<RecordLine> line = reading.next(); line.isPresent(); line = reading.next()) {
            work.checkpoint();
            batch.add(line.get(), lens);
            if (batch.lines == BATCH) {
                batch.write();
            }
        }
        batch.write();
    }

    /** Records that are in memory and not yet in the maps. */
    private final class Batch {
        private final Map<String, Integer> numberOf = new HashMap<>();
        private final Map<Long, Varints> listOf = new HashMap<>();
        private final Map<Long, Integer> lastOf = new HashMap<>();
        private final Map<String, Integer> idOf = new HashMap<>();
        private final Varints row = new Varints();
        private final Varints block = new Varints();
        private int row0 = size();
        private int next = row0;
        private int nextWord = counts.getOrDefault(WORD_COUNT, 0);
        private int lines;

        Batch() {
            if (next % BLOCK != 0) { // a block that was begun goes on
                block.addBytes(rows.get(next / BLOCK));
            }
        }

        void add(RecordLine line, RecordLens lens) {
            List<Mention> mentions = lens.mentions(line);
            RowCoding.write(row, line, mentions, lens.measures(line), this::number);
            block.add(row.size());
            block.addBytes(row.toBytes());
            row.clear();
            for (Mention mention : mentions) {
                long key = key(number(mention.thing()), mention.role(), 0);
                Integer before = lastOf.put(key, next);
                listOf.computeIfAbsent(key, any -> new Varints()).add(before == null ? next : next - before);
            }
            idOf.put(line.id(), next);
            line.supersedes().forEach(id -> superseded.put(id, line.id()));
            next++;
            lines++;
            if (next % BLOCK == 0) {
                rows.put(next / BLOCK - 1, block.toBytes());
                block.clear();
            }
        }

        private int number(String word) {
            return numberOf.computeIfAbsent(word, unknown -> {
                Integer known = words.get(unknown);
                if (known != null) {
                    return known;
                }
                int fresh = nextWord++;
                words.put(unknown, fresh);
                names.append(fresh, unknown);
                return fresh;
            });
        }

        void write() {
            if (lines == 0) {
                return;
            }
            if (next % BLOCK != 0) {
                rows.put(next / BLOCK, block.toBytes());
            }
            int number = counts.getOrDefault(BATCH_COUNT, 0);
            listOf.entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(list -> lists.put(list.getKey() | number, list.getValue().toBytes()));
            idOf.entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(id -> ids.put(id.getKey(), id.getValue()));
            counts.put(BATCH_COUNT, number + 1);
            counts.put(ROW_COUNT, next);
            counts.put(WORD_COUNT, nextWord);
            store.commit();
            listOf.clear();
            lastOf.clear();
            idOf.clear();
            numberOf.clear();
            lines = 0;
        }
    }

    private static long key(int word, Role role, int batch) {
        return (long) word << 34 | (long) role.ordinal() << 32 | batch;
    }

    /** Row of a record; of two with one id the later. */
    OptionalInt rowOf(String recordId) {
        Integer row = ids.get(recordId);
        return row == null ? OptionalInt.empty() : OptionalInt.of(row);
    }

    /** Rows that speak so of a thing, ascending. */
    int[] rowsNaming(Role role, String thing) {
        Integer word = words.get(thing);
        int[] found = new int[8];
        int size = 0;
        if (word != null) {
            long from = key(word, role, 0);
            Iterator<Long> keys = lists.keyIterator(from);
            while (keys.hasNext()) {
                long key = keys.next();
                if (key >> 32 != from >> 32) {
                    break;
                }
                ByteBuffer list = ByteBuffer.wrap(lists.get(key));
                for (int row = 0; list.hasRemaining();) {
                    row += (int) Varints.read(list);
                    if (size == found.length) {
                        found = Arrays.copyOf(found, 2 * size);
                    }
                    found[size++] = row;
                }
            }
        }
        return Arrays.copyOf(found, size);
    }

    IndexedRecord row(int row) {
        return RowCoding.read(rowBytes(row), row, this::name);
    }

    RowCoding.Place placeOf(int row) {
        return RowCoding.place(rowBytes(row), this::name);
    }

    private ByteBuffer rowBytes(int row) {
        ByteBuffer block = ByteBuffer.wrap(rows.get(row / BLOCK));
        for (int skip = row % BLOCK; skip > 0; skip--) {
            int length = (int) Varints.read(block);
            block.position(block.position() + length);
        }
        int length = (int) Varints.read(block);
        return block.slice(block.position(), length);
    }

    private String name(int number) {
        synchronized (nameCache) {
            return nameCache.computeIfAbsent(number, names::get);
        }
    }

    /** Every row in order. */
    void forEach(Consumer<IndexedRecord> consumer) {
        int size = size();
        int row = 0;
        for (int at = 0; row < size; at++) {
            ByteBuffer block = ByteBuffer.wrap(rows.get(at));
            while (block.hasRemaining()) {
                int length = (int) Varints.read(block);
                consumer.accept(RowCoding.read(block.slice(block.position(), length), row++, this::name));
                block.position(block.position() + length);
            }
        }
    }

    /** Words that begin so, in order. */
    List<String> thingsFrom(String prefix, int most) {
        List<String> found = new ArrayList<>();
        for (Iterator<String> keys = words.keyIterator(prefix); keys.hasNext() && found.size() < most;) {
            String word = keys.next();
            if (!word.startsWith(prefix)) {
                break;
            }
            found.add(word);
        }
        return found;
    }

    /** Ids of records that a later one corrects, to the id of that one. */
    Map<String, String> superseded() {
        return Map.copyOf(superseded);
    }

    /** Rows of these records. */
    BitSet rowsOf(Iterable<String> recordIds) {
        BitSet found = new BitSet();
        recordIds.forEach(id -> rowOf(id).ifPresent(found::set));
        return found;
    }

    @Override
    public void close() {
        store.close();
    }
}
