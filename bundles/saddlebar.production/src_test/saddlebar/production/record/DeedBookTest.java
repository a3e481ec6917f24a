package saddlebar.production.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.NewCommission;
import saddlebar.model.store.RecordLine;
import saddlebar.model.store.RecordReading;
import saddlebar.model.store.StudioLibrary;

class DeedBookTest {
    private static final Instant NOW = Instant.parse("2026-06-01T08:00:00Z");
    @TempDir
    private Path temp;
    private Path folder;
    private final DeedReader reader = new DeedReader(NOW, ZoneOffset.UTC);

    @BeforeEach
    void aCommission() throws IOException {
        folder = temp.resolve("job");
        StudioLibrary tables = StudioLibrary.of(Path.of("../../shared").toAbsolutePath().normalize());
        try (CommissionFolder made = CommissionFolder.create(folder, NewCommission.titled("A job").stockedFrom(tables))) {
            made.save();
        }
    }

    private Path csv(String text) throws IOException {
        return Files.writeString(temp.resolve("book.csv"), text, StandardCharsets.UTF_8);
    }

    private DeedBook.Entered enter(List<Deed> deeds, boolean create, boolean write) throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.WRITE)) {
            return new DeedBook(open, create).enter(deeds, write);
        }
    }

    private List<RecordLine> lines() throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.READ); RecordReading reading = open.records().read()) {
            List<RecordLine> lines = reading.toList();
            assertEquals(List.of(), reading.problems());
            return lines;
        }
    }

    private static final String BOOK = """
            when,kind,who,window,piece,layer,mix,peak_c,defect,severity,note
            2026-03-01,pull,A,W01,12,matt,M07,,,,"thin, I think"
            2026-03-02T10:00,fire,A,W01,12,matt,,655.5,,,
            2026-03-03,defect,B,W01,12,matt,,,pinholes,light,
            2026-03-03,defect,B,W01,12,matt,,,purple haze,,
            """;

    @Test
    void anOldNotebookMakesWhatItNames() throws IOException {
        DeedReader.Table table = reader.table(csv(BOOK));
        assertEquals(List.of(), table.refused());
        DeedBook.Entered trial = enter(table.deeds(), true, false);
        assertEquals(4, trial.records());
        assertEquals(List.of("window W01", "piece W01/12", "layer W01 matt"), trial.created());
        assertEquals(List.of(), lines(), "a trial appends nothing");
        DeedBook.Entered entered = enter(table.deeds(), true, true);
        assertEquals(1, entered.warnings().size());
        assertTrue(entered.warnings().get(0).message().contains("purple haze"));
        List<RecordLine> lines = lines();
        assertEquals(List.of("pull", "fire", "defect", "defect"), lines.stream().map(RecordLine::kind).toList());
        assertEquals("M07", lines.get(0).settings().get("mix"));
        assertEquals("A", lines.get(0).who());
        assertEquals("thin, I think", lines.get(0).note());
        assertEquals(655.5, ((Number) lines.get(1).settings().get("peak_c")).doubleValue());
        assertEquals(Instant.parse("2026-03-02T10:00:00Z"), lines.get(1).time());
        try (CommissionFolder open = CommissionFolder.open(folder, Access.READ)) {
            String id = open.window("W01").orElseThrow().getPanels().get(0).getPieces().get(0).getId();
            assertEquals(id, lines.get(0).settings().get("pieceId"));
            assertTrue(lines.get(0).used().contains(id));
        }
        // again, now that all is there
        assertEquals(List.of(), enter(table.deeds(), false, true).created());
    }

    @Test
    void withoutCreateEveryRowThatNamesNothingIsRefusedAndNothingIsAppended() throws IOException {
        DeedBook.Entered entered = enter(reader.table(csv(BOOK)).deeds(), false, true);
        assertEquals(4, entered.refused().size());
        assertTrue(entered.refused().get(2).getMessage().contains("book.csv:4"), entered.refused().get(2).getMessage());
        assertEquals(List.of(), lines());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            when,kind,wat\\n2026-01-01,note,x            | 'wat'
            kind,who\\nnote,x                            | 'when' is missing
            when,kind,when\\n2026-01-01,note,x           | table
            when,kind,note\\n2026-01-01,note             | 2 cells
            when,kind\\nyesterday,note                   | 'yesterday'
            when,kind\\n2027-01-01,note                  | future
            when,kind\\n2026-01-01,dance                 | 'dance'
            when,kind\\n2026-01-01,stencil               | 'stencil'
            when,kind\\n2026-01-01,                      | kind is empty
            when,kind,window\\n2026-01-01,pull,W01       | window and piece
            when,kind,window,piece\\n2026-01-01,defect,W01,1 | word for what is wrong
            when,kind,peak_c\\n2026-01-01,note,hot       | 'hot'
            """)
    void badTablesAreRefusedWithTheirLine(String text, String expected) throws IOException {
        Path file = csv(text.replace("\\n", "\n"));
        Refusal refusal;
        try {
            refusal = reader.table(file).refused().get(0);
        } catch (Refusal whole) {
            refusal = whole;
        }
        assertTrue(refusal.getMessage().contains(expected), refusal.getMessage());
        assertTrue(refusal.getMessage().contains("book.csv"), refusal.getMessage());
    }

    @Test
    void binaryAndMissingFilesAreRefused() throws IOException {
        Path file = temp.resolve("book.csv");
        Files.write(file, new byte[] {(byte) 0xFF, (byte) 0xFE, 0, 1});
        assertThrows(Refusal.class, () -> reader.table(file));
        assertThrows(Refusal.class, () -> reader.table(temp.resolve("none.csv")));
    }

    @Test
    void oneDeedInWords() throws IOException {
        Deed deed = reader.deed("record", Map.of("kind", "note", "note", "the shelf is cracked"));
        assertEquals(NOW, deed.when());
        assertEquals(1, enter(List.of(deed), false, true).records());
        assertEquals("the shelf is cracked", lines().get(0).note());
    }
}
