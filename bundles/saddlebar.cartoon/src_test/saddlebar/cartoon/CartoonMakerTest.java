package saddlebar.cartoon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import saddlebar.model.art.DrawnLine;

/** The worked small cases: counts by hand, areas by formula. */
class CartoonMakerTest {
    static final List<DrawnLine> GRID = List.of(Drawings.rectangle("frame", 0, 0, 200, 200), Drawings.line("v", 100, 0, 100, 200),
            Drawings.line("h", 0, 100, 200, 100));

    /** Counted by hand on the drawing: 9 vertices, 12 edges, 4 + 1 faces, 1 component (Euler's formula for plane graphs). */
    @Test
    void gridOfFour() {
        Cartoon cartoon = Drawings.make(GRID);
        assertEquals(new Euler(9, 12, 5, 1), cartoon.euler());
        assertTrue(cartoon.euler().holds());
        assertEquals(4, cartoon.pieces().size());
        assertEquals(40_000, cartoon.panelAreaMm2(), 1e-9);
        for (CartoonPiece piece : cartoon.pieces()) {
            assertEquals(10_000, piece.areaMm2(), 1e-9);
            assertEquals(99.6 * 99.6, piece.netAreaMm2(), 1e-9); // the gap comes off the two inner sides only
            assertEquals(400, piece.perimeterMm(), 1e-9);
            assertEquals(50, piece.inradiusMm(), 1e-9);
            assertEquals(2, piece.neighbours().size());
        }
        assertEquals(List.of(2, 3), cartoon.piece(1).orElseThrow().neighbours());
        assertEquals(50, cartoon.piece(2).orElseThrow().label().yMm(), 1e-9);
        assertEquals(150, cartoon.piece(2).orElseThrow().label().xMm(), 1e-9);
        assertEquals(List.of("hinge", "hinge"), Drawings.codes(cartoon));
    }

    @Test
    void drawnPanelIsProved() {
        Cartoon cartoon = Drawings.make(Drawings.cells(8, 400, 600, 20, 0.2, 1));
        Pictures.draw("cells", cartoon);
        assertTrue(cartoon.euler().holds());
        assertEquals(64, cartoon.pieces().size());
        assertEquals(List.of(), Drawings.codes(cartoon)); // gentle cells have nothing to tell
        Soundness.assertSound(cartoon);
    }
}
