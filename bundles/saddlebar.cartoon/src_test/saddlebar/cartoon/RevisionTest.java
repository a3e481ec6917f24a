package saddlebar.cartoon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;

import org.junit.jupiter.api.Test;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.work.Work;

/** What became of the pieces when a drawing was revised. */
class RevisionTest {
    private static final double ROUNDING = 1e-6;

    private static List<NumberedFace> numbered(Cartoon cartoon) {
        return cartoon.pieces().stream().map(piece -> new NumberedFace(piece.number(), piece.face())).toList();
    }

    private static Cartoon revised(Cartoon before, List<DrawnLine> drawing) {
        return CartoonMaker.make(drawing, CartoonSettings.defaults(), numbered(before), 1, Work.UNWATCHED);
    }

    private static List<DrawnLine> moved(List<DrawnLine> drawing, double dx, double dy) {
        return drawing.stream().map(line -> {
            double[] xy = line.xy();
            for (int i = 0; i < xy.length; i += 2) {
                xy[i] += dx;
                xy[i + 1] += dy;
            }
            return new DrawnLine(line.element(), line.line(), xy, line.closed());
        }).toList();
    }

    @Test
    void sharesOfADividedPiece() {
        Cartoon first = Drawings.make(Drawings.rectangle("frame", 0, 0, 100, 40), Drawings.line("joint", 60, 0, 60, 40));
        Cartoon second = revised(first, List.of(Drawings.rectangle("frame", 0, 0, 100, 40), Drawings.line("joint", 60, 0, 60, 40),
                Drawings.line("new", 0, 10, 60, 10)));
        Revision revision = second.revision().orElseThrow();
        assertEquals(List.of(1, 2), revision.kept());
        assertEquals(List.of(3), revision.fresh());
        List<Became> changes = revision.changes();
        assertEquals(2, changes.size());
        assertEquals(new Became(1, 1, 0.75, 1), rounded(changes.get(0)));
        assertEquals(new Became(1, 3, 0.25, 1), rounded(changes.get(1)));
        assertTrue(changes.get(1).inherits());
        assertTrue(!changes.get(0).inherits(), "the piece that keeps its number has its records under it");
    }

    private static Became rounded(Became one) {
        return new Became(one.before(), one.now(), Math.rint(one.shareOfBefore() * 1e6) / 1e6, Math.rint(one.shareOfNow() * 1e6) / 1e6);
    }

    @Test
    void mergedPieceInheritsFromTheOneThatIsGone() {
        Cartoon first = Drawings.make(Drawings.rectangle("frame", 0, 0, 100, 40), Drawings.line("joint", 60, 0, 60, 40));
        Cartoon second = revised(first, List.of(Drawings.rectangle("frame", 0, 0, 100, 40)));
        Revision revision = second.revision().orElseThrow();
        assertEquals(List.of(2), revision.gone());
        assertEquals(List.of(new Became(1, 1, 1, 0.6), new Became(2, 1, 1, 0.4)), revision.changes().stream().map(RevisionTest::rounded).toList());
        assertEquals(List.of(false, true), revision.changes().stream().map(Became::inherits).toList());
    }

    @Test
    void movedJointInheritsNothing() {
        Cartoon first = Drawings.make(Drawings.rectangle("frame", 0, 0, 100, 40), Drawings.line("joint", 50, 0, 50, 40));
        Cartoon second = revised(first, List.of(Drawings.rectangle("frame", 0, 0, 100, 40), Drawings.line("joint", 65, 0, 65, 40)));
        Revision revision = second.revision().orElseThrow();
        assertEquals(List.of(1, 2), revision.kept());
        assertTrue(revision.became().stream().noneMatch(Became::inherits), revision.became().toString());
    }

