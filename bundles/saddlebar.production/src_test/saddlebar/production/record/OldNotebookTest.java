package saddlebar.production.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Access;
import saddlebar.model.store.Attachment;
import saddlebar.model.store.CardText;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.NewCommission;
import saddlebar.model.store.RecordLine;
import saddlebar.model.store.RecordReading;
import saddlebar.model.store.StudioLibrary;
import saddlebar.model.work.Work;
import saddlebar.production.trace.RemakeBatch;
import saddlebar.production.trace.RemakeSheet;
import saddlebar.production.trace.ScreenRack;
import saddlebar.production.trace.StudioUse;
import saddlebar.production.trace.TraceRoom;

/** Notebooks with headings of their own, photos, corrections, and what rack, remake and studio use say of them. */
class OldNotebookTest {
    private final DeedReader reader = new DeedReader(Instant.parse("2026-06-01T08:00:00Z"), ZoneOffset.UTC);
    @TempDir
    private Path temp;
    private Path folder;

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

    private DeedBook.Entered enter(List<Deed> deeds) throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.WRITE)) {
            return new DeedBook(open, true).enter(deeds, true);
        }
    }

    private List<RecordLine> lines() throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.READ); RecordReading reading = open.records().read()) {
            return reading.toList();
        }
    }

    @Test
    void aGermanNotebookIsUnderstood() throws IOException {
        Path book = csv("Datum;Was;Wer;Fenster;Stück;Schicht;Sieb;Mischung;Luftfeuchte;Brenntemperatur;Wetter\n"
                + "14.03.2026;Druck;Anna;W01;3;matt;S04;M07;55%;;Regen\n15.03.2026 9:30;Brand;Anna;W01;3;matt;;;;652,5;\n31.02.2026;Druck;Anna;W01;3;matt;;;;;\n");
        HeaderMapping mapping = HeaderMapping.propose(book);
        assertEquals(
                Map.of("Datum", "when", "Was", "kind", "Wer", "who", "Fenster", "window", "Stück", "piece", "Schicht", "layer", "Sieb", "screen", "Mischung",
                        "mix", "Luftfeuchte", "humidity", "Brenntemperatur", "peak_c"),
                without(mapping, "Wetter"));
        assertEquals("x:Wetter", mapping.columns().get("Wetter"));
        DeedReader.Table table = reader.table(book, mapping);
        assertEquals(1, table.refused().size());
        assertTrue(table.refused().get(0).where().endsWith(":4"), table.refused().toString());
        assertEquals("0.55", table.deeds().get(0).word("humidity"));
        assertEquals("pull", table.deeds().get(0).kind());
        assertEquals(Instant.parse("2026-03-15T09:30:00Z"), table.deeds().get(1).when());
        assertEquals("652.5", table.deeds().get(1).word("peak_c"));
        assertEquals(2, enter(table.deeds()).records());
        assertEquals("Regen", lines().get(0).settings().get("x:Wetter"));
    }

    private static Map<String, String> without(HeaderMapping mapping, String heading) {
        Map<String, String> rest = new HashMap<>(mapping.columns());
        rest.remove(heading);
        return rest;
    }

    @Test
    void aDateWithStrokesIsNotGuessed() throws IOException {
        Path book = csv("Date,Action,Window,Piece,Layer\n3/4/2026,printed,W01,1,matt\n");
        HeaderMapping mapping = HeaderMapping.propose(book);
        assertTrue(reader.table(book, mapping).refused().get(0).getMessage().contains("--dates"));
        assertEquals(Instant.parse("2026-04-03T12:00:00Z"), reader.table(book, mapping.withDates("dmy")).deeds().get(0).when());
        assertEquals(Instant.parse("2026-03-04T12:00:00Z"), reader.table(book, mapping.withDates("mdy")).deeds().get(0).when());
    }

    @Test
    void twoHeadingsOfOneMeaningAreRefused() throws IOException {
        Path book = csv("when,kind,a,b\n2026-03-01,note,x,y\n");
        HeaderMapping mapping = new HeaderMapping(Map.of("a", "note", "b", "note"), "");
        assertThrows(Refusal.class, () -> reader.table(book, mapping));
    }

    @Test
    void cardsReadAsWords() {
        assertEquals(Map.of("window", "W01", "piece", "12", "layer", "matt"), CardText.words(CardText.piece("W01", "12", "matt")));
        assertEquals(Map.of("window", "W01", "piece", "12"), CardText.words(" saddlebar piece W01/12 "));
        assertEquals(Map.of("screen", "S04"), CardText.words(CardText.frame("S04")));
        assertEquals(Map.of("sheet", "3"), CardText.words(CardText.sheet(3)));
        assertEquals(Map.of("mix", "M07"), CardText.words(CardText.mix("M07")));
        assertEquals(Map.of("firing", "F031"), CardText.words(CardText.firing("F031")));
        for (String bad : List.of("", "W01/12", "saddlebar", "saddlebar piece", "saddlebar piece 12", "saddlebar oven 3", "https://example.org/1")) {
            assertThrows(Refusal.class, () -> CardText.words(bad), bad);
        }
    }

    @Test
    void aPhotoIsKeptByItsContentAndNonsenseIsRefused() throws IOException {
        Path photo = temp.resolve("flaw.png");
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", photo.toFile());
        enter(List.of(
                reader.deed("record", Map.of("kind", "defect", "window", "W01", "piece", "3", "layer", "matt", "defect", "pinholes", "photo", photo.toString(),
                        "at", "12.5, 40"))));
        Map<String, Object> settings = lines().get(0).settings();
        assertEquals(12.5, settings.get("xMm"));
        Attachment kept = new Attachment((String) settings.get("photo"), (String) settings.get("photoSha256"));
        try (CommissionFolder open = CommissionFolder.open(folder, Access.READ)) {
            Path file = open.attachment(kept).orElseThrow();
            assertEquals(-1, Files.mismatch(photo, file));
            Files.write(file, new byte[] {1});
            assertTrue(open.attachment(kept).isEmpty(), "a changed photo is no longer what was recorded");
        }
        Path nonsense = Files.writeString(temp.resolve("nonsense.png"), "no picture");
        Path half = Files.write(temp.resolve("half.png"), Arrays.copyOf(Files.readAllBytes(photo), 40));
        for (Path bad : List.of(nonsense, half, temp.resolve("absent.jpg"))) {
            DeedBook.Entered entered = enter(List.of(reader.deed("record", Map.of("kind", "defect", "window", "W01", "piece", "3", "defect", "dirt", "photo",
                    bad.toString()))));
            assertEquals(1, entered.refused().size(), bad.toString());
        }
        assertEquals(1, lines().size(), "nothing was appended");
    }

    @Test
    void aCorrectionNamesARecordThatIsThere() throws IOException {
        String id = enter(List.of(reader.deed("record", Map.of("kind", "mix", "mix", "M07", "powder_g", "40")))).ids().get(0);
        assertEquals(1, enter(List.of(reader.deed("record", Map.of("kind", "mix", "mix", "M07", "powder_g", "42", "corrects", id)))).records());
        assertEquals(List.of(id), lines().get(1).supersedes());
        assertEquals(1, enter(List.of(reader.deed("record", Map.of("kind", "mix", "mix", "M07", "corrects", "nowhere")))).refused().size());
        assertEquals(1, enter(List.of(reader.deed("record", Map.of("kind", "note", "corrects", id)))).refused().size());
    }

    @Test
    void rackRemakeAndUseSayWhatWasRecorded() throws IOException {
        String frame;
        String paint;
        try (CommissionFolder open = CommissionFolder.open(folder, Access.READ)) {
            frame = open.studio().getFrames().get(0).getName();
            paint = open.studio().getPaints().get(0).getName();
        }
        enter(List.of(reader.deed("r", Map.of("kind", "fuse", "screen", frame, "sheet", "1", "when", "2026-03-01", "who", "Anna")),
                reader.deed("r",
                        Map.of("kind", "mix", "mix", "M1", "paint", paint, "lot", "gone lot", "powder_g", "40", "medium_g", "16", "when", "2026-03-01T13:00",
                                "who", "Anna")),
                reader.deed("r",
                        Map.of("kind", "pull", "window", "W01", "piece", "3", "layer", "matt", "screen", frame, "mix", "M1", "paint", "a paint of old", "when",
                                "2026-03-02", "who", "Anna")),
                reader.deed("r", Map.of("kind", "fire", "window", "W01", "piece", "3", "layer", "matt", "firing", "F1", "when", "2026-03-03", "who", "Ben")),
                reader.deed("r", Map.of("kind", "remake", "window", "W01", "piece", "3", "when", "2026-03-04"))));
        try (TraceRoom room = TraceRoom.open(folder, Work.UNWATCHED)) {
            ScreenRack.Frame hung = ScreenRack.of(room).frames().stream().filter(one -> one.name().equals(frame)).findFirst().orElseThrow();
            assertEquals(ScreenRack.State.LOADED, hung.state());
            assertEquals(1, hung.pulls());
            assertEquals(List.of("W01/3"), RemakeBatch.waiting(room));
            RemakeSheet sheet = RemakeSheet.of(room, "W01/3");
            assertTrue(sheet.gone().stream().anyMatch(need -> need.what().equals("paint") && need.then().equals("a paint of old")), sheet.gone().toString());
            assertTrue(sheet.gone().stream().anyMatch(need -> need.what().equals("lot")));
            assertTrue(sheet.layers().get(0).needs().stream().anyMatch(need -> need.what().equals("mix") && need.instead().contains("40.0 g powder")));
            assertEquals(1, RemakeBatch.of(room, List.of(sheet)).runs().size());
            StudioUse all = StudioUse.of(room, Instant.EPOCH, Instant.parse("2026-06-01T00:00:00Z"), Optional.empty(), Work.UNWATCHED);
            StudioUse.Row anna = all.rows().stream().filter(row -> row.person().equals("Anna")).findFirst().orElseThrow();
            assertEquals(40, anna.paintG());
            assertEquals(1, anna.screens());
            StudioUse own = StudioUse.of(room, Instant.EPOCH, Instant.parse("2026-06-01T00:00:00Z"), Optional.of("Ben"), Work.UNWATCHED);
            assertEquals(List.of("Ben"), own.rows().stream().map(StudioUse.Row::person).toList());
            assertEquals(1, own.rows().get(0).firings());
        }
    }
}
