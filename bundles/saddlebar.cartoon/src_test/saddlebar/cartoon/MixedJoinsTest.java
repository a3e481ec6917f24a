package saddlebar.cartoon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.work.Work;

/** Foil and lead in one panel, limits by glass, touching points, proposals against deep curves: closed forms. */
class MixedJoinsTest {
    private static final Join FOIL = Join.gap(0.8);
    private static final Join LEAD = Join.came(1.8);
    /** A frame of 90 x 60 with joints at 30 and 60: pieces 1, 2, 3 from the left. */
    private static final List<DrawnLine> THREE = List.of(Drawings.rectangle("frame", 0, 0, 90, 60), Drawings.line("foiled", 30, 0, 30, 60),
            Drawings.line("leaded", 60, 0, 60, 60));

    private static Cartoon make(List<DrawnLine> lines, CartoonSettings settings, List<NumberedFace> before) {
        return CartoonMaker.make(lines, settings, before, 1, Work.UNWATCHED);
    }

    private static double width(Cartoon cartoon, int piece) {
        Envelope box = cartoon.piece(piece).orElseThrow().glass().getEnvelopeInternal();
        return box.getWidth();
    }

    @Test
    void gapByTheLineThatIsDrawn() {
        CartoonSettings settings = CartoonSettings.defaults().withJoin(FOIL).withLocalJoins(List.of(LocalJoin.alongLines(LEAD, 2, 3)));
        Cartoon cartoon = make(THREE, settings, List.of());
        assertEquals(30 - 0.4, width(cartoon, 1), 1e-9);
        assertEquals(30 - 0.4 - 0.9, width(cartoon, 2), 1e-9);
        assertEquals(30 - 0.9, width(cartoon, 3), 1e-9);
        assertEquals(60, cartoon.piece(1).orElseThrow().glass().getEnvelopeInternal().getHeight(), 1e-9);
        assertEquals(List.of(new JoinLength(FOIL, 60), new JoinLength(LEAD, 60)), cartoon.joints());
    }

    @Test
    void gapByThePiecesThatMeet() {
        Cartoon first = make(THREE, CartoonSettings.defaults().withJoin(FOIL), List.of());
        List<NumberedFace> before = first.pieces().stream().map(piece -> new NumberedFace(piece.number(), piece.face())).toList();
        CartoonSettings pair = CartoonSettings.defaults().withJoin(FOIL).withLocalJoins(List.of(LocalJoin.ofPieces(LEAD, 2, 1)));
        Cartoon second = make(THREE, pair, before);
        assertEquals(30 - 0.9, width(second, 1), 1e-9);
        assertEquals(30 - 0.9 - 0.4, width(second, 2), 1e-9);
        assertEquals(30 - 0.4, width(second, 3), 1e-9);
        CartoonSettings all = CartoonSettings.defaults().withJoin(FOIL).withLocalJoins(List.of(LocalJoin.ofPieces(LEAD, 2, 0)));
        assertEquals(30 - 1.8, width(make(THREE, all, before), 2), 1e-9);
        // what names pieces counts before what names lines
        CartoonSettings both = CartoonSettings.defaults().withJoin(FOIL)
                .withLocalJoins(List.of(LocalJoin.ofPieces(FOIL, 2, 3), LocalJoin.alongLines(LEAD, 2, 3)));
        assertEquals(30 - 0.4, width(make(THREE, both, before), 3), 1e-9);
    }

    @Test
    void limitsOfAGlassHoldForItsPieces() {
        List<DrawnLine> strips = List.of(Drawings.rectangle("frame", 0, 0, 100, 14), Drawings.line("joint", 0, 7, 100, 7));
        assertEquals(0, Drawings.problems(make(strips, CartoonSettings.defaults(), List.of()), CutlineProblems.NARROW).size());
        CartoonSettings settings = CartoonSettings.defaults().withLimitsByPiece(new TreeMap<>(Map.of(2, CutLimits.commonPractice().withNarrow(9))));
        List<String> where = Drawings.problems(make(strips, settings, List.of()), CutlineProblems.NARROW).stream().map(problem -> problem.where()).toList();
        assertEquals(List.of("piece 2"), where);
    }