    @Test
    void pieceTakenElsewhereKeepsItsNumber() {
        List<DrawnLine> frame = List.of(Drawings.rectangle("frame", 0, 0, 300, 100));
        List<DrawnLine> here = new ArrayList<>(frame);
        here.add(Drawings.closed("leaf", 20, 20, 50, 30, 40, 60, 15, 50));
        List<DrawnLine> there = new ArrayList<>(frame);
        there.add(Drawings.closed("leaf", 220, 25, 250, 35, 240, 65, 215, 55));
        Cartoon first = Drawings.make(here);
        int leaf = first.pieces().stream().filter(piece -> piece.face().getNumInteriorRing() == 0).findFirst().orElseThrow().number();
        Cartoon second = revised(first, there);
        assertEquals(List.of(leaf), second.revision().orElseThrow().moved());
        assertEquals(List.of(), second.revision().orElseThrow().gone());
        assertEquals(1, Drawings.problems(second, CutlineProblems.PIECE_MOVED).size());
    }

    @Test
    void lockedPieceKeepsItsNumberOnItsLargestPart() {
        List<NumberedFace> before = List.of(new NumberedFace(4, Drawings.polygon("POLYGON ((0 0, 100 0, 100 10, 0 10, 0 0))"), true));
        KeptNumbers kept = KeptNumbers.of(before, List.of(Drawings.polygon("POLYGON ((0 0, 30 0, 30 10, 0 10, 0 0))"),
                Drawings.polygon("POLYGON ((30 0, 70 0, 70 10, 30 10, 30 0))"), Drawings.polygon("POLYGON ((70 0, 100 0, 100 10, 70 10, 70 0))")), 12);
        assertEquals(List.of(12, 4, 13), kept.numbers());
        assertEquals(List.of(), kept.gone());
    }

    /** A drawing that was moved as a whole keeps every number, on its own piece. */
    @Property(tries = 15)
    void movedDrawingKeepsNumbers(@ForAll @LongRange(min = 0, max = 100_000) long seed, @ForAll @DoubleRange(min = -400, max = 400) double dx,
            @ForAll @DoubleRange(min = -400, max = 400) double dy) {
        List<DrawnLine> drawing = moved(Drawings.cells(5, 300, 300, 6, 0.3, seed), 500, 500);
        Cartoon first = Drawings.make(drawing);
        Cartoon second = revised(first, moved(drawing, dx, dy));
        assertEquals(List.of(), second.revision().orElseThrow().fresh());
        for (CartoonPiece piece : first.pieces()) {
            CartoonPiece same = second.piece(piece.number()).orElseThrow();
            assertEquals(piece.label().xMm() + dx, same.label().xMm(), 0.5 + 0.02 * piece.inradiusMm());
            assertEquals(piece.areaMm2(), same.areaMm2(), 0.5);
        }
    }

    /** However the lines are bent: shares of an old piece and of a new one each add up to one, and no number is given twice. */
    @Property(tries = 15)
    void sharesAddUp(@ForAll @LongRange(min = 0, max = 100_000) long seed) {
        Cartoon first = Drawings.make(Drawings.cells(4, 200, 200, 6, 0.3, seed));
        Cartoon second = revised(first, Drawings.cells(4, 200, 200, 6, 0.3, seed + 1));
        Revision revision = second.revision().orElseThrow();
        assertEquals(second.pieces().size(), revision.kept().size() + revision.fresh().size());
        assertEquals(first.pieces().size(), revision.kept().size() + revision.gone().size());
        Map<Integer, Double> before = new HashMap<>();
        Map<Integer, Double> now = new HashMap<>();
        revision.became().forEach(one -> {
            before.merge(one.before(), one.shareOfBefore(), Double::sum);
            now.merge(one.now(), one.shareOfNow(), Double::sum);
        });
        before.values().forEach(share -> assertTrue(share <= 1 + ROUNDING, before.toString()));
        now.values().forEach(share -> assertTrue(share <= 1 + ROUNDING, now.toString()));
        // nothing is left out but overlaps below a tenth of both
        first.pieces().forEach(piece -> assertTrue(before.getOrDefault(piece.number(), 0.0) > 0.5, "piece " + piece.number() + " " + before));
    }
}
