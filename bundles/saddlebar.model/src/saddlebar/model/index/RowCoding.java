package saddlebar.model.index;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.IntFunction;
import java.util.function.ToIntFunction;

import saddlebar.model.store.RecordLine;

/**
 * One row of the index as bytes: id (a UUID in 16 bytes, another one as text), time in ms, kind, file, place and line in it, mentions, measures. Words are
 * numbers of the part's list of words.
 */
final class RowCoding {
    private static final int UUID_BYTES = 16;

    private RowCoding() {
    }

    /** Where a record's line stands. */
    record Place(String file, long offset, int line) {
    }

    static void write(Varints to, RecordLine line, List<Mention> mentions, Map<String, Double> measures, ToIntFunction<String> numberOf) {
        byte[] id = idBytes(line.id());
        to.add(id.length);
        to.addBytes(id);
        to.addSigned(line.time().toEpochMilli());
        to.add(numberOf.applyAsInt(line.kind()));
        to.add(numberOf.applyAsInt(line.file()));
        to.add(line.offset());
        to.add(line.line());
        to.add(mentions.size());
        for (Mention mention : mentions) {
            to.add((long) numberOf.applyAsInt(mention.thing()) << 2 | mention.role().ordinal());
        }
        to.add(measures.size());
        measures.forEach((name, value) -> {
            to.add(numberOf.applyAsInt(name));
            to.addDouble(value);
        });
    }

    private static byte[] idBytes(String id) {
        if (id.length() == 36) {
            try {
                UUID uuid = UUID.fromString(id);
                if (uuid.toString().equals(id)) {
                    return ByteBuffer.allocate(UUID_BYTES).putLong(uuid.getMostSignificantBits()).putLong(uuid.getLeastSignificantBits()).array();
                }
            } catch (IllegalArgumentException e) {
                // no UUID: kept as text below
            }
        }
        byte[] text = id.getBytes(StandardCharsets.UTF_8);
        return text.length == UUID_BYTES ? (id + "\u0000").getBytes(StandardCharsets.UTF_8) : text; // must not be taken for a UUID
    }

    private static String id(byte[] bytes) {
        if (bytes.length == UUID_BYTES) {
            ByteBuffer uuid = ByteBuffer.wrap(bytes);
            return new UUID(uuid.getLong(), uuid.getLong()).toString();
        }
        String text = new String(bytes, StandardCharsets.UTF_8);
        return text.endsWith("\u0000") ? text.substring(0, text.length() - 1) : text;
    }

    static IndexedRecord read(ByteBuffer row, int ordinal, IntFunction<String> wordOf) {
        String id = readId(row);
        Instant time = Instant.ofEpochMilli(Varints.readSigned(row));
        String kind = wordOf.apply((int) Varints.read(row));
        readPlace(row, wordOf);
        int count = (int) Varints.read(row);
        List<Mention> mentions = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            long coded = Varints.read(row);
            mentions.add(new Mention(ROLES[(int) (coded & 3)], wordOf.apply((int) (coded >> 2))));
        }
        int numbers = (int) Varints.read(row);
        Map<String, Double> measures = numbers == 0 ? Map.of() : new LinkedHashMap<>();
        for (int i = 0; i < numbers; i++) {
            measures.put(wordOf.apply((int) Varints.read(row)), row.getDouble());
        }
        return new IndexedRecord(ordinal, id, time, kind, mentions, measures);
    }

    static Place place(ByteBuffer row, IntFunction<String> wordOf) {
        readId(row);
        Varints.readSigned(row);
        Varints.read(row);
        return readPlace(row, wordOf);
    }

    private static String readId(ByteBuffer row) {
        byte[] id = new byte[(int) Varints.read(row)];
        row.get(id);
        return id(id);
    }

    private static Place readPlace(ByteBuffer row, IntFunction<String> wordOf) {
        return new Place(wordOf.apply((int) Varints.read(row)), Varints.read(row), (int) Varints.read(row));
    }

    private static final Role[] ROLES = Role.values();
}
