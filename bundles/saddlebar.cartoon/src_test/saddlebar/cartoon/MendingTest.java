package saddlebar.cartoon;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

import saddlebar.cartoon.mend.LineChange;
import saddlebar.cartoon.mend.Mend;
import saddlebar.cartoon.mend.MendKind;
import saddlebar.cartoon.mend.MendSettings;
import saddlebar.cartoon.mend.MendedCutline;
import saddlebar.cartoon.mend.Mending;
import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.PlaceMm;
import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;

/** Proposals to mend a cutline, and what comes of them when pieces are made. */
class MendingTest {
    private static final DrawnLine FRAME = Drawings.rectangle("frame", 0, 0, 200, 100);
    private static final MendSettings SETTINGS = MendSettings.defaults();

    private static List<Mend> propose(DrawnLine... lines) {
        return Mending.propose(List.of(lines), SETTINGS, Work.UNWATCHED);
    }

    private static Mend only(DrawnLine... lines) {
        List<Mend> mends = propose(lines);
        assertEquals(1, mends.size(), mends.toString());
        return mends.get(0);
    }

    private static MendedCutline all(List<DrawnLine> lines) {
        return Mending.acceptAll(lines, SETTINGS, Work.UNWATCHED);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.06, 0.3, 2, 4.9})
    void shortEndIsCarriedOn(double missing) {
        DrawnLine line = Drawings.line("short", 100, 0, 100, 100 - missing);
        Mend mend = only(FRAME, line);
        assertEquals(MendKind.EXTEND_END, mend.kind());
        assertEquals(CutlineProblems.OPEN_END, mend.kind().problemCode());
        assertEquals(new PlaceMm(100, 100 - missing), mend.at());
        LineChange change = mend.changes().get(0);
        assertEquals(1, change.index());
        assertEquals(line, change.before());
        assertArrayEquals(new double[] {100, 0, 100, 100 - missing, 100, 100}, change.after().get(0).xy(), 1e-9);
        Cartoon cartoon = Drawings.make(Mending.accept(List.of(FRAME, line), mend).lines());
        assertEquals(2, cartoon.pieces().size());
        assertEquals(List.of(), Drawings.problems(cartoon, CutlineProblems.OPEN_END));
    }

    @Test
    void straightOnRatherThanToTheNearestPoint() {
        Mend mend = only(FRAME, Drawings.line("slanting", 80, 0, 100, 97));
        assertEquals(MendKind.EXTEND_END, mend.kind());
        assertEquals(100 + 3 * 20 / 97.0, mend.changes().get(0).after().get(0).x(2), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"0.06,0", "0.4,0", "0.6,1", "4,1", "6,1"})
    void endPastACrossing(double beyond, int proposals) {
        List<DrawnLine> lines = List.of(FRAME, Drawings.line("long", 100, 0, 100, 60 + beyond), Drawings.line("across", 0, 60, 200, 60));
        List<Mend> mends = Mending.propose(lines, SETTINGS, Work.UNWATCHED);
        boolean far = beyond > SETTINGS.trimMm();
        assertEquals(far ? 0 : proposals, mends.size());
        if (!mends.isEmpty()) {
            assertEquals(MendKind.TRIM_END, mends.get(0).kind());
            assertEquals(CutlineProblems.CROSSING_END, mends.get(0).kind().problemCode());
            Cartoon cartoon = Drawings.make(all(lines).lines());
            assertEquals(3, cartoon.pieces().size());
            assertEquals(List.of(), Drawings.problems(cartoon, CutlineProblems.CROSSING_END));
        }
    }

    @Test
    void nearEndsMoveTogether() {
        DrawnLine left = Drawings.line("left", 0, 50, 99.8, 50);
        DrawnLine right = Drawings.line("right", 100.2, 50.3, 200, 50);
        Mend mend = only(FRAME, left, right);
        assertEquals(MendKind.SNAP_ENDS, mend.kind());
        assertEquals(100, mend.at().xMm(), 1e-9);
        assertEquals(2, mend.changes().size());
        assertEquals(left, mend.changes().get(0).before());
        assertEquals(2, Drawings.make(Mending.accept(List.of(FRAME, left, right), mend).lines()).pieces().size());
    }

    @Test
    void smallGapIsJoined() {
        DrawnLine left = Drawings.line("left", 0, 50, 98, 50);
        DrawnLine right = Drawings.line("right", 101, 50, 200, 50);
        Mend mend = only(FRAME, left, right);
        assertEquals(MendKind.JOIN_GAP, mend.kind());
        assertTrue(mend.message().contains("3.00 mm"), mend.message());
        assertEquals(2, Drawings.make(Mending.accept(List.of(FRAME, left, right), mend).lines()).pieces().size());
    }

    /** Two sides that both stop short of their corner: the corner is drawn, not cut off. */
    @Test
    void gapAtACornerIsJoinedRoundIt() {
        DrawnLine across = Drawings.line("across", 0, 50, 98, 50);
        DrawnLine down = Drawings.line("down", 100, 52, 100, 100);
        Mend mend = only(FRAME, across, down);
        assertEquals(MendKind.JOIN_GAP, mend.kind());
        assertArrayEquals(new double[] {0, 50, 98, 50, 100, 50, 100, 52}, mend.changes().get(0).after().get(0).xy(), 1e-9);
        Cartoon cartoon = Drawings.make(Mending.accept(List.of(FRAME, across, down), mend).lines());
        assertEquals(100 * 50, cartoon.pieces().stream().mapToDouble(CartoonPiece::areaMm2).min().orElseThrow(), 1e-6);
    }

    /** Ends side by side that look the same way, or with a line between them, are not joined. */
    @Test
    void endsThatDoNotLookAtEachOtherAreLeftAlone() {
        assertEquals(List.of(), propose(FRAME, Drawings.line("a", 0, 40, 100, 40), Drawings.line("b", 0, 43, 100, 43)));
        List<Mend> mends = propose(FRAME, Drawings.line("wall", 100, 0, 100, 100), Drawings.line("a", 0, 40, 98, 40), Drawings.line("b", 200, 40, 102,
                40));
        assertTrue(mends.stream().allMatch(mend -> mend.kind() == MendKind.EXTEND_END), mends.toString());
        assertEquals(2, mends.size());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 3})
    void strokeThatNearlyClosesBecomesARing(double gap) {
        DrawnLine ring = Drawings.line("ring", 100 + gap / 2, 20, 150, 20, 150, 80, 50, 80, 50, 20, 100 - gap / 2, 20);
        Mend mend = only(FRAME, ring);
        assertTrue(mend.changes().get(0).after().get(0).closed());
        assertEquals(2, Drawings.make(Mending.accept(List.of(FRAME, ring), mend).lines()).pieces().size());
    }

    @Test
    void doubledLineIsTakenOut() {
        DrawnLine middle = Drawings.line("middle", 100, 0, 100, 100);
        Mend whole = only(FRAME, middle, Drawings.line("again", 100, 20, 100.02, 70));
        assertEquals(MendKind.REMOVE_DOUBLED, whole.kind());
        assertEquals(List.of(), whole.changes().get(0).after());
        assertEquals("element again", whole.where());
        Mend later = only(FRAME, middle, Drawings.line("same", 100, 100, 100, 0));
        assertEquals("element same", later.where(), "of two equal lines the one drawn later goes");
    }

    @Test
    void doubledStretchIsTakenOut() {
        DrawnLine bent = Drawings.line("bent", 100, 60, 100, 80, 150, 80, 150, 100);
        List<DrawnLine> lines = List.of(FRAME, Drawings.line("middle", 100, 0, 100, 100), Drawings.line("far", 150, 0, 150, 100), bent);
        MendedCutline mended = all(lines);
        assertEquals(1, mended.done().size(), mended.done().toString());
        assertEquals(1, mended.done().get(0).changes().get(0).after().size());
        DrawnLine left = mended.lines().get(3);
        assertEquals(80, left.y(0), 0.05);
        Cartoon cartoon = Drawings.make(mended.lines());
        assertEquals(4, cartoon.pieces().size());
        assertEquals(List.of(), cartoon.problems().stream().filter(p -> p.code().equals(CutlineProblems.DOUBLED_LINE)
                || p.code().equals(CutlineProblems.OPEN_END)).toList());
    }

    /** Tiles side by side: every shared side goes once, the pieces stay. */
    @Test
    void shapesSideBySide() {
        List<DrawnLine> tiles = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            for (int k = 0; k < 4; k++) {
                tiles.add(Drawings.rectangle("tile " + i + " " + k, 50 * i, 50 * k, 50, 50));
            }
        }
        MendedCutline mended = all(tiles);
        Cartoon cartoon = Drawings.make(mended.lines());
        assertEquals(16, cartoon.pieces().size());
        assertEquals(List.of(), Drawings.problems(cartoon, CutlineProblems.DOUBLED_LINE));
        assertEquals(List.of(), Drawings.problems(cartoon, CutlineProblems.OPEN_END));
        Soundness.assertSound(cartoon);
    }

    private static List<DrawnLine> grid(Random random, boolean spoil) {
        List<DrawnLine> lines = new ArrayList<>(List.of(FRAME));
        for (int i = 1; i < 5; i++) {
            lines.add(spoiled("v" + i, 40 * i, 0, 40 * i, 100, random, spoil));
        }
        for (int k = 1; k < 3; k++) {
            lines.add(spoiled("h" + k, 0, 33 * k, 200, 33 * k, random, spoil));
        }
        return lines;
    }

    /** A line from edge to edge whose ends are too short, too long, or whose middle has a gap. */
    private static DrawnLine spoiled(String id, double x1, double y1, double x2, double y2, Random random, boolean spoil) {
        double length = Math.hypot(x2 - x1, y2 - y1);
        double ux = (x2 - x1) / length;
        double uy = (y2 - y1) / length;
        double before = spoil ? 8 * random.nextDouble() - 4 : 0;
        double after = spoil ? 8 * random.nextDouble() - 4 : 0;
        return Drawings.line(id, x1 - before * ux, y1 - before * uy, x2 + after * ux, y2 + after * uy);
    }

    /**
     * However the ends of a grid are spoiled by up to 4 mm, all mends together give its fifteen pieces back; nothing is left to propose, and the
     * agreed keys do the same again.
     */
    @Property(tries = 150)
    void spoiledGridIsMended(@ForAll @IntRange(min = 0, max = 1_000_000) int seed) {
        List<DrawnLine> drawn = grid(new Random(seed), true);
        MendedCutline mended = all(drawn);
        Cartoon cartoon = Drawings.make(mended.lines());
        assertEquals(15, cartoon.pieces().size());
        assertTrue(cartoon.problems().stream().noneMatch(p -> p.code().equals(CutlineProblems.OPEN_END)
                || p.code().equals(CutlineProblems.CROSSING_END)), cartoon.problems().toString());
        assertEquals(List.of(), Mending.propose(mended.lines(), SETTINGS, Work.UNWATCHED));
        List<DrawnLine> fresh = grid(new Random(seed), true);
        for (int i = 0; i < drawn.size(); i++) {
            assertArrayEquals(fresh.get(i).xy(), drawn.get(i).xy(), "the drawing stays");
        }
        List<String> keys = mended.done().stream().map(Mend::key).toList();
        assertEquals(keys.size(), new HashSet<>(keys).size(), "keys are told apart");
        MendedCutline again = Mending.acceptAgain(grid(new Random(seed), true), keys, SETTINGS, Work.UNWATCHED);
        assertEquals(List.of(), again.undone());
        assertEquals(mended.lines().size(), again.lines().size());
        for (int i = 0; i < mended.lines().size(); i++) {
            assertArrayEquals(mended.lines().get(i).xy(), again.lines().get(i).xy());
        }
    }

    @Property(tries = 20)
    void cleanDrawingsNeedNothing(@ForAll @IntRange(min = 0, max = 9999) int seed) {
        List<DrawnLine> cells = Drawings.cells(12, 300, 200, 8, 0.2, seed);
        assertTrue(Mending.propose(cells, SETTINGS, Work.UNWATCHED).stream().allMatch(mend -> mend.kind() == MendKind.REMOVE_DOUBLED));
        assertEquals(List.of(), Mending.propose(grid(new Random(seed), false), SETTINGS, Work.UNWATCHED));
    }

    /** Proposing changes nothing, and a proposal that no longer fits is refused. */
    @Test
    void nothingIsChangedSilently() {
        DrawnLine line = Drawings.line("short", 100, 0, 100, 98);
        List<DrawnLine> lines = List.of(FRAME, line);
        Mend mend = Mending.propose(lines, SETTINGS, Work.UNWATCHED).get(0);
        assertArrayEquals(new double[] {100, 0, 100, 98}, line.xy());
        MendedCutline once = Mending.accept(lines, mend);
        assertArrayEquals(new double[] {100, 0, 100, 98}, lines.get(1).xy());
        assertThrows(Refusal.class, () -> Mending.accept(once.lines(), mend));
        MendedCutline gone = Mending.acceptAgain(List.of(FRAME), List.of(mend.key()), SETTINGS, Work.UNWATCHED);
        assertEquals(List.of(mend.key()), gone.undone());
        assertFalse(once.lines().equals(lines));
    }

    /** A line left loose in the middle of glass, and an end far from everything, are no business of mending. */
    @Test
    void whatCannotBeGuessedIsLeft() {
        assertEquals(List.of(), propose(FRAME, Drawings.line("loose", 60, 50, 140, 50)));
        assertEquals(List.of(), propose(FRAME, Drawings.line("half", 100, 0, 100, 50)));
        assertEquals(List.of(), Mending.propose(List.of(), SETTINGS, Work.UNWATCHED));
    }
}
