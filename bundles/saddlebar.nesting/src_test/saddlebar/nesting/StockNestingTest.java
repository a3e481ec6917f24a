package saddlebar.nesting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

import saddlebar.model.work.Work;

/** Placed shapes are judged by JTS alone, which knows nothing of the search. */
class StockNestingTest {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private static Polygon box(double x, double y, double width, double height) {
        return (Polygon) GEOMETRY.toGeometry(new Envelope(x, x + width, y, y + height));
    }

    private static Polygon star(Random random, double size) {
        int corners = 5 + random.nextInt(20);
        Coordinate[] ring = new Coordinate[corners + 1];
        for (int i = 0; i < corners; i++) {
            double r = size * (0.5 + 0.5 * random.nextDouble());
            ring[i] = new Coordinate(r * Math.cos(2 * Math.PI * i / corners), r * Math.sin(2 * Math.PI * i / corners));
        }
        ring[corners] = ring[0].copy();
        return GEOMETRY.createPolygon(ring);
    }

    private static Geometry lying(NestItem item, Placement p) {
        AffineTransformation move = AffineTransformation.rotationInstance(Math.toRadians(p.rotationDeg()));
        move.translate(p.xMm(), p.yMm());
        return move.transform(item.outline());
    }

    @Property(tries = 25)
    void nothingOverlapsAndFlawsStayClear(@ForAll @IntRange(min = 1, max = 25) int count, @ForAll long seed) {
        Random random = new Random(seed);
        List<NestItem> items = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            items.add(new NestItem("p" + i, star(random, 20 + random.nextInt(60)), 1, random.nextBoolean() ? Turns.HALF : Turns.QUARTER));
        }
        List<StockArea> sheets = List.of(new StockArea(new SheetArea(200, 150), List.of(box(150, 100, 90, 90)), 0.3),
                new StockArea(new SheetArea(400, 300), List.of(box(100, 100, 40, 30), star(random, 40)), 1));
        StockLaid laid = StockNesting.place(items, sheets, 3, Effort.rounds(2), Work.UNWATCHED);
        assertEquals(count, laid.placements().size() + laid.leftOut().size());
        List<Geometry> there = new ArrayList<>();
        for (Placement p : laid.placements()) {
            NestItem item = items.stream().filter(i -> i.id().equals(p.id())).findFirst().orElseThrow();
            assertTrue(item.turns().allows(p.rotationDeg()));
            Geometry shape = lying(item, p);
            StockArea sheet = sheets.get(p.sheet());
            assertTrue(new Envelope(-1e-6, sheet.area().widthMm() + 1e-6, -1e-6, sheet.area().heightMm() + 1e-6).contains(shape.getEnvelopeInternal()));
            sheet.blocked().forEach(blocked -> assertTrue(blocked.distance(shape) > 3 - 1e-5, "flaw"));
            Geometry moved = AffineTransformation.translationInstance(1000.0 * p.sheet(), 0).transform(shape);
            there.forEach(other -> assertTrue(other.distance(moved) > 3 - 1e-5, "gap"));
            there.add(moved);
        }
    }

    /** By hand: one flaw in the middle leaves room for exactly one square on either side. */
    @Test
    void aFlawDividesTheSheet() {
        List<NestItem> squares = List.of(NestItem.rectangle("a", 90, 100, 1, Turns.NONE), NestItem.rectangle("b", 90, 100, 1, Turns.NONE),
                NestItem.rectangle("c", 90, 100, 1, Turns.NONE));
        StockArea clear = new StockArea(new SheetArea(282, 100), List.of(), 1);
        StockArea flawed = new StockArea(new SheetArea(282, 100), List.of(box(135, 40, 12, 12)), 1);
        assertEquals(List.of(), StockNesting.place(squares, List.of(clear), 3, Effort.rounds(3), Work.UNWATCHED).leftOut());
        StockLaid around = StockNesting.place(squares, List.of(flawed), 3, Effort.rounds(3), Work.UNWATCHED);
        assertEquals(1, around.leftOut().size());
        assertEquals(2 * 90 * 100 / 28200.0, around.use(), 1e-9);
    }

    /** Off-cuts are listed first and go first; a shaped one is its rectangle less what is missing. */
    @Test
    void offcutsGoFirst() {
        List<NestItem> items = List.of(NestItem.rectangle("a", 50, 50, 1, Turns.NONE));
        Polygon missing = GEOMETRY
                .createPolygon(new Coordinate[] {new Coordinate(0, 120), new Coordinate(120, 0), new Coordinate(120, 120), new Coordinate(0, 120)});
        List<StockArea> sheets = List.of(new StockArea(new SheetArea(120, 120), List.of(missing), 0.2), new StockArea(new SheetArea(500, 500), List.of(), 1));
        assertEquals(0, StockNesting.place(items, sheets, 2, Effort.rounds(1), Work.UNWATCHED).placements().get(0).sheet());
        List<NestItem> larger = List.of(NestItem.rectangle("a", 70, 70, 1, Turns.NONE)); // its far corner would reach into what is missing
        assertEquals(1, StockNesting.place(larger, sheets, 2, Effort.rounds(1), Work.UNWATCHED).placements().get(0).sheet());
    }

    @Test
    void whatFitsNowhereIsLeftOutAndTheSameInputGivesTheSameLayout() {
        List<NestItem> items = List.of(NestItem.rectangle("long", 900, 20, 1, Turns.NONE), NestItem.rectangle("a", 50, 50, 1, Turns.QUARTER));
        List<StockArea> sheets = List.of(new StockArea(new SheetArea(300, 300), List.of(box(0, 0, 10, 10)), 1));
        StockLaid laid = StockNesting.place(items, sheets, 2, Effort.rounds(4), Work.UNWATCHED);
        assertEquals(List.of("long"), laid.leftOut());
        assertEquals(laid, StockNesting.place(items, sheets, 2, Effort.rounds(4), Work.UNWATCHED));
    }

    /** Against trying every rectangle of cells. */
    @Property(tries = 60)
    void theLargestFreeRectangleIsTheLargestOfAll(@ForAll long seed, @ForAll @IntRange(min = 0, max = 12) int taken) {
        Random random = new Random(seed);
        List<Polygon> there = new ArrayList<>();
        for (int i = 0; i < taken; i++) {
            there.add(box(10 * random.nextInt(12), 10 * random.nextInt(9), 10 * (1 + random.nextInt(4)), 10 * (1 + random.nextInt(3))));
        }
        double most = 0;
        for (int x0 = 0; x0 < 12; x0++) {
            for (int x1 = x0 + 1; x1 <= 12; x1++) {
                for (int y0 = 0; y0 < 9; y0++) {
                    for (int y1 = y0 + 1; y1 <= 9; y1++) {
                        Envelope inner = new Envelope(10 * x0 + 0.1, 10 * x1 - 0.1, 10 * y0 + 0.1, 10 * y1 - 0.1);
                        if (there.stream().noneMatch(t -> t.getEnvelopeInternal().intersects(inner))) {
                            most = Math.max(most, 100.0 * (x1 - x0) * (y1 - y0));
                        }
                    }
                }
            }
        }
        List<Envelope> found = FreeRectangles.of(new SheetArea(120, 90), there, 0, 10, 1, 1);
        assertEquals(most, found.isEmpty() ? 0 : found.get(0).getArea(), 1e-6);
    }
}
