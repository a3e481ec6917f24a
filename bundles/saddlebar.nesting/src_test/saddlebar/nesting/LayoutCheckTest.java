package saddlebar.nesting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

import saddlebar.model.problem.Problem;

class LayoutCheckTest {
    private static final List<SheetArea> SHEETS = List.of(new SheetArea(100, 100), new SheetArea(100, 100));
    private static final NestItem SQUARE = NestItem.rectangle("s", 10, 10, 2, Turns.QUARTER);

    /** The reference is JTS: do the insides meet in the sense of ISO 19107 and OGC Simple Features (DE-9IM, first letter)? */
    @Property(tries = 3000)
    void agreesWithJtsOnSmallIntegers(@ForAll("outlines") Polygon a, @ForAll("outlines") Polygon b, @ForAll @IntRange(min = 0, max = 7) int dx,
            @ForAll @IntRange(min = 0, max = 7) int dy, @ForAll @IntRange(min = 0, max = 3) int quarter) {
        ExactRing still = ExactRing.of(a, 0, 0, 0);
        ExactRing moved = ExactRing.of(b, 90 * quarter, dx, dy);
        AffineTransformation move = AffineTransformation.rotationInstance(0, 1);
        for (int k = 0; k < quarter; k++) {
            move.compose(AffineTransformation.rotationInstance(1, 0));
        }
        move.translate(dx, dy);
        Polygon movedToo = (Polygon) move.transform(b);
        boolean meet = quarter == 0 && a.relate(movedToo, "T********") || quarter != 0 && a.intersection(movedToo).getArea() > 1e-9;
        assertEquals(meet, still.overlaps(moved));
        assertEquals(meet, moved.overlaps(still));
        if (!meet) {
            assertEquals(a.distance(movedToo) * 1e6, still.distance(moved), 1e-3);
        }
    }

    /** Star-shaped rings on a grid of 6 x 6, so that corners and edges often fall on each other. */
    @Provide
    Arbitrary<Polygon> outlines() {
        Arbitrary<Integer> ordinate = Arbitraries.integers().between(0, 6);
        return ordinate.list().ofMinSize(6).ofMaxSize(20).map(LayoutCheckTest::ring).filter(p -> p.isValid() && p.getArea() > 0);
    }

    private static Polygon ring(List<Integer> ordinates) {
        List<Coordinate> points = new ArrayList<>();
        for (int i = 0; i + 1 < ordinates.size(); i += 2) {
            points.add(new Coordinate(ordinates.get(i), ordinates.get(i + 1)));
        }
        points.sort((p, q) -> Double.compare(Math.atan2(p.y - 3.1, p.x - 2.9), Math.atan2(q.y - 3.1, q.x - 2.9)));
        points.add(points.get(0).copy());
        return new GeometryFactory().createPolygon(points.toArray(new Coordinate[0]));
    }

    @Test
    void touchingIsAllowedWithoutAGapAndAMicrometreOfOverlapIsNot() {
        assertTrue(codes(0, 0, 10, 0).isEmpty());
        assertEquals(List.of("nest-overlap"), codes(0, 0, 9.999, 0));
        assertEquals(List.of("nest-overlap"), codes(0, 0, 9.999999, 5));
        assertEquals(List.of("nest-overlap"), codes(0, 0, 0, 0), "one upon the other");
        assertTrue(codes(0, 10, 10, 0).isEmpty());
    }

    @Test
    void theGapIsKeptInAllDirections() {
        assertTrue(codes(5, 0, 15, 0).isEmpty());
        assertTrue(codes(5, 0, 13, 14).isEmpty(), "3, 4, 5");
        assertEquals(List.of("nest-gap"), codes(5, 0, 14.9999, 0));
        assertEquals(List.of("nest-gap"), codes(5, 0, 13, 13.99));
    }

