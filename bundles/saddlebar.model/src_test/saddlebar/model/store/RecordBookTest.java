package saddlebar.model.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import saddlebar.model.file.Hashes;
import saddlebar.model.problem.Problem;

class RecordBookTest {
    @TempDir
    Path temp;

    private static final WriteGate OPEN = () -> new WriteGate.Hold() {
        @Override
        public void requireHeld() {
            // a test alone in its folder
        }

        @Override
        public void close() {
            // nothing was taken
        }
    };

    /** No real syncs: they would only wait. */
    private static RecordBook book(Path folder, Desk desk) {
        return new RecordBook(folder, OPEN, desk, new FrailDisk(Long.MAX_VALUE, true));
    }

    private static RecordDraft note(String words) {
        return RecordDraft.of(RecordKind.NOTE).noting(words);
    }

    private static List<RecordLine> all(RecordBook book) throws IOException {
        try (RecordReading reading = book.read()) {
            List<RecordLine> lines = reading.toList();
            assertEquals(List.of(), reading.problems());
            return lines;
        }
    }

    private static List<Problem> problems(RecordBook book) throws IOException {
        try (RecordReading reading = book.read()) {
            reading.toList();
            return reading.problems();
        }
    }

    @Test
    void aLineSaysAllAndHoldsTheHashOfTheLineBefore() throws IOException {
        RecordBook book = book(temp, Desk.ofAnna());
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("peakC", 652.5);
        settings.put("segments", List.of(Map.of("targetC", 650L)));
        RecordLine first = book.append(RecordDraft.of(RecordKind.FIRE).by("Anna").at(Instant.parse("2026-02-27T18:00:00Z"))
                .using(List.of("u1", "u2")).making(List.of("m1")).with(settings).superseding(List.of("old")).noting("door stuck \u2014 \u00fc"));
        RecordLine second = book.append(note("after"));
        List<String> lines = Files.readAllLines(temp.resolve("2026-03.anna-north-desk.jsonl"), StandardCharsets.UTF_8);
        assertEquals("{\"id\":\"" + first.id() + "\",\"time\":\"2026-02-27T18:00:00Z\",\"written\":\"2026-03-01T10:00:00Z\",\"kind\":\"fire\","
                + "\"who\":\"Anna\",\"writer\":\"anna-north-desk\",\"used\":[\"u1\",\"u2\"],\"made\":[\"m1\"],"
                + "\"settings\":{\"peakC\":652.5,\"segments\":[{\"targetC\":650}]},\"supersedes\":[\"old\"],\"note\":\"door stuck \u2014 \u00fc\","
                + "\"prev\":\"" + "0".repeat(64) + "\"}", lines.get(0));
        assertEquals(Hashes.sha256(lines.get(0)), second.prev());
        assertEquals(List.of(first, second), all(book));
        assertEquals("anna", second.who());
        assertEquals(2, second.line());
        assertEquals(lines.get(0).getBytes(StandardCharsets.UTF_8).length + 1, second.offset());
    }

    @Test
    void theChainGoesOnOverMonthsAndAClockThatWasSetBack() throws IOException {
        Desk desk = Desk.ofAnna();
        RecordBook book = book(temp, desk);
        book.append(note("march"));
        desk.clock("2026-05-02T00:00:00Z");
        book.append(note("may"));
        desk.clock("2026-04-30T23:00:00Z");
        RecordLine back = book.append(note("set back"));
        assertEquals("2026-05.anna-north-desk.jsonl", back.file());
        assertEquals(Instant.parse("2026-04-30T23:00:00Z"), back.time());
        assertEquals(List.of("march", "may", "set back"), all(book).stream().map(RecordLine::note).toList());
        assertEquals(List.of(YearMonth.of(2026, 3), YearMonth.of(2026, 5)), book.months());
        try (RecordReading may = book.read(YearMonth.of(2026, 4), YearMonth.of(2026, 12))) {
            assertEquals(2, may.toList().size());
            assertEquals(List.of(), may.problems());
        }
        assertEquals(3, all(book(temp, desk)).size(), "another session goes on with the same chain");
        book(temp, desk).append(note("another session"));
        assertEquals(4, all(book).size());
    }

