package saddlebar.production.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

import saddlebar.model.art.OutlineMm;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.StockSheet;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.NewCommission;
import saddlebar.model.store.StudioLibrary;
import saddlebar.model.work.Work;
import saddlebar.nesting.Effort;
import saddlebar.production.make.Outlines;

class GlassLayingTest {
    private static final GlassLaying LAYING = new GlassLaying(3, 5, false, Effort.rounds(3));
    @TempDir
    private Path temp;

    private static ShelfSheet sheet(String name, double width, double height, boolean alongWidth, OutlineMm... flaws) {
        return new ShelfSheet("id-" + name, name, width, height, Optional.empty(), alongWidth, false, List.of(flaws));
    }

    private static WantedPiece piece(String label, double width, double height) {
        return new WantedPiece(label, "amber", OutlineMm.rectangle(100, 100, width, height));
    }

    private static GlassLaying.Result lay(boolean grained, List<ShelfSheet> sheets, WantedPiece... pieces) {
        return LAYING.lay(List.of(pieces), List.of(new ShelfGlass("amber", grained, 500, 800, sheets)), Work.UNWATCHED);
    }

    /** An upright piece on glass whose grain runs across must lie across, so that both run together. */
    @Test
    void grainOfThePieceRunsWithTheGrainOfTheSheet() {
        LaidGlass upright = lay(true, List.of(sheet("G1", 300, 300, false)), piece("W01/1", 40, 200)).sheets().get(0);
        double[] box = upright.pieces().get(0).outline().boundsMm();
        assertEquals(200, box[3] - box[1], 1e-6);
        assertEquals(0, upright.pieces().get(0).rotationDeg() % 180, 1e-9);
        LaidGlass across = lay(true, List.of(sheet("G1", 300, 300, true)), piece("W01/1", 40, 200)).sheets().get(0);
        box = across.pieces().get(0).outline().boundsMm();
        assertEquals(200, box[2] - box[0], 1e-6);
        assertEquals(90, across.pieces().get(0).rotationDeg() % 180, 1e-9);
        assertEquals(List.of(), lay(false, List.of(sheet("G1", 60, 300, true)), piece("W01/1", 200, 40)).leftOut(), "without grain it may be turned");
        assertEquals(1, lay(true, List.of(sheet("G1", 60, 300, false)), piece("W01/1", 200, 40)).leftOut().size(), "with grain it may not");
    }

    @Test
    void piecesKeepOffFlawsEdgesAndEachOtherAndOffcutsHoldNothing() {
        OutlineMm flaw = StockBook.round(120, 90, 30);
        List<WantedPiece> pieces = new ArrayList<>();
        for (int i = 1; i <= 14; i++) {
            pieces.add(piece("W01/" + i, 30 + 5 * (i % 4), 40 + 7 * (i % 3)));
        }
        for (boolean alongWidth : new boolean[] {false, true}) {
            GlassLaying.Result result = lay(true, List.of(sheet("G1", 320, 260, alongWidth, flaw)), pieces.toArray(WantedPiece[]::new));
            assertEquals(14, result.sheets().stream().mapToInt(laid -> laid.pieces().size()).sum() + result.leftOut().size());
            List<Polygon> there = new ArrayList<>(List.of(Outlines.polygon(flaw)));
            LaidGlass laid = result.sheets().get(0);
            for (LaidPiece piece : laid.pieces()) {
                Polygon lies = Outlines.polygon(piece.outline());
                assertTrue(new Envelope(5 - 1e-6, 315 + 1e-6, 5 - 1e-6, 255 + 1e-6).contains(lies.getEnvelopeInternal()), piece.label());
                there.forEach(other -> assertTrue(other.distance(lies) > 3 - 1e-5, piece.label()));
                there.add(lies);
            }
            for (LaidGlass.Offcut left : laid.offcuts()) {
                Envelope box = new Envelope(left.xMm(), left.xMm() + left.widthMm(), left.yMm(), left.yMm() + left.heightMm());
                there.forEach(other -> assertTrue(other.distance(new GeometryFactory().toGeometry(box)) > 3 - 1e-5));
            }
            assertTrue(result.yields().get("amber") > laid.use() - 1e-9 && result.yields().get("amber") <= 1);
        }
    }

