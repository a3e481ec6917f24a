package saddlebar.nesting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;

class SheetNestingTest {
    private static final SheetArea LETTER = new SheetArea(209.9, 273.4);

    /** The gap lies between two shapes and not at the border: 100 + 5 + 100 = 205. Arithmetic, no source needed. */
    @Test
    void theGapDoesNotApplyToTheBorder() {
        List<NestItem> two = List.of(NestItem.rectangle("square", 100, 100, 2, Turns.QUARTER));
        Nested roomy = place(two, new SheetArea(210, 105), 5);
        assertEquals(1, roomy.sheets());
        assertEquals(205, roomy.lengthMm(), 1e-9);
        assertEquals(1, place(two, new SheetArea(205, 105), 5).sheets());
        assertEquals(2, place(two, new SheetArea(204, 105), 5).sheets());
    }

    @Test
    void sameForOutlinesThatAreNoRectangles() {
        List<NestItem> two = List.of(new NestItem("slant", polygon(0, 0, 100, 0, 100, 99, 0, 100), 2, Turns.NONE));
        assertEquals(1, place(two, new SheetArea(205.01, 105), 5).sheets());
        assertEquals(2, place(two, new SheetArea(204, 105), 5).sheets());
    }

    @Test
    void nineEqualStencilsFillALetterSheet() {
        List<NestItem> nine = List.of(NestItem.rectangle("border", 66.6, 87.8, 9, Turns.QUARTER)); // 3 * 66.6 + 10 = 209.8
        Nested nested = place(nine, LETTER, 5);
        assertEquals(1, nested.sheets());
        assertEquals(0, nested.turned());
    }

    @Test
    void fewestSheetsThenTheSmallestKind() {
        List<NestItem> items = List.of(NestItem.rectangle("big", 250, 350, 1, Turns.QUARTER),
                NestItem.rectangle("small", 90, 90, 4, Turns.NONE));
        List<SheetArea> kinds = List.of(LETTER, new SheetArea(273.4, 425.8));
        Nested nested = SheetNesting.place(items, kinds, 5, Effort.rounds(20), Work.UNWATCHED, b -> {});
        assertEquals(2, nested.sheets());
        assertEquals(1, nested.areas().stream().filter(kinds.get(0)::equals).count(), "the four small ones fit a letter sheet");
        Independent.requireValid(items, nested, 5);
    }

    @Test
    void refusesWhatFitsNoSheetWithNameSizeAndLargestSheet() {
        List<NestItem> items = List.of(NestItem.rectangle("W01/matt", 300, 280.5, 1, Turns.QUARTER));
        Refusal refusal = assertThrows(Refusal.class, () -> place(items, LETTER, 5));
        assertEquals("item W01/matt: it is 300 x 280.5 mm and fits no sheet; the largest has 209.9 x 273.4 mm to use; "
                + "take a larger sheet, divide the item, or allow it to be turned", refusal.getMessage());
        assertEquals(1, place(List.of(NestItem.rectangle("a", 270, 200, 1, Turns.QUARTER)), LETTER, 5).sheets());
        assertThrows(Refusal.class, () -> place(List.of(NestItem.rectangle("a", 270, 200, 1, Turns.HALF)), LETTER, 5));
    }

    @Test
    void refusesItemsThatAreNone() {
        assertThrows(Refusal.class, () -> NestItem.rectangle("a", 10, 0, 1, Turns.NONE));
        assertThrows(Refusal.class, () -> NestItem.rectangle("a", 10, Double.NaN, 1, Turns.NONE));
        assertThrows(Refusal.class, () -> NestItem.rectangle("a", 10, Double.POSITIVE_INFINITY, 1, Turns.NONE));
        assertThrows(Refusal.class, () -> NestItem.rectangle("a", 10, 10, 0, Turns.NONE));
        assertThrows(Refusal.class, () -> NestItem.rectangle(" ", 10, 10, 1, Turns.NONE));
        assertThrows(Refusal.class, () -> new NestItem("bow", polygon(0, 0, 10, 10, 10, 0, 0, 10), 1, Turns.NONE));
        assertThrows(Refusal.class, () -> new NestItem("line", polygon(0, 0, 10, 10, 5, 5), 1, Turns.NONE));
        assertThrows(Refusal.class, () -> place(List.of(), LETTER, 5));
        NestItem a = NestItem.rectangle("a", 10, 10, 1, Turns.NONE);
        assertThrows(Refusal.class, () -> place(List.of(a, a), LETTER, 5));
        assertThrows(Refusal.class, () -> new SheetArea(0, 10));
        assertThrows(Refusal.class, () -> new SheetArea(Double.NaN, 10));
        assertThrows(IllegalArgumentException.class, () -> place(List.of(a), LETTER, Double.NaN));
    }

    @Test
    void tellsItsProgressInFullAndHandsOutOnlyBetterLayouts() {
        List<NestItem> items = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            items.add(NestItem.rectangle("s" + i, 20 + 7 * i % 61, 15 + 11 * i % 83, 1, Turns.QUARTER));
        }
        int[] told = {0};
        List<Nested> seen = new ArrayList<>();
        Nested last = SheetNesting.place(items, List.of(LETTER), 5, Effort.rounds(30), new Work() {
            @Override
            public void advance(long units) {
                told[0] += units;
            }

            @Override
            public void checkpoint() {
                // nobody stops
            }
        }, seen::add);
        assertEquals(SheetNesting.WORK_UNITS, told[0]);
        assertEquals(seen.get(seen.size() - 1), last);
        for (int i = 1; i < seen.size(); i++) {
            assertTrue(seen.get(i).sheets() <= seen.get(i - 1).sheets());
        }
        Independent.requireValid(items, last, 5);
    }

    @Test
    void stoppedItLeavesTheBestBehind() {
        List<NestItem> items = List.of(NestItem.rectangle("a", 31, 47, 60, Turns.QUARTER), NestItem.rectangle("b", 17, 90, 30, Turns.NONE));
        BestSoFar best = new BestSoFar();
        int[] asked = {0};
        Work stopping = new Work() {
            @Override
            public void advance(long units) {
                // not watched
            }

            @Override
            public void checkpoint() {
                if (++asked[0] > 200) {
                    throw new CancellationException("stopped");
                }
            }
        };
        assertThrows(CancellationException.class,
                () -> SheetNesting.place(items, List.of(LETTER), 5, Effort.seconds(600), stopping, best));
        Independent.requireValid(items, best.best().orElseThrow(), 5);
    }

    private static Nested place(List<NestItem> items, SheetArea sheet, double gapMm) {
        Nested nested = SheetNesting.place(items, List.of(sheet), gapMm, Effort.rounds(20), Work.UNWATCHED, better -> {});
        Independent.requireValid(items, nested, gapMm);
        return nested;
    }

    static Polygon polygon(double... xy) {
        Coordinate[] ring = new Coordinate[xy.length / 2 + 1];
        for (int i = 0; i < xy.length / 2; i++) {
            ring[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
        }
        ring[ring.length - 1] = ring[0].copy();
        return new GeometryFactory().createPolygon(ring);
    }
}
