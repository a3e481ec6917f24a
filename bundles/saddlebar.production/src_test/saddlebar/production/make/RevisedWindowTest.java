package saddlebar.production.make;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;

import saddlebar.cartoon.mend.Mend;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.JoinKind;
import saddlebar.model.commission.JoinRule;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.problem.Problem;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.work.Work;
import saddlebar.production.bring.Brought;
import saddlebar.production.bring.Revised;
import saddlebar.production.check.CommissionStatus;
import saddlebar.production.check.FormerPieces;
import saddlebar.production.facts.FactsReader;
import saddlebar.production.pieces.MendChoice;
import saddlebar.production.record.Deed;
import saddlebar.production.record.DeedBook;

/** The demonstration panel drawn anew: numbers, notes, glass and records go with the pieces. And what else a drawing's cutline is read by. */
class RevisedWindowTest {
    private static final Path DEMO = Path.of("../../demo-projects/first-panel/artwork/first-panel.svg");
    private static final String LEAF = "<path id='leaf' d='M%d %dl9 4-3 11-10-5z'/>";
    private static final Instant DAY = Instant.parse("2026-05-04T09:00:00Z");

    @TempDir
    Path temp;
    private WorkBench bench;

    @BeforeEach
    void layOut() throws IOException {
        bench = new WorkBench(temp);
    }

    private static String demo(String more) throws IOException {
        return Files.readString(DEMO).replace("<title>Cutline</title>", "<title>Cutline</title>" + more);
    }

    /** The piece that a predicate on its label picks out. */
    private static Piece piece(CommissionFolder open, Predicate<Piece> which) {
        return panel(open).getPieces().stream().filter(piece -> !piece.isRetired()).filter(which).findFirst().orElseThrow();
    }

    private static Panel panel(CommissionFolder open) {
        return open.window("W01").orElseThrow().getPanels().get(0);
    }

    private static Predicate<Piece> at(double x, double y) {
        return piece -> Outlines.polygon(piece.getFace()).contains(Outlines.polygon(piece.getFace()).getFactory().createPoint(
                new Coordinate(x, y)));
    }

    private void record(String kind, int piece) throws IOException {
        bench.edit(open -> assertEquals(1, new DeedBook(open, false)
                .enter(List.of(new Deed("test", DAY, kind, "A", Map.of("window", "W01", "piece", String.valueOf(piece), "layer", "matt", "mix", "M07"))), true)
                .records()));
    }

