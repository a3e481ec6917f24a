package saddlebar.materials.metal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;

class CuttingStockTest {
    private static List<CutOrder> orders(int... lengthAndCount) {
        List<CutOrder> orders = new ArrayList<>();
        for (int i = 0; i < lengthAndCount.length; i += 2) {
            orders.add(CutOrder.ofMm(lengthAndCount[i], lengthAndCount[i + 1]));
        }
        return orders;
    }

    private static void assertValid(CuttingPlan plan, List<CutOrder> orders) {
        Map<Long, Integer> open = new HashMap<>();
        orders.forEach(order -> open.merge(order.lengthHmm(), order.count(), Integer::sum));
        for (CutPattern pattern : plan.patterns()) {
            long used = pattern.lengthsHmm().stream().mapToLong(Long::longValue).sum() + plan.kerfHmm() * (pattern.lengthsHmm().size() - 1L);
            assertTrue(used <= plan.stockHmm(), () -> pattern + " is longer than the stock");
            pattern.lengthsHmm().forEach(length -> open.merge(length, -pattern.times(), Integer::sum));
        }
        open.forEach((length, left) -> assertEquals(0, left, () -> length + " is not cut as ordered"));
        assertTrue(plan.stocks() >= plan.lowerBound());
    }

    /**
     * The worked example of paper rolls 5600 mm wide in 13 widths (M. Lawton, Cutting stock problem: worked example, 2008): 407 160 mm ordered, so at least
     * 72.7 rolls; 73 are enough.
     */
    @Test
    void publishedPaperRolls() {
        List<CutOrder> orders = orders(1380, 22, 1520, 25, 1560, 12, 1710, 14, 1820, 18, 1880, 18, 1930, 20, 2000, 10, 2050, 12, 2100, 14, 2140, 16, 2150, 18,
                2200, 20);
        CuttingPlan plan = new CuttingStock(5600, 0, Work.UNWATCHED).plan(orders);
        assertValid(plan, orders);
        assertEquals(73, plan.lowerBound());
        assertEquals(73, plan.stocks());
        assertTrue(plan.proven());
    }

    /** The example of widths 14, 31, 36 and 45 in rolls of 100, ordered 211, 395, 610 and 97 (widely printed; Gilmore and Gomory's method): 453 rolls. */
    @Test
    void publishedFourWidths() {
        List<CutOrder> orders = orders(14, 211, 31, 395, 36, 610, 45, 97);
        CuttingPlan plan = new CuttingStock(100, 0, Work.UNWATCHED).plan(orders);
        assertValid(plan, orders);
        assertEquals(453, plan.lowerBound());
        assertEquals(453, plan.stocks());
    }

    /** By hand: 90 + 60 + 50 and 80 + 70 + 50 fill two of 200; first fit, longest first, puts 90 with 80 and needs three. */
    @Test
    void betterThanFirstFit() {
        List<CutOrder> orders = orders(90, 1, 80, 1, 70, 1, 60, 1, 50, 2);
        CuttingPlan plan = new CuttingStock(200, 0, Work.UNWATCHED).plan(orders);
        assertValid(plan, orders);
        assertEquals(2, plan.stocks());
    }

    /** A kerf of 2 mm: two pieces of 999 fill 2000, two of 999.5 do not. */
    @Test
    void kerfBetweenPieces() {
        assertEquals(1, new CuttingStock(2000, 2, Work.UNWATCHED).plan(List.of(CutOrder.ofMm(999, 2))).stocks());
        assertEquals(2, new CuttingStock(2000, 2, Work.UNWATCHED).plan(List.of(CutOrder.ofMm(999.5, 2))).stocks());
        assertEquals(1, new CuttingStock(2000, 2, Work.UNWATCHED).plan(List.of(CutOrder.ofMm(2000, 1))).stocks());
        assertEquals(0, new CuttingStock(2000, 2, Work.UNWATCHED).plan(List.of()).stocks());
    }

    @Test
    void longerThanTheStockIsRefused() {
        CuttingStock stock = new CuttingStock(2000, 2, Work.UNWATCHED);
        Refusal refusal = assertThrows(Refusal.class, () -> stock.plan(List.of(CutOrder.ofMm(2000.01, 1))));
        assertTrue(refusal.getMessage().contains("longer than the stock"));
    }

    @Property(tries = 150)
    void everyPlanIsValidAndNotBelowItsBound(@ForAll @Size(min = 1, max = 12) List<@IntRange(min = 50, max = 2000) Integer> lengths,
            @ForAll @IntRange(min = 1, max = 6) int count, @ForAll @IntRange(min = 0, max = 5) int kerfMm) {
        List<CutOrder> orders = lengths.stream().map(length -> CutOrder.ofMm(length, count)).toList();
        CuttingPlan plan = new CuttingStock(2000, kerfMm, Work.UNWATCHED).plan(orders);
        assertValid(plan, orders);
        long total = orders.stream().mapToLong(order -> order.lengthHmm() * order.count()).sum();
        assertTrue(plan.stocks() * 200_000L >= total);
        assertEquals(plan, new CuttingStock(2000, kerfMm, Work.UNWATCHED).plan(orders));
    }

    /** Few pieces: as good as trying every way to share them out. */
    @Property(tries = 200)
    void fewPiecesAreCutFromTheFewestLengths(@ForAll @Size(min = 1, max = 8) List<@IntRange(min = 20, max = 100) Integer> lengths) {
        CuttingPlan plan = new CuttingStock(100, 0, Work.UNWATCHED).plan(lengths.stream().map(length -> CutOrder.ofMm(length, 1)).toList());
        assertEquals(fewest(lengths, 0, new ArrayList<>()), plan.stocks());
        assertTrue(plan.proven());
    }

    private static int fewest(List<Integer> lengths, int next, List<Integer> used) {
        if (next == lengths.size()) {
            return used.size();
        }
        int best = Integer.MAX_VALUE;
        for (int bin = 0; bin <= used.size(); bin++) {
            List<Integer> now = new ArrayList<>(used);
            if (bin == used.size()) {
                now.add(lengths.get(next));
            } else if (used.get(bin) + lengths.get(next) <= 100) {
                now.set(bin, used.get(bin) + lengths.get(next));
            } else {
                continue;
            }
            best = Math.min(best, fewest(lengths, next + 1, now));
        }
        return best;
    }
}
