package saddlebar.trace.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FlawRateAndChartTest {
    /** Newcombe, Statistics in Medicine 17, 1998, table I, method 3 (from memory). */
    @ParameterizedTest
    @CsvSource({"81, 263, 0.2553, 0.3662", "15, 148, 0.0624, 0.1605", "0, 20, 0, 0.1611", "1, 29, 0.0061, 0.1718"})
    void scoreIntervals(long bad, long n, double low, double high) {
        Estimate rate = FlawRate.of(bad, n);
        assertEquals(low, rate.low(), 5e-5);
        assertEquals(high, rate.high(), 5e-5);
        assertThrows(IllegalArgumentException.class, () -> FlawRate.of(3, 2));
    }

    /** NIST/SEMATECH e-Handbook, 6.3.3.2: thirty wafers of 50 chips, mean share 0.2313. */
    @Test
    void limitsOfTheHandbook() {
        FlawChart chart = FlawChart.around(0.2313, List.of(new FlawChart.Group("wafer 15", 24, 50), new FlawChart.Group("wafer 16", 12, 50)));
        assertEquals(0.4102, chart.points().get(0).high(), 5e-5);
        assertEquals(0.0524, chart.points().get(0).low(), 5e-5);
        assertTrue(chart.points().get(0).outside());
        assertFalse(chart.points().get(1).outside());
    }

    @Test
    void fewExpectedTakeTheBinomialsOwnLimits() {
        FlawChart chart = FlawChart.around(0.05, List.of(new FlawChart.Group("a", 3, 20), new FlawChart.Group("b", 5, 20)));
        // binomial of 20 at 0.05: P(X > 4) = 0.00257, P(X > 5) = 0.00033 (tables of the binomial distribution)
        assertEquals(5 / 20.0, chart.points().get(0).high());
        assertFalse(chart.points().get(1).outside());
        assertTrue(FlawChart.around(0.05, List.of(new FlawChart.Group("c", 6, 20))).points().get(0).outside());
    }

    @Test
    void eightOnOneSideAreAShift() {
        List<FlawChart.Group> groups = IntStream.range(0, 16).mapToObj(i -> new FlawChart.Group("day " + i, i < 8 ? 8 : 12, 100)).toList();
        FlawChart chart = FlawChart.of(groups);
        assertEquals(0.10, chart.centre(), 1e-12);
        assertEquals(List.of(7, 15), IntStream.range(0, 16).filter(i -> chart.points().get(i).shifted()).boxed().toList());
    }
}
