package saddlebar.materials.cost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import saddlebar.materials.money.DatedPrice;
import saddlebar.materials.money.Prices;
import saddlebar.materials.money.Rounding;

class CostRangeTest {
    private static ReckonedLine line(String source, double amount, Spread spread) {
        return ReckonedLine.of(source, "thing", "", amount, "piece", BigDecimal.ONE, Rounding.of("EUR"), spread);
    }

    /** 23.25 g/m2 over 0.5 m2 at 200.00 a kg is 2.325, booked 2.32: to the even neighbour. */
    @Test
    void lineIsRoundedOnce() {
        ReckonedLine paint = ReckonedLine.of("paint", "powder", "", 23.25 * 0.5, "g", new BigDecimal("200.00").scaleByPowerOfTen(-3), Rounding.of("EUR"),
                Spread.SURE);
        assertEquals(new BigDecimal("11.625"), paint.quantity());
        assertEquals(new BigDecimal("2.32"), paint.amount());
    }

    /**
     * The triangular distribution's quantiles in closed form (Evans, Hastings, Peacock, Statistical Distributions; from memory): with a = 0.8, c = 1, b = 1.5,
     * F(c) = 2/7; q(0.1) = 0.8 + sqrt(0.1 x 0.7 x 0.2) = 0.91832, q(0.5) = 1.5 - sqrt(0.5 x 0.7 x 0.5) = 1.08167, q(0.9) = 1.5 - sqrt(0.1 x 0.35) = 1.31292.
     */
    @Test
    void oneSourceAgainstTheClosedForm() {
        CostRange range = CostRange.of(List.of(line("labour", 1000, new Spread(0.8, 1.5))), 20_000, 1);
        assertEquals(918.32, range.low(), 9);
        assertEquals(1081.67, range.likely(), 9);
        assertEquals(1312.92, range.high(), 9);
    }

    /** Two sources apart spread less than one of their sum; two lines of one source spread just as much. */
    @Test
    void sourcesApartAndTogether() {
        Spread spread = new Spread(0.8, 1.5);
        CostRange one = CostRange.of(List.of(line("a", 1000, spread)), 20_000, 1);
        CostRange together = CostRange.of(List.of(line("a", 400, spread), line("a", 600, spread)), 20_000, 1);
        CostRange apart = CostRange.of(List.of(line("a", 500, spread), line("b", 500, spread)), 20_000, 1);
        assertEquals(one.high(), together.high(), 1e-6);
        assertTrue(apart.high() - apart.low() < 0.85 * (one.high() - one.low()));
        assertEquals(123, CostRange.of(List.of(line("a", 123, Spread.SURE)), 100, 5).low(), 1e-9);
    }

    @Property(tries = 200)
    void sumsAreExact(@ForAll @Size(max = 30) List<@DoubleRange(min = 0, max = 10_000) Double> amounts) {
        List<ReckonedLine> lines = new ArrayList<>();
        amounts.forEach(amount -> lines.add(line("s" + lines.size() % 4, amount, Spread.SURE)));
        List<DatedPrice> book = List.of(new DatedPrice("overhead-share", LocalDate.MIN, "EUR", "", new BigDecimal("0.17")),
                new DatedPrice("margin-share", LocalDate.MIN, "EUR", "", new BigDecimal("0.13")), new DatedPrice("tax-share", LocalDate.MIN, "EUR", "",
                        new BigDecimal("0.19")));
        Estimate estimate = Estimate.priced(lines, new Prices(LocalDate.of(2026, 1, 1), "EUR", "EUR", book), 1);
        assertEquals(0, estimate.cost().compareTo(lines.stream().map(ReckonedLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add)));
        assertEquals(0, estimate.net().compareTo(estimate.cost().add(estimate.overhead()).add(estimate.margin())));
        assertEquals(0, estimate.total().compareTo(estimate.net().add(estimate.tax())));
        assertEquals(0, estimate.total().compareTo(estimate.deposits().stream().map(part -> part.amount()).reduce(BigDecimal.ZERO, BigDecimal::add)));
        assertTrue(estimate.net().scale() <= 2 && estimate.total().scale() <= 2);
    }
}