    @Test
    void whatHasNoRoomIsBoughtOnlyWhenAsked() {
        ShelfGlass glass = new ShelfGlass("amber", false, 500, 800, List.of(sheet("G1", 60, 60, false)));
        assertEquals(2, LAYING.lay(List.of(piece("a", 200, 200), piece("b", 200, 200)), List.of(glass), Work.UNWATCHED).leftOut().size());
        GlassLaying.Result bought = new GlassLaying(3, 5, true, Effort.rounds(1)).lay(List.of(piece("a", 200, 200), piece("b", 200, 200)), List.of(glass),
                Work.UNWATCHED);
        assertEquals(List.of(), bought.leftOut());
        assertEquals(1, bought.sheets().size());
        assertTrue(bought.sheets().get(0).toBuy());
        assertEquals(1, LAYING.lay(List.of(new WantedPiece("x", "nowhere", OutlineMm.rectangle(0, 0, 9, 9))), List.of(glass), Work.UNWATCHED).leftOut().size());
    }

    /** The whole way on the disk: add, flaw, lay, cut; the sheet is used up, what was left stands on the shelf, the record says so. */
    @Test
    void cutSheetsLeaveTheShelfAndTheirOffcutsComeBack() throws IOException {
        Path folder = temp.resolve("job");
        StudioLibrary tables = StudioLibrary.of(Path.of("../../shared").toAbsolutePath().normalize());
        try (CommissionFolder open = CommissionFolder.create(folder, NewCommission.titled("A job").onPapers(List.of("letter")).stockedFrom(tables))) {
            StockBook book = new StockBook(open.studio());
            GlassStock amber = book.glass("amber");
            StockSheet sheet = book.add(amber, "", 400, 300, Optional.empty(), false, false);
            book.flaw(sheet, "bubble", StockBook.round(350, 50, 20));
            assertThrows(Refusal.class, () -> book.flaw(sheet, "bubble", StockBook.round(900, 50, 20)));
            assertThrows(Refusal.class, () -> book.add(amber, sheet.getName(), 10, 10, Optional.empty(), false, false));
            assertThrows(Refusal.class, () -> book.glass("no such"));
            open.save();
        }
        LaidGlass laid;
        try (CommissionFolder open = CommissionFolder.open(folder, Access.WRITE)) {
            StockBook book = new StockBook(open.studio());
            GlassLaying.Result result = LAYING.lay(List.of(piece("W01/1", 90, 120)), book.shelf(), Work.UNWATCHED);
            LayoutFile.write(open.path(), result);
            assertEquals(result.sheets(), LayoutFile.read(open.path()));
            assertEquals(result.yields(), LayoutFile.yields(open.path()));
            laid = result.sheets().get(0);
            List<Path> files = LayoutDrawings.write(result.sheets(), temp.resolve("drawn"), Work.UNWATCHED);
            assertEquals(2, files.size());
            assertTrue(Files.readString(files.get(1)).contains("W01/1"));
            List<String> offcuts = book.cut(laid);
            open.save();
            book.record(open, laid, offcuts);
        }
        try (CommissionFolder open = CommissionFolder.open(folder, Access.READ)) {
            List<ShelfSheet> shelf = new StockBook(open.studio()).shelf().stream().filter(glass -> glass.name().equals("amber")).findFirst().orElseThrow()
                    .sheets();
            assertEquals(laid.offcuts().size(), shelf.size());
            assertTrue(shelf.stream().allMatch(ShelfSheet::offcut));
            assertEquals(laid.offcuts().get(0).areaMm2(), shelf.stream().mapToDouble(ShelfSheet::areaMm2).max().orElseThrow(), 1e-6);
            try (var records = open.studioFolder().records().read()) {
                assertTrue(records.toList().stream().anyMatch(line -> line.kind().equals("stock")));
            }
        }
        Files.writeString(folder.resolve("made/glass/layout.json"), "{\"sheets\": 3");
        assertThrows(Refusal.class, () -> LayoutFile.read(folder));
    }
}