    /** A hole that touches the edge of its piece is no hole to a cutter, but its piece has no width there. */
    @Test
    void holeThatTouchesTheEdge() {
        Cartoon cartoon = Drawings.make(Drawings.rectangle("frame", 0, 0, 100, 60), Drawings.closed("diamond", 0, 30, 20, 15, 40, 30, 20, 45));
        assertEquals(1, Drawings.problems(cartoon, CutlineProblems.TOUCHING_POINT).size());
        assertEquals(0, Drawings.problems(cartoon, CutlineProblems.HOLE).size());
        assertEquals(0, Drawings.problems(cartoon, CutlineProblems.TOUCHING_POINT).get(0).at().orElseThrow().xMm(), 1e-9);
        Cartoon inside = Drawings.make(Drawings.rectangle("frame", 0, 0, 100, 60), Drawings.closed("diamond", 10, 30, 30, 15, 50, 30, 30, 45));
        assertTrue(Drawings.problems(inside, CutlineProblems.HOLE).get(0).message().contains("around piece 1"), "the piece within is named");
        assertEquals(1, inside.pieces().stream().min((a, b) -> Double.compare(a.areaMm2(), b.areaMm2())).orElseThrow().number());
    }

    /** A V of 40 wide and 16 deep, 0.4: two crescents, one score between, half as deep. */
    @Test
    void reliefCutsNestInTheWaste() {
        Cartoon cartoon = Drawings.make(Drawings.closed("piece", 0, 0, 30, 0, 50, 16, 70, 0, 100, 0, 100, 60, 0, 60));
        assertEquals(1, cartoon.reliefs().size(), cartoon.reliefs().toString());
        Relief relief = cartoon.reliefs().get(0);
        assertEquals(Relief.Kind.RELIEF_CUTS, relief.kind());
        assertEquals(1, relief.lines().size());
        DrawnLine score = relief.lines().get(0);
        double deepest = 0;
        for (int i = 0; i < score.points(); i++) {
            deepest = Math.max(deepest, score.y(i));
        }
        assertEquals(8, deepest, 1e-6);
    }

    /** Depth 30 on 40 is 0.75: beyond scores; from the bottom of the slot to the far edge it is 30. */
    @Test
    void jointForWhatScoresDoNotReach() {
        Cartoon cartoon = Drawings.make(Drawings.closed("piece", 0, 0, 30, 0, 50, 30, 70, 0, 100, 0, 100, 60, 0, 60));
        Relief joint = cartoon.reliefs().stream().filter(relief -> relief.kind() == Relief.Kind.JOINT).findFirst().orElseThrow();
        DrawnLine line = joint.lines().get(0);
        assertEquals(50, line.x(0), 1e-6);
        assertEquals(30, line.y(0), 1e-6);
        assertEquals(50, line.x(1), 1e-6);
        assertEquals(60, line.y(1), 1e-6);
        Relief scores = cartoon.reliefs().stream().filter(relief -> relief.kind() == Relief.Kind.RELIEF_CUTS).findFirst().orElseThrow();
        assertEquals(2, scores.lines().size());
    }

    /** Undercut bays: no score runs through the piece itself. */
    @Test
    void scoresStayInTheWaste() {
        Cartoon cartoon = Drawings.make(Drawings.closed("piece", 0, 0, 40, 0, 25, 20, 50, 35, 75, 20, 60, 0, 100, 0, 100, 60, 0, 60));
        Relief scores = cartoon.reliefs().stream().filter(relief -> relief.kind() == Relief.Kind.RELIEF_CUTS).findFirst().orElseThrow();
        for (DrawnLine line : scores.lines()) {
            for (int i = 0; i < line.points(); i++) {
                assertTrue(new Boundary(cartoon.pieces().get(0).face()).clearance(line.x(i), line.y(i)) <= 1e-6, "score in the glass");
            }
        }
    }
}
