package saddlebar.cartoon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.PlaceMm;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.problem.Severity;
import saddlebar.model.work.Work;

/** What lines can do wrong, and what is refused. */
class CutlineLinesTest {
    private static final DrawnLine FRAME = Drawings.rectangle("frame", 0, 0, 200, 100);
    private static final DrawnLine MIDDLE = Drawings.line("middle", 100, 0, 100, 100);

    private static Problem only(Cartoon cartoon, String code) {
        List<Problem> found = Drawings.problems(cartoon, code);
        assertEquals(1, found.size(), cartoon.problems().toString());
        return found.get(0);
    }

    private static void assertAt(double x, double y, Problem problem) {
        assertEquals(new PlaceMm(x, y), problem.at().orElseThrow());
    }

    @Test
    void openEndInTheMiddleOfAPiece() {
        Cartoon cartoon = Drawings.make(FRAME, MIDDLE, new DrawnLine("stray", 17, new double[] {100, 50, 160, 50}, false));
        Problem open = only(cartoon, CutlineProblems.OPEN_END);
        assertAt(160, 50, open);
        assertEquals(Severity.ERROR, open.severity());
        assertEquals("line 17, element stray", open.where());
        Problem inside = only(cartoon, CutlineProblems.CUT_ENDS_INSIDE);
        assertEquals("piece 2", inside.where());
        assertEquals(List.of(CutlineProblems.CUT_ENDS_INSIDE, CutlineProblems.OPEN_END), cartoon.piece(2).orElseThrow().problems());
        assertEquals(List.of(), cartoon.piece(1).orElseThrow().problems());
        assertEquals(2, cartoon.pieces().size());
        assertEquals(open, cartoon.problems().get(0), "worst first");
    }

    @ParameterizedTest
    @CsvSource({"0.3, 0.3 mm short", "2, 2.0 mm short", "4.5, 4.5 mm short"})
    void endThatStopsShortTellsTheDistance(double missing, String words) {
        Cartoon cartoon = Drawings.make(FRAME, Drawings.line("short", 100, 0, 100, 100 - missing));
        assertEquals(1, cartoon.pieces().size());
        Problem open = only(cartoon, CutlineProblems.OPEN_END);
        assertAt(100, 100 - missing, open);
        assertTrue(open.message().contains(words), open.message());
    }

    @Test
    void endAHairShortIsCarriedOn() {
        Cartoon cartoon = Drawings.make(FRAME, Drawings.line("short", 100, 0, 100, 99.96), Drawings.line("short too", 0.04, 50, 99.97, 50));
        assertEquals(List.of(), Drawings.problems(cartoon, CutlineProblems.OPEN_END));
        assertEquals(3, cartoon.pieces().size());
        Cartoon strict = CartoonMaker.make(List.of(FRAME, Drawings.line("short", 100, 0, 100, 99.96)),
                CartoonSettings.defaults().withMending(0.5, 0, 0.05), Work.UNWATCHED);
        assertEquals(1, strict.pieces().size());
    }

    /** Nearest is a corner of the other line: the end goes to that corner and nowhere else. */
    @Test
    void endAHairShortOfACornerIsCarriedOnToIt() {
        Cartoon cartoon = Drawings.make(Drawings.rectangle("left", 0, 0, 50, 50), Drawings.rectangle("below", 50, 50, 50, 50),
                Drawings.line("around", 50, 0, 100, 0, 100, 49.96));
        assertEquals(3, cartoon.pieces().size());
        cartoon.pieces().forEach(piece -> assertEquals(2500, piece.areaMm2(), 1e-6));
    }

    @ParameterizedTest
    @CsvSource({"0.2, false", "0.49, false", "0.6, true", "3, true"})
    void endPastACrossing(double beyond, boolean told) {
        Cartoon cartoon = Drawings.make(FRAME, Drawings.line("long", 100, 0, 100, 60 + beyond), Drawings.line("across", 0, 60, 200, 60));
        assertEquals(3, cartoon.pieces().size());
        assertEquals(List.of(), Drawings.problems(cartoon, CutlineProblems.OPEN_END));
        assertEquals(told ? 1 : 0, Drawings.problems(cartoon, CutlineProblems.CROSSING_END).size());
        if (told) {
            assertAt(100, 60 + beyond, only(cartoon, CutlineProblems.CROSSING_END));
        }
    }

    @Test
    void endFarPastACrossingIsOpen() {
        Cartoon cartoon = Drawings.make(FRAME, Drawings.line("long", 100, 0, 100, 85), Drawings.line("across", 0, 60, 200, 60));
        assertAt(100, 85, only(cartoon, CutlineProblems.OPEN_END));
    }

    @Test
    void looseLineIsToldOnce() {
        Cartoon cartoon = Drawings.make(FRAME, MIDDLE, Drawings.line("loose", 120, 30, 170, 30));
        assertTrue(only(cartoon, CutlineProblems.OPEN_END).message().contains("50 mm meets no other line"));
        assertEquals(List.of(), Drawings.problems(cartoon, CutlineProblems.CUT_ENDS_INSIDE));
    }

    @Test
    void bridgeDividesNothing() {
        Cartoon cartoon = Drawings.make(FRAME, Drawings.circle("round", 100, 50, 30), Drawings.line("bridge", 0, 50, 70, 50));
        assertEquals("element bridge", only(cartoon, CutlineProblems.DIVIDES_NOTHING).where());
        assertEquals(2, cartoon.pieces().size());
        assertTrue(cartoon.piece(1).orElseThrow().problems().containsAll(List.of(CutlineProblems.DIVIDES_NOTHING, CutlineProblems.HOLE)));
    }

