package saddlebar.production.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class StencilPlannerTest {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private PaintedPiece piece(String layer, int number, double x, double y, double width, double height, int tone) {
        Envelope box = new Envelope(x, x + width, y, y + height);
        byte[] gray = new byte[16];
        Arrays.fill(gray, (byte) 255);
        gray[5] = (byte) tone;
        gray[11] = (byte) (tone / 3);
        return new PaintedPiece(layer, layer + "/" + number, (Polygon) GEOMETRY.toGeometry(box), box, new PaintPrint(4, 4, gray));
    }

    /** A grid of pieces, each with paint of its own. */
    private List<PaintedPiece> grid(String layer, int columns, int rows, double side) {
        List<PaintedPiece> pieces = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                int number = row * columns + column + 1;
                pieces.add(piece(layer, number, column * side, row * side, side - 1 - number * 0.3 % 7, side - 1, 50));
            }
        }
        return pieces;
    }

    @Test
    void oneStencilWhereTheFrameTakesAll() {
        StencilPlanner.Plan plan = new StencilPlanner(new ImageArea(200, 200)).plan(grid("a", 3, 3, 60));
        assertEquals(1, plan.stencils().size());
        assertEquals(9, plan.stencils().get(0).pieces().size());
    }

    @Test
    void aFrameTurnedByAQuarterCounts() {
        assertEquals(1, new StencilPlanner(new ImageArea(100, 300)).plan(grid("a", 4, 1, 60)).stencils().size());
    }

    @Test
    void identicalPiecesShareOneStencilAlsoOverWindows() {
        List<PaintedPiece> pieces = new ArrayList<>(grid("a", 2, 2, 60));
        for (int i = 0; i < 5; i++) {
            pieces.add(piece("a", 100 + i, 300, 40 * i, 20, 35, 90));
        }
        pieces.add(piece("b", 7, 12.3, 4, 20.02, 35, 90)); // another window; within a cutter's tolerance
        pieces.add(piece("b", 8, 60, 4, 20, 35, 10)); // same outline, other paint
        StencilPlanner.Plan plan = new StencilPlanner(new ImageArea(200, 200)).plan(pieces);
        PlannedStencil shared = plan.stencils().stream().filter(s -> s.prints() > 1).findFirst().orElseThrow();
        assertEquals(6, shared.prints());
        assertEquals("a", shared.layerId());
        assertEquals(3, plan.stencils().size());
    }

    @Test
    void turnedPiecesShareNoStencil() {
        List<PaintedPiece> pieces = List.of(piece("a", 1, 0, 0, 20, 35, 90), piece("a", 2, 30, 0, 35, 20, 90), piece("a", 3, 70, 0, 20, 35, 90));
        StencilPlanner.Plan plan = new StencilPlanner(new ImageArea(200, 200)).plan(pieces);
        assertEquals(List.of(List.of("a/2"), List.of("a/1", "a/3")), plan.stencils().stream()
                .map(stencil -> stencil.alike().stream().flatMap(List::stream).map(PaintedPiece::label).toList()).toList());
    }

    @Test
    void aPieceLargerThanAnyFrameIsNamedAndTheRestGoOn() {
        List<PaintedPiece> pieces = new ArrayList<>(grid("a", 2, 2, 60));
        pieces.add(piece("a", 9, 200, 0, 250, 90, 50));
        StencilPlanner.Plan plan = new StencilPlanner(new ImageArea(200, 200)).plan(pieces);
        assertEquals(List.of("a/9"), plan.tooLarge().stream().map(PaintedPiece::label).toList());
        assertEquals(1, plan.stencils().size());
    }

    @Property(tries = 60)
    void everyPieceOnceAndEveryStencilFits(@ForAll @IntRange(min = 1, max = 9) int columns, @ForAll @IntRange(min = 1, max = 9) int rows,
            @ForAll @IntRange(min = 60, max = 300) int width) {
        List<PaintedPiece> pieces = grid("a", columns, rows, 50);
        ImageArea area = new ImageArea(width, 140);
        StencilPlanner.Plan plan = new StencilPlanner(area).plan(pieces);
        Set<String> seen = new HashSet<>();
        for (PlannedStencil stencil : plan.stencils()) {
            assertTrue(area.takes(stencil.boxMm()), stencil.boxMm().toString());
            stencil.alike().forEach(alike -> alike.forEach(piece -> assertTrue(seen.add(piece.label()), piece.label())));
        }
        assertEquals(pieces.size(), seen.size());
    }
}
