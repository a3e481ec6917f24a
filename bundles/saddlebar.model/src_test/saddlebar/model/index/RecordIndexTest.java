package saddlebar.model.index;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.index.RecordIndex.Origin;
import saddlebar.model.problem.Problem;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.NewCommission;
import saddlebar.model.store.RecordDraft;
import saddlebar.model.store.RecordKind;
import saddlebar.model.store.RecordLine;
import saddlebar.model.store.RecordReading;
import saddlebar.model.store.StudioLibrary;
import saddlebar.model.work.Work;

/** The index answers as the record itself would, whatever happened to it or to the record files. */
class RecordIndexTest {
    private static final RecordLens LENS = new RecordLens() {
        @Override
        public String version() {
            return "test 1";
        }

        @Override
        public List<Mention> mentions(RecordLine line) {
            List<Mention> all = new ArrayList<>();
            line.used().forEach(id -> all.add(new Mention(Role.USED, "id=" + id)));
            line.made().forEach(id -> all.add(new Mention(Role.MADE, "id=" + id)));
            line.settings().forEach((key, value) -> {
                if (value instanceof String word) {
                    all.add(new Mention(Role.ABOUT, key + "=" + word));
                }
            });
            return all;
        }

        @Override
        public Map<String, Double> measures(RecordLine line) {
            Map<String, Double> all = new LinkedHashMap<>();
            line.settings().forEach((key, value) -> {
                if (value instanceof Double number) {
                    all.put(key, number);
                }
            });
            return all;
        }
    };

    @TempDir
    private Path temp;
    private Path folder;
    private int names;
    private final Random chance = new Random(20260314);

    @BeforeEach
    void aCommissionWithRecords() throws IOException {
        folder = temp.resolve("commission");
        StudioLibrary tables = StudioLibrary.of(Path.of("../../shared").toAbsolutePath().normalize());
        try (CommissionFolder made = CommissionFolder.create(folder, NewCommission.titled("Index").stockedFrom(tables))) {
            made.save();
            made.records().append(drafts(300));
        }
    }

