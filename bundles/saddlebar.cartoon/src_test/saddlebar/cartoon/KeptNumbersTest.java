package saddlebar.cartoon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.Problem;
import saddlebar.model.work.Work;

class KeptNumbersTest {
    private static Polygon box(double x, double width) {
        return Drawings.polygon("POLYGON ((%1$s 0, %2$s 0, %2$s 10, %1$s 10, %1$s 0))".formatted(x, x + width));
    }

    private static List<NumberedFace> numbered(Cartoon cartoon) {
        return cartoon.pieces().stream().map(piece -> new NumberedFace(piece.number(), piece.face())).toList();
    }

    @Test
    void movedJointKeepsNumbers() {
        List<NumberedFace> before = List.of(new NumberedFace(7, box(0, 50)), new NumberedFace(3, box(50, 50)));
        KeptNumbers kept = KeptNumbers.of(before, List.of(box(0, 70), box(70, 30)), 1);
        assertEquals(List.of(7, 3), kept.numbers());
        assertEquals(List.of(), kept.gone());
        assertEquals(List.of(), kept.fresh());
        // the second old piece lies 40 % in the first new one: told as divided
        assertEquals(Map.of(3, List.of(3, 7)), kept.split());
        assertEquals(Map.of(), kept.merged());
    }

    @Test
    void splitPieceKeepsItsNumberWhereTheGreaterPartIs() {
        KeptNumbers kept = KeptNumbers.of(List.of(new NumberedFace(4, box(0, 100))), List.of(box(0, 30), box(30, 70)), 1);
        assertEquals(List.of(5, 4), kept.numbers());
        assertEquals(Map.of(4, List.of(4, 5)), kept.split());
        assertEquals(List.of(5), kept.fresh());
    }

    @Test
    void splitInHalvesKeepsNone() {
        KeptNumbers kept = KeptNumbers.of(List.of(new NumberedFace(4, box(0, 100))), List.of(box(0, 50), box(50, 50)), 12);
        assertEquals(List.of(12, 13), kept.numbers()); // exactly half is not more than half
        assertEquals(List.of(4), kept.gone());
    }

    @Test
    void mergedPiecesKeepTheNumberOfTheLargest() {
        List<NumberedFace> before = List.of(new NumberedFace(1, box(0, 30)), new NumberedFace(2, box(30, 70)));
        KeptNumbers kept = KeptNumbers.of(before, List.of(box(0, 100)), 1);
        assertEquals(List.of(2), kept.numbers());
        assertEquals(Map.of(2, List.of(1, 2)), kept.merged());
        assertEquals(List.of(1), kept.gone());
    }

    @Test
    void revisionInTheWholeMaker() {
        Cartoon first = Drawings.make(CartoonMakerTest.GRID);
        List<DrawnLine> edited = List.of(CartoonMakerTest.GRID.get(0), CartoonMakerTest.GRID.get(1), CartoonMakerTest.GRID.get(2),
                Drawings.line("new joint", 0, 60, 100, 60));
        Cartoon second = CartoonMaker.make(edited, CartoonSettings.defaults(), numbered(first), 9, Work.UNWATCHED);
        assertEquals(List.of(1, 2, 3, 4, 9), second.pieces().stream().map(CartoonPiece::number).toList());
        assertEquals(6000, second.piece(1).orElseThrow().areaMm2(), 1e-9);
        assertEquals(4000, second.piece(9).orElseThrow().areaMm2(), 1e-9);
        Problem split = Drawings.problems(second, CutlineProblems.PIECE_SPLIT).get(0);
        assertTrue(split.message().contains("Old number 1") && split.message().contains("piece 1, piece 9"), split.message());
        // back to the first drawing: the number that was new goes and is told
        Cartoon third = CartoonMaker.make(CartoonMakerTest.GRID, CartoonSettings.defaults(), numbered(second), 10, Work.UNWATCHED);
        assertEquals(List.of(1, 2, 3, 4), third.pieces().stream().map(CartoonPiece::number).toList());
        assertEquals(1, Drawings.problems(third, CutlineProblems.PIECE_GONE).size());
        assertEquals(1, Drawings.problems(third, CutlineProblems.PIECES_MERGED).size());
    }

    /** The same drawing again, its lines in another order and turned round: every number stays. */
    @Property(tries = 10)
    void sameDrawingSameNumbers(@ForAll @LongRange(min = 0, max = 100_000) long seed) {
        List<DrawnLine> drawing = Drawings.cells(5, 300, 300, 6, 0.3, seed);
        Cartoon first = Drawings.make(drawing);
        List<DrawnLine> shuffled = new ArrayList<>(drawing);
        Collections.shuffle(shuffled, new Random(seed));
        Cartoon again = CartoonMaker.make(shuffled, CartoonSettings.defaults(), numbered(first), 1, Work.UNWATCHED);
        for (CartoonPiece piece : first.pieces()) {
            CartoonPiece same = again.piece(piece.number()).orElseThrow();
            assertTrue(piece.face().equalsTopo(same.face()));
        }
    }

    @Test
    void renumberedEverywhere() {
        Cartoon cartoon = Drawings.make(Drawings.rectangle("frame", 0, 0, 100, 60), Drawings.line("a", 50, 0, 50, 60),
                Drawings.line("b", 50.6, 0, 50.6, 60));
        Map<Integer, Integer> other = new HashMap<>(Map.of(1, 12, 2, 1, 3, 2));
        Cartoon renumbered = cartoon.renumbered(other);
        assertEquals(List.of(1, 2, 12), renumbered.pieces().stream().map(CartoonPiece::number).toList());
        Problem sliver = Drawings.problems(renumbered, CutlineProblems.SLIVER).get(0);
        CartoonPiece thin = renumbered.pieces().stream().filter(piece -> piece.problems().contains(CutlineProblems.SLIVER)).findFirst().orElseThrow();
        assertEquals("piece " + thin.number(), sliver.where());
        assertTrue(sliver.message().startsWith("Piece " + thin.number() + " is a sliver"), sliver.message());
        assertEquals(cartoon.netAreaMm2(), renumbered.netAreaMm2(), 0);
        for (CartoonPiece piece : renumbered.pieces()) {
            piece.neighbours().forEach(number -> assertTrue(renumbered.piece(number).orElseThrow().neighbours().contains(piece.number())));
        }
        other.put(2, 12);
        assertThrows(IllegalArgumentException.class, () -> cartoon.renumbered(other));
        assertThrows(IllegalArgumentException.class, () -> cartoon.renumbered(Map.of(1, 2)));
    }
}