    @Test
    void oneInsideTheHollowOfAnotherIsFreeButNotOneInsideItsFlesh() {
        NestItem frame = new NestItem("u", SheetNestingTest.polygon(0, 0, 60, 0, 60, 60, 40, 60, 40, 20, 20, 20, 20, 60, 0, 60), 1,
                Turns.NONE);
        NestItem small = NestItem.rectangle("b", 20, 30, 1, Turns.NONE);
        List<NestItem> items = List.of(frame, small);
        Placement there = new Placement("u", 0, 0, 0, 0, 0);
        assertTrue(LayoutCheck.holds(items, SHEETS, 0, List.of(there, new Placement("b", 0, 0, 20, 20, 0))));
        assertFalse(LayoutCheck.holds(items, SHEETS, 0, List.of(there, new Placement("b", 0, 0, 20, 19.999, 0))));
        NestItem tiny = NestItem.rectangle("b", 2, 2, 1, Turns.NONE);
        assertFalse(LayoutCheck.holds(List.of(frame, tiny), SHEETS, 0, List.of(there, new Placement("b", 0, 0, 5, 5, 0))));
    }

    @Test
    void findsEveryOtherFault() {
        assertEquals(List.of("nest-outside"), codes(0, 0, 91, 0));
        assertEquals(List.of("nest-outside"), codes(0, 0, 50, -0.001));
        assertEquals(List.of("nest-count"), codes(List.of(new Placement("s", 0, 0, 0, 0, 0))));
        assertEquals(List.of("nest-count", "nest-count"),
                codes(List.of(new Placement("s", 0, 0, 0, 0, 0), new Placement("s", 0, 0, 50, 0, 0))));
        assertEquals(List.of("nest-unknown"), codes(List.of(new Placement("s", 0, 0, 0, 0, 0), new Placement("s", 1, 7, 0, 0, 0))));
        assertEquals(List.of("nest-angle"), codes(List.of(new Placement("s", 0, 0, 0, 0, 0), new Placement("s", 1, 0, 50, 50, 45))));
        assertTrue(codes(List.of(new Placement("s", 0, 0, 0, 0, 0), new Placement("s", 1, 1, 0, 0, 0))).isEmpty(), "two sheets");
        assertTrue(codes(List.of(new Placement("s", 0, 0, 0, 0, 0), new Placement("s", 1, 0, 20, 0, 90))).isEmpty(), "10 to 20");
    }

    @Property
    void sameSquareAtAnyAngleTouchesOrNotAsItsBoxSays(@ForAll @IntRange(min = 1, max = 359) int angle) {
        Assume.that(angle % 90 != 0);
        NestItem free = NestItem.rectangle("s", 10, 10, 2, Turns.FREE);
        Placement turned = new Placement("s", 0, 0, 50, 50, angle);
        double reach = 0; // of the turned square, to the right
        for (Coordinate c : Independent.placed(free, turned).getCoordinates()) {
            reach = Math.max(reach, c.x);
        }
        double tipY = 0;
        for (Coordinate c : Independent.placed(free, turned).getCoordinates()) {
            tipY = c.x == reach ? c.y : tipY;
        }
        Placement beside = new Placement("s", 1, 0, reach + 2e-6, tipY - 5, 0);
        Placement into = new Placement("s", 1, 0, reach - 2e-6, tipY - 5, 0);
        assertTrue(LayoutCheck.holds(List.of(free), SHEETS, 0, List.of(turned, beside)));
        assertFalse(LayoutCheck.holds(List.of(free), SHEETS, 0, List.of(turned, into)));
    }

    private static List<String> codes(double gapMm, double firstY, double x, double y) {
        return codes(gapMm, List.of(new Placement("s", 0, 0, 0, firstY, 0), new Placement("s", 1, 0, x, y, 0)));
    }

    private static List<String> codes(List<Placement> placements) {
        return codes(0, placements);
    }

    private static List<String> codes(double gapMm, List<Placement> placements) {
        return LayoutCheck.faults(List.of(SQUARE), SHEETS, gapMm, placements).stream().map(Problem::code).toList();
    }
}