    private List<RecordDraft> drafts(int count) {
        List<RecordDraft> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            RecordDraft draft = RecordDraft.of(chance.nextBoolean() ? RecordKind.PULL : RecordKind.MIX).at(Instant.ofEpochSecond(1_700_000_000L - i * 60L))
                    .using(List.of("u" + chance.nextInt(40))).making(chance.nextInt(3) == 0 ? List.of() : List.of("m" + chance.nextInt(40)))
                    .with(Map.of("mix", "M" + chance.nextInt(9), "humidity", chance.nextInt(100) / 100.0));
            all.add(chance.nextInt(5) == 0 ? draft.withId("own-name-" + names++) : draft);
        }
        return all;
    }

    private CommissionFolder read() throws IOException {
        return CommissionFolder.open(folder, saddlebar.model.store.Access.READ);
    }

    private void append(List<RecordDraft> drafts) throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, saddlebar.model.store.Access.WRITE)) {
            open.records().append(drafts);
        }
    }

    /** Opens, compares every answer with one that is read from the files, and tells how the index came about. */
    private Origin holds() throws IOException {
        try (CommissionFolder open = read(); RecordIndex index = RecordIndex.open(open.path(), open.records(), LENS, Work.UNWATCHED)) {
            List<RecordLine> lines;
            List<Problem> problems;
            try (RecordReading reading = open.records().read()) {
                lines = reading.toList();
                problems = reading.problems();
            }
            assertEquals(lines.size(), index.size());
            assertEquals(problems, index.problems());
            Map<Mention, List<String>> byMention = new LinkedHashMap<>();
            for (RecordLine line : lines) {
                int at = index.ordinalOf(line.id()).orElseThrow();
                assertEquals(line, index.line(at));
                IndexedRecord row = index.record(at);
                assertEquals(LENS.mentions(line), row.mentions());
                assertEquals(LENS.measures(line), row.measures());
                assertEquals(line.kind(), row.kind());
                assertEquals(line.time().toEpochMilli(), row.time().toEpochMilli());
                row.mentions().forEach(mention -> byMention.computeIfAbsent(mention, any -> new ArrayList<>()).add(line.id()));
                assertEquals(lines.stream().anyMatch(later -> later.supersedes().contains(line.id())), index.isSuperseded(at));
            }
            byMention.forEach((mention, ids) -> {
                int[] found = index.naming(mention.role(), mention.thing());
                assertEquals(ids.stream().sorted().toList(), Stream.of(java.util.Arrays.stream(found).boxed().toArray(Integer[]::new))
                        .map(ordinal -> index.record(ordinal).id()).sorted().toList());
                assertArrayEquals(java.util.Arrays.stream(found).sorted().toArray(), found);
            });
            assertEquals(Optional.empty(), index.naming(Role.MADE, "mix=M1").length == 0 ? Optional.empty() : Optional.of("only spoken of"));
            List<String> passed = new ArrayList<>();
            index.forEach(row -> passed.add(row.id()));
            assertEquals(lines.stream().map(RecordLine::id).filter(id -> index.correctionOf(id).isEmpty()).sorted().toList(),
                    passed.stream().sorted().toList());
            return index.origin();
        }
    }

    private Path data() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve(RecordIndex.FOLDER))) {
            return files.filter(file -> file.toString().endsWith(".mv")).findFirst().orElseThrow();
        }
    }

    private Path recordFile() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("records"))) {
            return files.filter(file -> file.toString().endsWith(".jsonl")).sorted().findFirst().orElseThrow();
        }
    }

    @Test
    void builtOnceThenKept() throws IOException {
        assertEquals(Origin.BUILT, holds());
        assertEquals(Origin.KEPT, holds());
        assertEquals(2, entries(), "nothing but the stamp and the maps lies there");
    }

    private long entries() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve(RecordIndex.FOLDER))) {
            return files.count();
        }
    }

    @Test
    void growsWithFewAndWithManyRecords() throws IOException {
        holds();
        append(drafts(70));
        assertEquals(Origin.GROWN, holds());
        append(drafts(6000));
        assertEquals(Origin.GROWN, holds(), "taken into a copy");
        assertEquals(Origin.KEPT, holds());
        assertEquals(2, entries());
    }

    @Test
    void aCorrectionStandsForWhatItCorrects() throws IOException {
        holds();
        String first;
        try (CommissionFolder open = read(); RecordReading reading = open.records().read()) {
            first = reading.next().orElseThrow().id();
        }
        append(List.of(RecordDraft.of(RecordKind.MIX).withId("right").superseding(List.of(first))));
        assertEquals(Origin.GROWN, holds());
        try (CommissionFolder open = read(); RecordIndex index = RecordIndex.open(open.path(), open.records(), LENS, Work.UNWATCHED)) {
            assertEquals(Optional.of("right"), index.correctionOf(first));
            assertTrue(index.isSuperseded(index.ordinalOf(first).orElseThrow()), "also when the correction is not yet in the file of the index");
        }
    }

    @Test
    void deletedItIsBuiltAgain() throws IOException {
        holds();
        Files.delete(data());
        assertEquals(Origin.BUILT, holds());
        Files.delete(folder.resolve(RecordIndex.FOLDER).resolve("records.json"));
        assertEquals(Origin.BUILT, holds());
        assertEquals(Origin.KEPT, holds());
    }

    @Test
    void oneTurnedBitAnywhereIsSeen() throws IOException {
        holds();
        byte[] whole = Files.readAllBytes(data());
        for (int tries = 0; tries < 12; tries++) {
            Path data = data();
            byte[] damaged = Files.readAllBytes(data);
            damaged[chance.nextInt(damaged.length)] ^= (byte) (1 << chance.nextInt(8));
            Files.write(data, damaged);
            assertEquals(Origin.BUILT, holds());
        }
        assertTrue(whole.length > 1000);
    }

    @Test
    void cutShortOrFilledWithNonsenseItIsBuiltAgain() throws IOException {
        holds();
        Files.write(data(), new byte[100]);
        assertEquals(Origin.BUILT, holds());
        for (String nonsense : List.of("", "{", "[]", "null", "{\"format\":1}",
                "{\"format\":1,\"lens\":\"test 1\",\"data\":\"../commission.saddlebar\",\"size\":5,"
                        + "\"crc32c\":0,\"files\":{},\"problems\":[]}",
                "{\"format\":1,\"lens\":\"test 1\",\"data\":\"x\",\"files\":{\"a\":null},\"problems\":[null]}")) {
            Files.writeString(folder.resolve(RecordIndex.FOLDER).resolve("records.json"), nonsense);
            assertEquals(Origin.BUILT, holds(), nonsense);
        }
        Files.write(folder.resolve(RecordIndex.FOLDER).resolve("records.json"), new byte[] {(byte) 0xff, (byte) 0xfe, 0});
        assertEquals(Origin.BUILT, holds());
    }

    @Test
    void aChangedPastIsReadAgainAndTold() throws IOException {
        holds();
        Path file = recordFile();
        String text = Files.readString(file);
        int at = text.indexOf("\"mix\":\"M", 20_000) + 8;
        String changed = text.substring(0, at) + (text.charAt(at) == '3' ? '4' : '3') + text.substring(at + 1);
        Files.writeString(file, changed);
        Files.setLastModifiedTime(file, FileTime.from(Instant.now().plusSeconds(5)));
        assertEquals(Origin.BUILT, holds());
        try (CommissionFolder open = read(); RecordIndex index = RecordIndex.open(open.path(), open.records(), LENS, Work.UNWATCHED)) {
            assertEquals(List.of("broken-chain"), index.problems().stream().map(Problem::code).toList());
            assertEquals(Origin.KEPT, index.origin(), "the problem is remembered");
        }
    }

    @Test
    void aFileThatIsGoneOrShorterIsSeen() throws IOException {
        append(drafts(5));
        holds();
        Path file = recordFile();
        byte[] bytes = Files.readAllBytes(file);
        Files.write(file, java.util.Arrays.copyOf(bytes, bytes.length - 400));
        assertEquals(Origin.BUILT, holds());
        Files.delete(file);
        assertEquals(Origin.BUILT, holds());
        Files.write(file, bytes);
        assertEquals(Origin.GROWN, holds(), "as many new records");
    }

    @Test
    void aTornLastLineIsLeftOutUntilItIsWhole() throws IOException {
        holds();
        Files.writeString(recordFile(), "{\"id\":\"half", StandardCharsets.UTF_8, StandardOpenOption.APPEND);
        holds();
        append(drafts(3));
        holds();
    }

    @Test
    void whereNothingCanBeWrittenItAnswersFromMemory() throws IOException {
        Files.createDirectories(folder.resolve("made"));
        Files.writeString(folder.resolve(RecordIndex.FOLDER), "a file where the folder should be");
        assertEquals(Origin.BUILT, holds());
        assertEquals(Origin.BUILT, holds());
        assertFalse(Files.isDirectory(folder.resolve(RecordIndex.FOLDER)));
    }

    @Test
    void whatAKilledProgramLeftHarmsNothing() throws IOException {
        holds();
        Files.write(folder.resolve(RecordIndex.FOLDER).resolve(".index-1-1.pending"), new byte[300]);
        Files.write(folder.resolve(RecordIndex.FOLDER).resolve("records-0badf00d.mv"), new byte[300]);
        for (String left : List.of(".index-1-1.pending", "records-0badf00d.mv")) {
            Files.setLastModifiedTime(folder.resolve(RecordIndex.FOLDER).resolve(left), FileTime.from(Instant.now().minusSeconds(3600)));
        }
        assertEquals(Origin.KEPT, holds());
        append(drafts(6000));
        assertEquals(Origin.GROWN, holds());
        assertEquals(2, entries(), "swept");
    }

    @Test
    void severalReadersAtOnceWhileItIsBuilt() throws IOException {
        List<CompletableFuture<Void>> readers = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            readers.add(CompletableFuture.runAsync(() -> {
                try {
                    holds();
                } catch (IOException e) {
                    throw new java.io.UncheckedIOException(e);
                }
            }));
        }
        readers.forEach(CompletableFuture::join);
        assertEquals(Origin.KEPT, holds());
    }
}
