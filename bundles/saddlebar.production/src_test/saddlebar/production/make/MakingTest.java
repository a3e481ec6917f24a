package saddlebar.production.make;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.MirrorRule;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Stencil;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.RecordDraft;
import saddlebar.model.store.RecordKind;
import saddlebar.model.store.RecordLine;
import saddlebar.model.store.RecordReading;
import saddlebar.model.work.Work;

/** What is made again and what is not, and that it is the same however many hands make it. */
class MakingTest {
    @TempDir
    Path temp;
    private WorkBench bench;

    @BeforeEach
    void layOut() throws IOException {
        bench = new WorkBench(temp);
    }

    private static Set<String> made(MakeResult result) {
        return result.made().stream().map(MadeThing::file).map(file -> file.substring(Making.FOLDER.length() + 1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** For each stencil's label the sheets that it lies on, as the model says. */
    private Map<String, Set<Integer>> sheetsOfStencil() throws IOException {
        Map<String, Set<Integer>> sheets = new HashMap<>();
        bench.look(open -> {
            open.windows(); // placements lead into them
            open.commission().getSheets().forEach(sheet -> sheet.getPlacements().forEach(placement -> {
                Stencil stencil = placement.getStencil();
                String label = stencil.getLayer().getPanel().getWindow().getName() + " " + stencil.getLayer().getName() + " " + stencil.getNumber();
                sheets.computeIfAbsent(label, s -> new TreeSet<>()).add(sheet.getNumber());
            }));
        });
        return sheets;
    }

    private Map<String, Long> records() throws IOException {
        List<RecordLine> lines = new ArrayList<>();
        bench.look(open -> {
            try (RecordReading reading = open.records().read()) {
                lines.addAll(reading.toList());
            }
        });
        return lines.stream().collect(Collectors.groupingBy(RecordLine::kind, Collectors.counting()));
    }

    @Test
    void nothingChangedNothingMade() throws IOException {
        bench.bring("W01", WorkBench.twoPieces());
        MakeResult first = bench.make();
        assertEquals(Set.of("pieces/W01-pieces.svg", "stencils/W01-matt-1.tif", "stencils/W01-trace-1.tif", "sheets/sheet-1.pdf", "sheets/sheet-1.tif",
                "sheets/sheet-1-proof.png", "sheets/sheet-1-tape-plan.pdf", "cards/W01-cutting-list.csv", "cards/W01-cutline.pdf",
                "cards/W01-patterns.pdf", "beds/W01-matt-1-bed.pdf", "beds/W01-trace-1-bed.pdf", "cards/making-record.txt"), named(made(first)));
        Map<String, Long> recorded = records();
        Map<String, String> hashes = bench.hashes();

        MakeResult second = bench.make();
        assertEquals(Set.of(), made(second));
        assertEquals(first.made().size(), second.kept());
        assertEquals(hashes, bench.hashes());
        assertEquals(recorded, records(), "what was not made is not recorded again");
    }

    /** Sheets are numbered with as many digits as there are; the test does not care. */
    private static Set<String> named(Set<String> files) {
        return files.stream().map(file -> file.replaceFirst("sheet-0*", "sheet-")).collect(Collectors.toSet());
    }

    @Test
    void oneRecipeChangedOnlyItsStencilAndWhatHoldsIt() throws IOException {
        // each window's piece nearly fills a sheet, so that every stencil lies on a sheet of its own
        String large = WorkBench.svg(150, 200, "", "<g id='trace'><path d='M5 5L145 195' stroke='#000' stroke-width='3'/></g>");
        bench.bring("W01", large);
        bench.bring("W02", WorkBench.svg(150, 200, "", "<g id='trace'><path d='M145 5L5 195' stroke='#000' stroke-width='3'/></g>"));
        bench.make();
        Set<Integer> sheets = sheetsOfStencil().get("W02 trace 1");
        assertEquals(1, sheets.size());
        assertFalse(sheetsOfStencil().get("W01 trace 1").containsAll(sheets), "two stencils that share a sheet would prove nothing");
        Map<String, String> before = bench.hashes();

        bench.change("W02", LayerRole.TRACE, layer -> layer.getRecipe().setMirror(MirrorRule.YES));
        Set<String> made = made(bench.make());
        assertEquals(Set.of("stencils/W02-trace-1.tif", "cards/making-record.txt"),
                made.stream().filter(file -> !file.startsWith("sheets/")).collect(Collectors.toSet()));
        assertEquals(4, made.stream().filter(file -> file.startsWith("sheets/")).count(), made.toString());
        Map<String, String> after = bench.hashes();
        before.keySet().stream().filter(file -> !made.contains(file) && !file.startsWith("plans/"))
                .forEach(file -> assertEquals(before.get(file), after.get(file), file));
    }

    @Test
    void aWindowAloneLeavesTheOthersAsTheyAre() throws IOException {
        bench.bring("W01", WorkBench.twoPieces());
        bench.bring("W02", WorkBench.svg(60, 60, "", "<g id='trace'><circle cx='30' cy='30' r='9'/></g>"));
        bench.make();
        Map<String, String> before = bench.hashes();
        MakeResult alone = bench.make(new MakeRequest(List.of("W02"), Stage.CARDS, true, 2), Work.UNWATCHED);
        assertTrue(made(alone).contains("stencils/W02-trace-1.tif"), made(alone).toString());
        assertFalse(made(alone).contains("stencils/W01-trace-1.tif"), made(alone).toString());
        assertEquals(before, bench.hashes());
        assertEquals(Set.of(), made(bench.make()));
    }

    @Test
    void aWindowThatIsNotThereIsRefused() throws IOException {
        bench.bring("W01", WorkBench.twoPieces());
        Refusal refusal = assertThrows(Refusal.class, () -> bench.make(new MakeRequest(List.of("W09"), Stage.CARDS, false, 1), Work.UNWATCHED));
        assertTrue(refusal.getMessage().contains("W09") && refusal.getMessage().contains("W01"), refusal.getMessage());
    }

    @Test
    void stagesEndWhereTheySay() throws IOException {
        bench.bring("W01", WorkBench.twoPieces());
        bench.make(new MakeRequest(List.of(), Stage.PIECES, false, 1), Work.UNWATCHED);
        assertEquals(Set.of("pieces"), folders());
        bench.make(new MakeRequest(List.of(), Stage.STENCILS, false, 1), Work.UNWATCHED);
        assertEquals(Set.of("pieces", "plans", "stencils"), folders());
        bench.make(new MakeRequest(List.of(), Stage.SHEETS, false, 1), Work.UNWATCHED);
        assertEquals(Set.of("pieces", "plans", "stencils", "sheets"), folders());
        bench.make();
        assertEquals(Set.of("pieces", "plans", "stencils", "sheets", "cards", "beds"), folders());
    }

    private Set<String> folders() throws IOException {
        return bench.hashes().keySet().stream().map(file -> file.substring(0, file.indexOf('/'))).collect(Collectors.toSet());
    }

    /** A printer that stretches has its sheets shrunk, and nothing else is made again. */
    @Test
    void aMeasuredPrinterChangesItsSheetsOnly() throws IOException {
        bench.bring("W01", WorkBench.twoPieces());
        bench.make();
        Map<String, String> before = bench.hashes();
        bench.edit(open -> open.commission().getStudio().getPrinters().get(0).setScaleX(1.01));
        Set<String> made = made(bench.make());
        assertEquals(Set.of("sheets/sheet-1.tif", "sheets/sheet-1.pdf", "sheets/sheet-1-proof.png", "sheets/sheet-1-tape-plan.pdf", "cards/making-record.txt"),
                named(made));
        String tiff = made.stream().filter(file -> file.endsWith(".tif")).findFirst().orElseThrow();
        assertFalse(before.get(tiff).equals(bench.hashes().get(tiff)), "the bits are as they were");
        bench.edit(open -> open.commission().getStudio().getPrinters().get(0).setScaleX(1.3));
        Refusal refusal = assertThrows(Refusal.class, bench::make);
        assertTrue(refusal.getMessage().contains("1.3") && refusal.getMessage().contains("measure"), refusal.getMessage());
    }

    @Test
    void oneHandAndManyMakeTheSameBytes() throws IOException {
        bench.bring("W01", WorkBench.twoPieces());
        bench.bring("W02", WorkBench.svg(90, 60, "<path d='M30 0V60M60 0V60'/>", "<defs><linearGradient id='g'><stop stop-color='#fff'/>"
                + "<stop offset='1' stop-color='#333'/></linearGradient></defs><g id='matt'><rect width='90' height='60' fill='url(#g)'/></g>"
                + "<g id='stain'><circle cx='45' cy='30' r='25' fill='#777'/></g>"));
        bench.make(new MakeRequest(List.of(), Stage.CARDS, false, 1), Work.UNWATCHED);
        Map<String, String> one = bench.hashes();
        for (int hands : new int[] {2, 5}) {
            bench.make(new MakeRequest(List.of(), Stage.CARDS, true, hands), Work.UNWATCHED);
            assertEquals(one, bench.hashes(), hands + " hands");
        }
    }

    @Test
    void identicalPiecesShareOneStencilAlsoOverWindows() throws IOException {
        StringBuilder trace = new StringBuilder("<g id='trace'>");
        for (int column = 0; column < 4; column++) {
            trace.append("<circle cx='%d' cy='15' r='6'/>".formatted(15 + 30 * column));
        }
        String border = WorkBench.svg(120, 30, "<path d='M30 0V30M60 0V30M90 0V30'/>", trace + "</g>");
        bench.bring("W01", border);
        bench.bring("W02", border);
        MakeResult result = bench.make();
        // the ends lack the gap on one side, so they are larger than the two in the middle
        MadeStencil shared = result.stencils().stream().filter(s -> s.planned().alike().stream().anyMatch(alike -> alike.contains("W01/2"))).findFirst()
                .orElseThrow();
        assertEquals(4, shared.planned().prints());
        assertEquals(Set.of("W01/2", "W01/3", "W02/2", "W02/3"), Set.copyOf(shared.planned().alike().get(0)));
        bench.look(open -> {
            Stencil stencil = open.window("W01").orElseThrow().getPanels().get(0).getLayers().get(0).getStencils().stream()
                    .filter(s -> s.getNumber() == shared.planned().number()).findFirst().orElseThrow();
            assertEquals(4, stencil.getPrints());
            assertEquals(4, stencil.getPieces().size());
        });
        assertTrue(Files.readString(bench.made("cards/W02-cutting-list.csv")).lines().filter(row -> row.startsWith("W02/"))
                .allMatch(row -> row.endsWith(",trace,"))); // painted, and no inside curve to be taken out
    }

    @Test
    void aFrameDividesAlongCutlinesNeverThroughAPiece() throws IOException {
        // 12 columns of 50 mm: wider than any frame; paint runs over all of them
        StringBuilder cuts = new StringBuilder("<path d='");
        for (int x = 50; x < 600; x += 50) {
            cuts.append("M%d 0V120".formatted(x));
        }
        bench.bring("W01", WorkBench.svg(600, 120, cuts + "'/>", "<g id='trace'><path d='M0 0L600 120M0 90L600 20' stroke='#000' stroke-width='4'/></g>"));
        MakeResult result = bench.make();
        assertTrue(result.stencils().size() > 1);
        List<String> printed = new ArrayList<>();
        for (MadeStencil stencil : result.stencils()) {
            RasterPlace place = stencil.planned().place();
            for (CutPiece piece : stencil.planned().pieces()) {
                printed.add(piece.label());
                var box = piece.glass().getEnvelopeInternal();
                assertTrue(box.getMinX() >= place.originXMm() && box.getMaxX() <= place.originXMm() + place.widthMm(), piece.label() + " is cut");
                assertTrue(box.getMinY() >= place.originYMm() && box.getMaxY() <= place.originYMm() + place.heightMm(), piece.label() + " is cut");
            }
            assertTrue(place.widthMm() <= stencil.planned().facts().frame().printWidthMm() + 0.5
                    || place.widthMm() <= stencil.planned().facts().frame().printHeightMm() + 0.5, "leaves the frame");
        }
        assertEquals(12, printed.size());
        assertEquals(12, Set.copyOf(printed).size(), "each piece is printed from one stencil");
    }

    @Test
    void aPieceThatNoFrameTakesIsToldAndTheRestIsMade() throws IOException {
        bench.bring("W01", WorkBench.svg(600, 500, "<path d='M0 450H600M150 450V500M300 450V500M450 450V500'/>",
                "<g id='trace'><path d='M10 10H590M10 470H590' stroke='#000' stroke-width='4'/></g>"));
        MakeResult result = bench.make();
        List<Problem> tooLarge = result.problems().stream().filter(problem -> problem.code().equals("piece-too-large")).toList();
        assertEquals(1, tooLarge.size(), result.problems().toString());
        assertTrue(result.needsAttention());
        assertEquals(Set.of("W01/2", "W01/3", "W01/4", "W01/5"), result.stencils().stream().flatMap(s -> s.planned().alike().stream())
                .flatMap(List::stream).collect(Collectors.toSet()));
    }

    @Test
    void aRevisedDrawingKeepsNumbersNotesChoicesAndRecords() throws IOException {
        bench.bring("W01", WorkBench.twoPieces());
        bench.make();
        Map<String, Long> before = records();
        Map<Integer, String> ids = new HashMap<>();
        bench.edit(open -> {
            for (Piece piece : open.window("W01").orElseThrow().getPanels().get(0).getPieces()) {
                ids.put(piece.getNumber(), piece.getId());
                open.records().append(RecordDraft.of(RecordKind.NOTE).using(List.of(piece.getId())).with(Map.of("text", "a seed in no " + piece.getNumber())));
                piece.setGlass(open.studio().getGlass().get(piece.getNumber()));
            }
            open.window("W01").orElseThrow().getPanels().get(0).getLayers().get(0).setBleedMm(3.25);
        });
        // the cut moves by 2 mm and a strip is cut off the right half
        String revised = WorkBench.svg(80, 50, "<path d='M42 0V50M42 6H80'/>", "<g id='matt'><rect x='45' y='5' width='30' height='40' fill='#888'/></g>"
                + "<g id='trace'><path d='M5 10H75' stroke='#000' stroke-width='3'/></g>");
        assertEquals(2, bench.bring("W01", revised).revision());
        bench.look(open -> {
            var panel = open.window("W01").orElseThrow().getPanels().get(0);
            Map<Integer, Piece> now = panel.getPieces().stream().filter(piece -> !piece.isRetired()).collect(Collectors.toMap(Piece::getNumber, p -> p));
            assertEquals(Set.of(1, 2, 3), now.keySet());
            for (int number : new int[] {1, 2}) {
                assertEquals(ids.get(number), now.get(number).getId(), "piece " + number + " is the same piece");
                assertEquals(List.of("a seed in no " + number), notesOn(open, now.get(number)));
                assertEquals(open.studio().getGlass().get(number).getName(), now.get(number).getGlass().getName());
            }
            assertEquals(3.25, panel.getLayers().get(0).getBleedMm());
            assertEquals(2, panel.getArtwork().size(), "the first revision stays");
            try (Stream<Path> files = Files.list(bench.folder.resolve("artwork"))) {
                assertEquals(2, files.count());
            }
        });
        Map<String, Long> after = records();
        before.forEach((kind, count) -> assertTrue(after.get(kind) >= count, kind + " records were lost"));
        assertEquals(before.get("bring") + 1, after.get("bring"));
    }

    private static List<String> notesOn(CommissionFolder open, Piece piece) throws IOException {
        try (RecordReading reading = open.records().read()) {
            return reading.toList().stream().filter(line -> line.kind().equals("note") && line.used().contains(piece.getId()))
                    .map(line -> String.valueOf(line.settings().get("text"))).toList();
        }
    }

    @Test
    void theSameDrawingAgainIsNoRevision() throws IOException {
        bench.bring("W01", WorkBench.twoPieces());
        assertEquals(1, bench.bring("W01", WorkBench.twoPieces()).revision());
    }

    @Test
    void artworkChangedInPlaceIsRefused() throws IOException {
        bench.bring("W01", WorkBench.twoPieces());
        bench.make();
        Map<String, String> before = bench.hashes();
        Path art;
        try (Stream<Path> files = Files.list(bench.folder.resolve("artwork"))) {
            art = files.findFirst().orElseThrow();
        }
        art.toFile().setWritable(true);
        Files.writeString(art, Files.readString(art).replace("#888", "#777"));
        Refusal refusal = assertThrows(Refusal.class, bench::make);
        assertTrue(refusal.getMessage().contains("bring it again"), refusal.getMessage());
        assertEquals(before, bench.hashes());
    }
}