    @Test
    void demonstrationPanelRevised() throws IOException {
        bench.bring("W01", demo(LEAF.formatted(150, 30)));
        Map<String, Integer> first = new HashMap<>();
        int[] numbers = new int[4];
        bench.edit(open -> {
            Piece sky = piece(open, at(20, 20));
            Piece bank = piece(open, at(190, 230));
            Piece besideBank = piece(open, at(120, 240));
            Piece leaf = piece(open, at(152, 36));
            numbers[0] = sky.getNumber();
            numbers[1] = bank.getNumber();
            numbers[2] = besideBank.getNumber();
            numbers[3] = leaf.getNumber();
            sky.setNote("streaks run down");
            bank.setNote("from the old sheet");
            leaf.setNote("cut already");
            GlassStock rare = CommissionFactory.eINSTANCE.createGlassStock();
            rare.setName("the last of it");
            open.studio().getGlass().add(rare);
            sky.setGlass(rare);
            panel(open).getPieces().forEach(piece -> first.put(piece.getId(), piece.getNumber()));
        });
        assertTrue(numbers[1] != numbers[2], "cut-7 parts the bank");
        record("glaze", numbers[0]);
        record("pull", numbers[1]);

        // the sky divided, the bank's joint taken out, the leaf moved
        Brought brought = bench.bring("W01", demo(LEAF.formatted(160, 55) + "<path id='new' d='M46 0L46 74'/>").replaceAll("<path id=\"cut-7\"[^>]*>", ""));

        Revised revised = brought.revised().orElseThrow();
        assertEquals(List.of(numbers[3]), revised.moved());
        assertEquals(1, revised.gone().size(), revised.toString());
        assertEquals(1, revised.fresh().size(), revised.toString());
        int fresh = revised.fresh().get(0);
        Revised.Row divided = revised.became().stream().filter(row -> row.before() == numbers[0] && row.now() == fresh).findFirst().orElseThrow();
        assertTrue(divided.takesOver());
        assertEquals(1, divided.shareOfNow(), 1e-6);
        double shares = revised.became().stream().filter(row -> row.before() == numbers[0]).mapToDouble(Revised.Row::shareOfBefore).sum();
        assertEquals(1, shares, 1e-6, "both parts are told with their shares");
        bench.look(open -> {
            Piece part = piece(open, piece -> piece.getNumber() == fresh);
            Piece sky = piece(open, piece -> piece.getNumber() == numbers[0]);
            assertEquals(List.of(sky), part.getCameFrom());
            assertEquals("Piece " + numbers[0] + ": streaks run down", part.getNote());
            assertEquals("the last of it", part.getGlass().getName());
            int gone = revised.gone().get(0);
            Piece keeper = piece(open, at(150, 245));
            assertEquals(keeper.getNumber() == numbers[1] ? numbers[2] : numbers[1], gone);
            assertEquals(List.of(gone), keeper.getCameFrom().stream().map(Piece::getNumber).toList());
            assertTrue(keeper.getNote().contains("from the old sheet"), keeper.getNote());
            Piece leaf = piece(open, at(162, 61));
            assertEquals(numbers[3], leaf.getNumber());
            assertEquals("cut already", leaf.getNote());
            // every id of the first drawing is still there under its number
            panel(open).getPieces().stream().filter(piece -> first.containsKey(piece.getId()))
                    .forEach(piece -> assertEquals(first.get(piece.getId()), piece.getNumber()));
            assertEquals(List.of(numbers[0], fresh).stream().sorted().toList(), FormerPieces.numbersNow(open.window("W01").orElseThrow(), numbers[0]));
            assertEquals(List.of(keeper.getNumber()), FormerPieces.numbersNow(open.window("W01").orElseThrow(), numbers[1]));
            var states = CommissionStatus.of(open).windows().get(0).pieces();
            assertEquals("glazed", states.stream().filter(piece -> piece.number() == fresh).findFirst().orElseThrow().state(),
                    "the record stands under the former piece");
        });

        // moved as a whole on its page: nothing is new, nothing gone
        Brought shifted = bench.bring("W01", demo(LEAF.formatted(160, 55) + "<path id='new' d='M46 0L46 74'/>").replaceAll("<path id=\"cut-7\"[^>]*>", "")
                .replace("viewBox=\"0 0 200 250\"", "viewBox=\"-60 -40 200 250\""));
        Revised moved = shifted.revised().orElseThrow();
        assertEquals(60, moved.shiftXMm(), 0.01);
        assertEquals(40, moved.shiftYMm(), 0.01);
        assertEquals(List.of(), moved.fresh());
        assertEquals(List.of(), moved.gone());
    }

    // ---- mends

    private static final String GAP = WorkBench.svg(80, 50, "<path id='joint' d='M40 0V47.2'/>", "");

    private List<Mend> proposals(CommissionFolder open) throws IOException {
        var facts = FactsReader.read(open.commission(), open.path(), List.of());
        return bench.making().mends(facts.panels().findFirst().orElseThrow(), Work.UNWATCHED);
    }

