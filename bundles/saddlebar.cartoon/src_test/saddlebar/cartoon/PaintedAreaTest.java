package saddlebar.cartoon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

class PaintedAreaTest {
    private static final Polygon GLASS = Drawings.polygon("POLYGON ((0 0, 80 0, 80 40, 0 40, 0 0))");

    @Test
    void bleedKeepsCornersAndKeepOffShrinks() {
        assertEquals(83 * 43, PaintedArea.of(GLASS, 1.5).getArea(), 1e-9);
        assertEquals(76 * 36, PaintedArea.visible(GLASS, 2).getArea(), 1e-9);
        assertTrue(PaintedArea.of(GLASS, 0).equalsExact(GLASS));
        assertTrue(PaintedArea.visible(GLASS, 20).isEmpty());
        assertTrue(PaintedArea.of(Drawings.polygon("POLYGON EMPTY"), 1.5).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> PaintedArea.of(GLASS, -1));
        assertThrows(IllegalArgumentException.class, () -> PaintedArea.visible(GLASS, Double.NaN));
    }

    @Test
    void keepOffMaySplit() {
        Polygon waist = Drawings.polygon("POLYGON ((0 0, 40 0, 40 18, 60 18, 60 0, 99 0, 99 40, 60 40, 60 22, 40 22, 40 40, 0 40, 0 0))");
        Geometry visible = PaintedArea.visible(waist, 3);
        assertEquals(2, visible.getNumGeometries());
    }

    @Test
    void glassIsNotChanged() {
        Cartoon cartoon = Drawings.make(CartoonMakerTest.GRID);
        CartoonPiece piece = cartoon.piece(1).orElseThrow();
        String before = piece.glass().toText();
        Geometry grown = PaintedArea.of(piece, 1.5);
        assertTrue(grown.covers(piece.glass()));
        assertEquals(before, piece.glass().toText());
    }
}
