package saddlebar.cartoon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

class EulerTest {
    private static final Polygon SQUARE = Drawings.polygon("POLYGON ((0 0, 10 0, 10 5, 10 10, 0 10, 0 0))");

    @Test
    void straightPassagesAreNoVertices() {
        assertEquals(new Euler(4, 4, 2, 1), EulerCount.of(new Sides(List.of(SQUARE)), 2));
    }

    @Test
    void ringWithoutCornersKeepsOne() {
        StringBuilder ring = new StringBuilder("POLYGON ((");
        for (int i = 0; i <= 4000; i++) { // steps so small that each goes straight on within the grid
            double angle = 2 * Math.PI * (i % 4000) / 4000;
            ring.append(i == 0 ? "" : ", ").append(50 * Math.cos(angle)).append(' ').append(50 * Math.sin(angle));
        }
        assertEquals(new Euler(1, 1, 2, 1), EulerCount.of(new Sides(List.of(Drawings.polygon(ring.append("))").toString()))), 2));
    }

    /** The proof sees what is wrong: a face lost, and a crossing without a node. */
    @Test
    void seesALostFaceAndAMissingNode() {
        List<Polygon> faces = new ArrayList<>(Drawings.make(CartoonMakerTest.GRID).pieces().stream().map(CartoonPiece::face).toList());
        assertTrue(EulerCount.of(new Sides(faces), faces.size() + 1).holds());
        assertFalse(EulerCount.of(new Sides(faces), faces.size()).holds());
        List<Polygon> crossing = List.of(SQUARE, Drawings.polygon("POLYGON ((5 5, 15 5, 15 15, 5 15, 5 5))")); // four faces if it were noded
        assertFalse(EulerCount.of(new Sides(crossing), 5).holds());
    }
}
