package saddlebar.cartoon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.work.Work;

class GlassInsetTest {
    /** 100 x 50 mm among neighbours, gap 0.8: 99.2 x 49.2, area 4880.64 (arithmetic). */
    @Test
    void rectangleStaysRectangle() {
        List<DrawnLine> grid = new ArrayList<>();
        for (int i = 0; i <= 3; i++) {
            grid.add(Drawings.line("v" + i, 100 * i, 0, 100 * i, 150));
            grid.add(Drawings.line("h" + i, 0, 50 * i, 300, 50 * i));
        }
        Cartoon cartoon = Drawings.make(grid);
        CartoonPiece middle = cartoon.piece(5).orElseThrow();
        assertEquals(4880.64, middle.netAreaMm2(), 1e-9);
        assertEquals(99.2, middle.glass().getEnvelopeInternal().getWidth(), 1e-12);
        assertEquals(49.2, middle.glass().getEnvelopeInternal().getHeight(), 1e-12);
        assertEquals(5, middle.glass().getNumPoints());
        // a corner piece has two outer sides, which stay where they are
        CartoonPiece corner = cartoon.piece(1).orElseThrow();
        assertEquals(99.6 * 49.6, corner.netAreaMm2(), 1e-9);
        assertEquals(0, corner.glass().getEnvelopeInternal().getMinX(), 0);
        assertEquals(0, corner.glass().getEnvelopeInternal().getMinY(), 0);
    }

    @Test
    void outerEdgeTakesItsOwnAllowance() {
        Cartoon cartoon = CartoonMaker.make(CartoonMakerTest.GRID, CartoonSettings.defaults().withJoin(Join.came(1.7)).withEdgeAllowance(3),
                Work.UNWATCHED);
        for (CartoonPiece piece : cartoon.pieces()) {
            assertEquals((100 - 3 - 0.85) * (100 - 3 - 0.85), piece.netAreaMm2(), 1e-9);
        }
    }

    /** A joint that meets the outer edge at 60 degrees: the strip beside it is a parallelogram and a triangle, by hand. */
    @Test
    void slantedJointRunsToTheEdge() {
        double slant = 100 / Math.sqrt(3);
        Cartoon cartoon = Drawings.make(Drawings.rectangle("frame", 0, 0, 200, 100), Drawings.line("cut", 50, 0, 50 + slant, 100));
        double taken = cartoon.pieces().stream().mapToDouble(piece -> piece.areaMm2() - piece.netAreaMm2()).sum();
        assertEquals(0.8 / Math.sin(Math.toRadians(60)) * 100, taken, 1e-3); // the grid of 1 um moves the end of the joint
        assertEquals(cartoon.panelAreaMm2() - taken, cartoon.netAreaMm2(), 1e-9);
    }

    @Test
    void gapSplitsAndEats() {
        // an hourglass: the waist is 0.5 mm wide, below the gap
        Cartoon cartoon = Drawings.make(Drawings.rectangle("frame", 0, 0, 100, 60),
                Drawings.line("left", 20, 0, 49.75, 30, 20, 60), Drawings.line("right", 80, 0, 50.25, 30, 80, 60));
        assertEquals(1, Drawings.problems(cartoon, CutlineProblems.GAP_SPLITS_PIECE).size());
        var at = Drawings.problems(cartoon, CutlineProblems.GAP_SPLITS_PIECE).get(0).at().orElseThrow();
        assertEquals(50, at.xMm(), 0.5);
        assertEquals(30, at.yMm(), 0.5);
        Cartoon strip = Drawings.make(Drawings.rectangle("frame", 0, 0, 100, 60), Drawings.line("a", 50, 0, 50, 60),
                Drawings.line("b", 50.6, 0, 50.6, 60));
        assertEquals(1, Drawings.problems(strip, CutlineProblems.GAP_EATS_PIECE).size());
        CartoonPiece eaten = strip.pieces().stream().filter(piece -> piece.glass().isEmpty()).findFirst().orElseThrow();
        assertEquals(0, eaten.netAreaMm2(), 0);
        assertTrue(eaten.problems().containsAll(List.of(CutlineProblems.GAP_EATS_PIECE, CutlineProblems.SLIVER)));
    }

    /** The mitre at a neighbour's right-angled corner is whole; at a neighbour's needle it is cut at twice the distance. */
    @Test
    void mitreIsLimited() {
        Polygon inward = Drawings.polygon("POLYGON ((0 0, 100 0, 100 50, 50 50, 50 100, 0 100, 0 0))");
        Geometry glass = GlassInset.of(inward, (a, b) -> 1);
        assertEquals(98 * 48 + 48 * 50, glass.getArea(), 1e-9);
        Polygon needle = Drawings.polygon("POLYGON ((0 0, 100 0, 100 100, 51 100, 50 30, 49 100, 0 100, 0 0))");
        Geometry around = GlassInset.of(needle, (a, b) -> 1);
        Geometry below = Drawings.read("LINESTRING (50 30, 50 0)").intersection(around);
        assertEquals(30 - 2, below.getEnvelopeInternal().getMaxY(), 1e-9);
        assertTrue(around.isValid());
    }

    /** Both ways give the same glass, with inner and outer edges mixed. */
    @Property(tries = 10)
    void movedEdgesAgreeWithStrips(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Cartoon cartoon = Drawings.make(Drawings.cells(3, 120, 150, 12, 0.4, seed));
        var random = new Random(seed);
        for (CartoonPiece piece : cartoon.pieces()) {
            double inner = 0.1 + random.nextDouble();
            double outer = random.nextBoolean() ? 0 : inner * random.nextDouble();
            GlassInset.Distances distances = (a, b) -> a.x == 0 && b.x == 0 || a.y == 0 && b.y == 0 || a.x == 120 && b.x == 120
                    || a.y == 150 && b.y == 150 ? outer : inner;
            Geometry quick = GlassInset.of(piece.face(), distances);
            Geometry sure = GlassInset.byStrips(piece.face(), new Boundary(piece.face()).rings(), distances);
            double apart = quick.symDifference(sure).getArea();
            assertTrue(apart < 1e-6 * piece.areaMm2(), apart + " mm2 apart with " + inner + " and " + outer + " on " + piece.face()
                    + " quick " + quick + " sure " + sure);
        }
    }

    /** Against the library's own inset, which keeps its curves only to within a hundredth of the distance. */
    @Property(tries = 10)
    void agreesWithTheLibraryWhereAllEdgesAreInner(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        var mitred = new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, GlassInset.MITRE_LIMIT);
        for (CartoonPiece piece : Drawings.make(Drawings.cells(3, 120, 150, 12, 0.4, seed)).pieces()) {
            Geometry ours = GlassInset.of(piece.face(), (a, b) -> 0.4);
            Geometry theirs = BufferOp.bufferOp(piece.face(), -0.4, mitred);
            assertEquals(theirs.getArea(), ours.getArea(), 0.005 * piece.perimeterMm());
            assertEquals(theirs.getNumGeometries(), ours.getNumGeometries());
        }
    }
}