    @Test
    void twoDesksHaveAChainEachAndMergingIsTakingBothFiles() throws IOException {
        Desk ben = new Desk("Ben K\u00fcnstler", "S\u00fcd/Desk.local", "2026-03-05T00:00:00Z");
        RecordBook annas = book(temp.resolve("a"), Desk.ofAnna());
        RecordBook bens = book(temp.resolve("b"), ben);
        assertEquals("ben-k-nstler-s-d-desk-local", bens.writer());
        annas.append(List.of(note("a1"), note("a2")));
        bens.append(note("b1"));
        for (Path file : List.of(temp.resolve("a/2026-03.anna-north-desk.jsonl"))) {
            Files.copy(file, temp.resolve("b").resolve(file.getFileName()));
        }
        assertEquals(List.of("a1", "a2", "b1"), all(bens).stream().map(RecordLine::note).toList());
        bens.append(note("b2"));
        assertEquals(4, all(bens).size());
    }

    @Test
    void aTornLastLineIsToldAndSetAsideByTheNextAppend() throws IOException {
        RecordBook book = book(temp, Desk.ofAnna());
        book.append(List.of(note("one"), note("two")));
        Path file = temp.resolve("2026-03.anna-north-desk.jsonl");
        String torn = "{\"id\":\"not confirmed\",\"time\":\"2026-03-0";
        Files.writeString(file, torn, StandardOpenOption.APPEND);
        List<Problem> told = problems(book);
        assertEquals(1, told.size());
        assertEquals("torn-record", told.get(0).code());
        assertEquals("2026-03.anna-north-desk.jsonl:3", told.get(0).where());
        book.append(note("three"));
        assertEquals(List.of("one", "two", "three"), all(book).stream().map(RecordLine::note).toList());
        assertEquals(torn, Files.readString(temp.resolve("2026-03.anna-north-desk.torn-1.txt")));
    }