    @Test
    void agreedMendIsDoneAtEachMakingAndDroppedWhenTheDrawingIsMended() throws IOException {
        bench.bring("W01", GAP);
        byte[] art = Files.readAllBytes(artwork());
        bench.edit(open -> {
            assertEquals(1, panel(open).getPieces().size());
            List<Mend> found = proposals(open);
            assertEquals(List.of("extend-end"), found.stream().map(mend -> mend.kind().key()).toList());
            MendChoice.accept(panel(open), found);
        });
        bench.make();
        bench.look(open -> {
            assertEquals(2, panel(open).getPieces().stream().filter(piece -> !piece.isRetired()).count());
            assertEquals(List.of(), proposals(open));
        });
        assertTrue(Arrays.equals(art, Files.readAllBytes(artwork())), "the artwork is never touched");
        assertEquals(List.of(), bench.make().made(), "done again, nothing is new");

        Brought mended = bench.bring("W01", GAP.replace("V47.2", "V50"));
        List<Problem> dropped = mended.problems().stream().filter(problem -> problem.code().equals(PieceStep.MEND_DROPPED)).toList();
        assertEquals(1, dropped.size());
        assertEquals(40, dropped.get(0).at().orElseThrow().xMm(), 1e-3);
        bench.look(open -> assertEquals(List.of(), panel(open).getMendings()));
    }

    private Path artwork() throws IOException {
        try (var files = Files.list(bench.folder.resolve("artwork"))) {
            return files.findFirst().orElseThrow();
        }
    }

    // ---- joins, limits, locks

    @Test
    void joinsAndLimitsOfTheModelAreFollowed() throws IOException {
        bench.bring("W01", WorkBench.svg(90, 60, "<path d='M30 0V60M60 0V60'/>", ""));
        bench.edit(open -> {
            JoinRule rule = CommissionFactory.eINSTANCE.createJoinRule();
            rule.setFirst(piece(open, piece -> piece.getNumber() == 2));
            rule.setSecond(piece(open, piece -> piece.getNumber() == 3));
            rule.setJoin(JoinKind.LEAD);
            rule.setGapMm(1.8);
            panel(open).getJoinRules().add(rule);
            panel(open).setEdgeAllowanceMm(2.0);
            GlassStock brittle = CommissionFactory.eINSTANCE.createGlassStock();
            brittle.setName("brittle");
            brittle.setNarrowMm(40.0);
            open.studio().getGlass().add(brittle);
            piece(open, piece -> piece.getNumber() == 1).setGlass(brittle);
        });
        MakeResult made = bench.make();
        bench.look(open -> {
            double gapMm = open.commission().getGapMm();
            assertEquals(30 - 2 - gapMm / 2, Outlines.polygon(piece(open, piece -> piece.getNumber() == 1).getNet()).getEnvelopeInternal().getWidth(), 1e-6);
            assertEquals(30 - gapMm / 2 - 0.9, Outlines.polygon(piece(open, piece -> piece.getNumber() == 2).getNet()).getEnvelopeInternal().getWidth(), 1e-6);
            assertEquals(30 - 2 - 0.9, Outlines.polygon(piece(open, piece -> piece.getNumber() == 3).getNet()).getEnvelopeInternal().getWidth(), 1e-6);
        });
        assertEquals(List.of("W01 piece 1"), made.problems().stream().filter(problem -> problem.code().equals("narrow")).map(Problem::where).toList());
    }

    @Test
    void lockedPieceKeepsItsNumberAndIsTold() throws IOException {
        bench.bring("W01", WorkBench.svg(90, 60, "<path d='M45 0V60'/>", ""));
        bench.edit(open -> piece(open, piece -> piece.getNumber() == 2).setLocked(true));
        Brought brought = bench.bring("W01", WorkBench.svg(90, 60, "<path d='M45 0V60M45 30H90'/>", ""));
        assertEquals(List.of(), brought.revised().orElseThrow().gone());
        assertTrue(brought.problems().stream().anyMatch(problem -> problem.code().equals("locked-changed") && problem.where().contains("piece 2")));
    }

    @Test
    void longPaintedPieceIsToldOnce() throws IOException {
        String strip = WorkBench.svg(160, 60, "<path d='M0 45H160'/>", "<g id='trace'><path d='M5 52H150' stroke='#000' stroke-width='3'/></g>");
        bench.bring("W01", strip);
        MakeResult made = bench.make();
        List<Problem> told = made.problems().stream().filter(problem -> problem.code().equals(LongPieces.LONG_PAINTED)).toList();
        assertEquals(List.of("W01/2"), told.stream().map(Problem::where).toList());
        assertTrue(told.get(0).message().contains("160 mm long"), told.get(0).message());
    }
}
