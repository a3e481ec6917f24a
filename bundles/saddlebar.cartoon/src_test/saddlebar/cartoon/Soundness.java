package saddlebar.cartoon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.coverage.CoverageValidator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

import saddlebar.model.problem.Problem;

/** What holds for every cartoon, whatever was drawn; the coverage is judged by the library's validator, not by our own code. */
final class Soundness {
    private Soundness() {
    }

    static void assertSound(Cartoon cartoon) {
        assertTrue(cartoon.euler().holds(), cartoon.euler().toString());
        Polygon[] faces = cartoon.pieces().stream().map(CartoonPiece::face).toArray(Polygon[]::new);
        Geometry[] faults = CoverageValidator.validate(faces);
        assertFalse(CoverageValidator.hasInvalidResult(faults), "faces overlap or have a gap between them");
        double panel = cartoon.panelAreaMm2();
        assertEquals(panel, cartoon.pieces().stream().mapToDouble(CartoonPiece::areaMm2).sum(), 1e-9 * panel);
        double gap = 0;
        for (CartoonPiece piece : cartoon.pieces()) {
            assertTrue(piece.face().isValid());
            assertTrue(piece.glass().isValid());
            // what the gap took, by overlay: independent of how the glass was made
            gap += piece.glass().isEmpty() ? piece.areaMm2() : piece.face().difference(piece.glass()).getArea();
            assertTrue(piece.netAreaMm2() <= piece.areaMm2());
            Coordinate label = new Coordinate(piece.label().xMm(), piece.label().yMm());
            assertEquals(Location.INTERIOR, SimplePointInAreaLocator.locate(label, piece.face()), "label of piece " + piece.number());
            assertTrue(piece.inradiusMm() > 0);
            for (int neighbour : piece.neighbours()) {
                assertTrue(cartoon.piece(neighbour).orElseThrow().neighbours().contains(piece.number()));
            }
        }
        assertEquals(panel, cartoon.netAreaMm2() + gap, 1e-6 * panel, "glass and gap are not the panel");
        List<Integer> numbers = cartoon.pieces().stream().map(CartoonPiece::number).toList();
        assertEquals(numbers.size(), numbers.stream().distinct().count());
        assertEquals(numbers.stream().sorted().toList(), numbers);
        assertEquals(cartoon.problems().stream().sorted(Problem.WORST_FIRST).toList(), cartoon.problems());
    }
}