    /** Whatever is changed in the file after it was written is told, with a line at or behind the change. */
    @Property(tries = 100)
    void noChangeGoesUnseen(@ForAll @IntRange(min = 3, max = 8) int count, @ForAll @IntRange(max = 1_000_000) int place,
            @ForAll @IntRange(min = 1, max = 255) int flip) throws IOException {
        Path folder = Files.createTempDirectory("records");
        try {
            RecordBook book = book(folder, Desk.ofAnna());
            List<RecordDraft> drafts = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                drafts.add(note("note " + i));
            }
            List<RecordLine> lines = book.append(drafts);
            Path file = folder.resolve(lines.get(0).file());
            byte[] bytes = Files.readAllBytes(file);
            int lastLine = Math.toIntExact(lines.get(count - 1).offset());
            int at = place % lastLine; // what stands in the last line is guarded only by the next one
            bytes[at] ^= (byte) flip;
            Files.write(file, bytes);
            List<Problem> told = problems(book);
            assertTrue(told.stream().anyMatch(problem -> problem.code().equals("broken-chain") || problem.code().equals("unreadable-record")),
                    "byte " + at + " was changed, and nothing was told");
        } finally {
            remove(folder);
        }
    }

    @Test
    void aLineTakenOutOrAMonthTakenOutIsToldWithFileAndLine() throws IOException {
        Desk desk = Desk.ofAnna();
        RecordBook book = book(temp, desk);
        book.append(List.of(note("one"), note("two"), note("three")));
        Path march = temp.resolve("2026-03.anna-north-desk.jsonl");
        List<String> lines = Files.readAllLines(march);
        Files.writeString(march, lines.get(0) + "\n" + lines.get(2) + "\n");
        List<Problem> told = problems(book);
        assertEquals(List.of("broken-chain"), told.stream().map(Problem::code).toList());
        assertEquals("2026-03.anna-north-desk.jsonl:2", told.get(0).where());
        Files.writeString(march, String.join("\n", lines) + "\n");
        desk.clock("2026-04-01T00:00:00Z");
        book.append(note("april"));
        Files.delete(march);
        told = problems(book);
        assertEquals("2026-04.anna-north-desk.jsonl:1", told.get(0).where());
        assertEquals("broken-chain", told.get(0).code());
    }

    @Test
    void anUnreadableLineIsToldAndTheRestIsRead() throws IOException {
        RecordBook book = book(temp, Desk.ofAnna());
        book.append(List.of(note("one"), note("two"), note("three")));
        Path file = temp.resolve("2026-03.anna-north-desk.jsonl");
        List<String> lines = Files.readAllLines(file);
        for (String bad : List.of("", "[]", "{}", "not JSON", "{\"id\":1}", lines.get(1).replace("\"settings\":{}", "\"settings\":[]"), lines.get(1) + " x",
                lines.get(1).replace("2026-03-01T10:00:00Z", "yesterday"), "{\"a\":".repeat(100000))) {
            Files.writeString(file, lines.get(0) + "\n" + bad + "\n" + lines.get(2) + "\n");
            try (RecordReading reading = book.read()) {
                assertEquals(List.of("one", "three"), reading.toList().stream().map(RecordLine::note).toList());
                assertEquals("unreadable-record", reading.problems().get(0).code());
                assertEquals(file.getFileName() + ":2", reading.problems().get(0).where());
            }
        }
        Files.write(file, new byte[] {(byte) 0xff, (byte) 0xfe, '\n'});
        assertEquals("unreadable-record", problems(book).get(0).code());
    }

    @Test
    void aCopyMadeByASynchronisingProgramIsTold() throws IOException {
        RecordBook book = book(temp, Desk.ofAnna());
        book.append(note("one"));
        Files.copy(temp.resolve("2026-03.anna-north-desk.jsonl"), temp.resolve("2026-03.anna-north-desk (copy of Ben).jsonl"));
        assertEquals(List.of("stray-record-file"), problems(book).stream().map(Problem::code).toList());
        assertEquals(1, read(book));
    }

    private static int read(RecordBook book) throws IOException {
        try (RecordReading reading = book.read()) {
            return reading.toList().size();
        }
    }

    @Test
    void readingGoesOnWhereItEnded() throws IOException {
        Desk desk = Desk.ofAnna();
        RecordBook book = book(temp, desk);
        book.append(List.of(note("one"), note("two")));
        Map<String, Long> ends;
        try (RecordReading reading = book.read()) {
            reading.toList();
            ends = reading.ends();
        }
        book.append(note("three"));
        desk.clock("2026-04-01T00:00:00Z");
        book.append(note("four"));
        try (RecordReading reading = book.readAfter(ends)) {
            List<RecordLine> more = reading.toList();
            assertEquals(List.of("three", "four"), more.stream().map(RecordLine::note).toList());
            assertEquals(3, more.get(0).line());
            assertEquals(List.of(), reading.problems());
        }
    }

    @Property(tries = 40)
    void whatIsAppendedIsReadWhateverItHolds(@ForAll("drafts") List<RecordDraft> drafts, @ForAll @IntRange(min = 1, max = 3) int sessions)
            throws IOException {
        Path folder = Files.createTempDirectory("records");
        try {
            Desk desk = Desk.ofAnna();
            List<RecordLine> written = new ArrayList<>();
            for (int session = 0; session < sessions; session++) {
                desk.clock("2026-0" + (4 + session) + "-01T00:00:00Z");
                written.addAll(book(folder, desk).append(drafts));
            }
            assertEquals(written, all(book(folder, desk)));
            for (int i = 0; i < written.size(); i++) {
                RecordDraft draft = drafts.get(i % drafts.size());
                assertEquals(draft.settings(), written.get(i).settings());
                assertEquals(draft.note(), written.get(i).note());
                assertEquals(draft.used(), written.get(i).used());
            }
        } finally {
            remove(folder);
        }
    }

    @Provide
    Arbitrary<List<RecordDraft>> drafts() {
        Arbitrary<String> text = Arbitraries.strings().ofMaxLength(12).filter(RecordBookTest::isText);
        Arbitrary<Object> plain = Arbitraries.oneOf(text.map(Object.class::cast), Arbitraries.longs().map(Object.class::cast),
                Arbitraries.doubles().filter(d -> Double.isFinite(d)).map(Object.class::cast), Arbitraries.of(true, false).map(Object.class::cast));
        Arbitrary<Map<String, Object>> settings = Arbitraries.maps(text, Arbitraries.oneOf(plain, plain.list().ofMaxSize(3).map(Object.class::cast)))
                .ofMaxSize(4);
        Arbitrary<RecordDraft> draft = Combinators.combine(Arbitraries.of(RecordKind.values()), settings, text, text.list().ofMaxSize(3))
                .as((kind, map, note, used) -> new RecordDraft(Optional.empty(), Optional.empty(), kind.key(), Optional.empty(), used, List.of(), map,
                        List.of(), note));
        return draft.list().ofMinSize(1).ofMaxSize(5);
    }

    /** Half a surrogate pair is no text and becomes a question mark in UTF-8. */
    private static boolean isText(String text) {
        return text.equals(new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8));
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
