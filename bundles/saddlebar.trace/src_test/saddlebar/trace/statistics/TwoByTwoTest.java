package saddlebar.trace.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** Values computed apart from this code from the formulas of the papers named in {@link TwoByTwo}. */
class TwoByTwoTest {
    @Test
    void oddsRisksAndLikeness() {
        TwoByTwo table = new TwoByTwo(7, 2, 2, 29);
        Estimate odds = table.oddsRatio();
        assertEquals(35.40, odds.value(), 0.005);
        assertEquals(5.15, odds.low(), 0.005);
        assertEquals(243.3, odds.high(), 0.05);
        assertEquals(12.06, table.riskRatio(), 0.005);
        assertEquals(0.7778, table.ochiai(), 5e-5);
        assertEquals(0.9234, table.tarantula(), 5e-5);
        assertEquals(0.75, table.rateExposed(), 1e-12);
        assertEquals(0.0781, table.rateOther(), 5e-5);
    }

    @Test
    void oddsStayFiniteWithAnEmptyCorner() {
        Estimate odds = new TwoByTwo(5, 0, 3, 20).oddsRatio();
        assertEquals(64.43, odds.value(), 0.005);
        assertEquals(2.876, odds.low(), 0.0005);
        assertEquals(1443, odds.high(), 0.5);
    }

    @Test
    void aNegativeCountIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new TwoByTwo(1, -1, 0, 0));
    }
}