    @Test
    void pieceInAPiece() {
        Cartoon cartoon = Drawings.make(FRAME, Drawings.rectangle("inner", 50, 20, 60, 50), Drawings.rectangle("innermost", 60, 30, 10, 10));
        assertEquals(3, cartoon.pieces().size());
        assertEquals(200 * 100 - 60 * 50, cartoon.pieces().stream().mapToDouble(CartoonPiece::areaMm2).max().orElseThrow(), 1e-9);
        assertEquals(3, cartoon.euler().c());
        Soundness.assertSound(cartoon);
    }

    @Test
    void namedOutline() {
        List<DrawnLine> drawing = List.of(Drawings.circle("round", 100, 100, 80), Drawings.line("v", 100, 0, 100, 200),
                Drawings.line("h", 0, 100, 200, 100), Drawings.rectangle("swatch", 220, 0, 20, 20));
        Cartoon all = Drawings.make(drawing);
        assertEquals(5, all.pieces().size());
        only(all, CutlineProblems.PANEL_APART);
        Cartoon round = CartoonMaker.make(drawing, CartoonSettings.defaults().withOutline("round"), Work.UNWATCHED);
        assertEquals(4, round.pieces().size());
        assertAt(230, 10, only(round, CutlineProblems.PIECE_OUTSIDE));
        assertEquals(Math.PI * 80 * 80, round.panelAreaMm2(), 0.01 * 2 * Math.PI * 80);
        Soundness.assertSound(round);
        Refusal noSuch = assertThrows(Refusal.class,
                () -> CartoonMaker.make(drawing, CartoonSettings.defaults().withOutline("rund"), Work.UNWATCHED));
        assertEquals("element rund", noSuch.where());
        assertThrows(Refusal.class, () -> CartoonMaker.make(drawing, CartoonSettings.defaults().withOutline("v"), Work.UNWATCHED));
    }

    /** An outline with a hole in it: the hole is no piece, but it is a face of the count. */
    @Test
    void regionLeftOutInTheMiddle() {
        List<DrawnLine> drawing = List.of(Drawings.line("o1", 0, 0, 90, 0, 90, 90, 0, 90, 0, 0),
                Drawings.line("o", 30, 30, 60, 30, 60, 60, 30, 60, 30, 30),
                Drawings.line("a", 0, 0, 30, 30), Drawings.line("b", 90, 90, 60, 60));
        Cartoon cartoon = Drawings.make(drawing);
        assertEquals(3, cartoon.pieces().size());
        Cartoon middle = CartoonMaker.make(drawing, CartoonSettings.defaults().withOutline("o"), Work.UNWATCHED);
        assertEquals(1, middle.pieces().size());
        assertEquals(2, Drawings.problems(middle, CutlineProblems.PIECE_OUTSIDE).size());
        Soundness.assertSound(middle);
    }

    @Test
    void doubledLineIsANote() {
        Cartoon cartoon = Drawings.make(FRAME, MIDDLE, Drawings.line("again", 100, 20, 100, 70));
        Problem doubled = only(cartoon, CutlineProblems.DOUBLED_LINE);
        assertEquals(Severity.NOTE, doubled.severity());
        assertTrue(doubled.message().contains("50 mm"), doubled.message());
        assertEquals(2, cartoon.pieces().size());
    }

    /** Shapes side by side double every joint: one note for all of them. */
    @Test
    void shapesSideBySide() {
        List<DrawnLine> tiles = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            for (int k = 0; k < 6; k++) {
                tiles.add(Drawings.rectangle("tile " + i + " " + k, 50 * i, 50 * k, 50, 50));
            }
        }
        Cartoon cartoon = Drawings.make(tiles);
        assertEquals(36, cartoon.pieces().size());
        assertTrue(only(cartoon, CutlineProblems.DOUBLED_LINE).message().contains("60 places"));
        assertEquals(30 * 30 * 100, cartoon.panelAreaMm2(), 1e-6);
        Soundness.assertSound(cartoon);
    }

    @Test
    void refusals() {
        Refusal empty = assertThrows(Refusal.class, () -> Drawings.make(List.of()));
        assertTrue(empty.getMessage().contains("no line"), empty.getMessage());
        assertThrows(Refusal.class, () -> Drawings.make(Drawings.line("dot", 5, 5, 5, 5)));
        Refusal open = assertThrows(Refusal.class, () -> Drawings.make(Drawings.line("a", 0, 0, 100, 0), Drawings.line("b", 0, 50, 100, 50)));
        assertTrue(open.getMessage().contains("none of its 2 lines closes a piece"), open.getMessage());
        Refusal far = assertThrows(Refusal.class, () -> Drawings.make(FRAME, new DrawnLine("far", 8, new double[] {0, 0, 1e300, 5}, false)));
        assertEquals("line 8, element far", far.where());
    }

    @Test
    void stopsWhenAsked() {
        var stopped = new Work() {
            private int asked;

            @Override
            public void advance(long units) {
                // not looked at here
            }

            @Override
            public synchronized void checkpoint() {
                if (++asked > 40) {
                    throw new CancellationException();
                }
            }
        };
        List<DrawnLine> cells = Drawings.cells(8, 400, 400, 8, 0.2, 3);
        assertThrows(CancellationException.class,
                () -> CartoonMaker.make(cells, CartoonSettings.defaults(), stopped));
    }

    @Test
    void tellsAllItsUnits() {
        long[] told = new long[1];
        var counting = new Work() {
            @Override
            public synchronized void advance(long units) {
                told[0] += units;
            }

            @Override
            public void checkpoint() {
                // never stopped
            }
        };
        CartoonMaker.make(List.of(FRAME, MIDDLE), CartoonSettings.defaults(), counting);
        assertEquals(CartoonRun.UNITS, told[0]);
    }
}
