package saddlebar.materials.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import saddlebar.model.problem.Refusal;

class MoneyTest {
    private static final Rounding CENTS = Rounding.of("EUR");
    private static final LocalDate DAY = LocalDate.of(2026, 3, 1);

    private static BigDecimal money(String text) {
        return new BigDecimal(text);
    }

    /** Java's own documentation of HALF_EVEN lists 5.5 -> 6, 2.5 -> 2, -2.5 -> -2. */
    @ParameterizedTest
    @CsvSource({"EUR,2.345,2.34", "EUR,2.355,2.36", "JPY,5.5,6", "JPY,2.5,2", "JPY,-2.5,-2", "EUR,2.325,2.32", "KWD,1.23456,1.235"})
    void costsGoToTheEvenNeighbour(String currency, String exact, String rounded) {
        assertEquals(money(rounded), Rounding.of(currency).cost(money(exact)));
    }

    /** By the identities g = m / (1 + m) and m = g / (1 - g). */
    @Test
    void markupAndMargin() {
        assertEquals(0.33333, Margin.marginOfMarkup(money("0.5")).doubleValue(), 5e-6);
        assertEquals(0.66667, Margin.markupOfMargin(money("0.4")).doubleValue(), 5e-6);
        assertEquals(0, money("125").compareTo(Margin.priceFor(money("100"), money("0.2"))));
        assertThrows(IllegalArgumentException.class, () -> Margin.priceFor(BigDecimal.TEN, BigDecimal.ONE));
    }

    /** 119.00 at 19 % holds 100.00; three lines of 0.05 at 10 % carry 0.03 by line (0.005 up), 0.02 on the sum (0.015 up). */
    @Test
    void taxOfGrossLinesAndSum() {
        assertEquals(money("100.00"), new Tax(money("0.19"), false).netOf(money("119.00"), CENTS));
        List<BigDecimal> nets = List.of(money("0.05"), money("0.05"), money("0.05"));
        assertEquals(money("0.03"), new Tax(money("0.1"), true).on(nets, CENTS));
        assertEquals(money("0.02"), new Tax(money("0.1"), false).on(nets, CENTS));
    }

    /** Wright 1936: with 80 % each doubling takes 0.8 of the time before; 14 windows sum to 8.0923 T1 (computed). */
    @Test
    void learning() {
        Learning learning = new Learning(0.8);
        assertEquals(80, 100 * learning.share(2), 1e-9);
        assertEquals(64, 100 * learning.share(4), 1e-9);
        assertEquals(51.2, 100 * learning.share(8), 1e-9);
        assertEquals(47.651, 100 * learning.share(10), 5e-4);
        assertEquals(8.0923, learning.sum(14), 5e-5);
    }

    @Test
    void depositsOfAThird() {
        assertEquals(List.of(money("33.33"), money("33.33"), money("33.34")), Deposits.THIRDS.of(money("100.00"), CENTS).stream().map(Deposits.Part::amount)
                .toList());
        assertThrows(IllegalArgumentException.class, () -> Deposits.percent(List.of("a", "b"), List.of(50, 49)));
    }

    /** Estimate 10 x 2.00, actual 12 x 2.50: price +6.00, quantity +4.00, together +10.00. */
    @Test
    void variance() {
        Variance variance = Variance.of(money("10"), money("2.00"), money("12"), money("2.50"));
        assertEquals(0, money("6").compareTo(variance.price()));
        assertEquals(0, money("4").compareTo(variance.quantity()));
        assertEquals(0, money("10").compareTo(variance.total()));
    }

    @Test
    void pricesByTheDay() {
        List<DatedPrice> book = List.of(DatedPrice.parse("flux", "m2", money("3"), "EUR"), DatedPrice.parse("flux@2026-02-01", "m2", money("4"), "EUR"),
                DatedPrice.parse("crate@2026-01-01:USD", "panel", money("20"), "EUR"), DatedPrice.parse("rate-USD@2026-03-01", "EUR", money("0.9"), "EUR"));
        Prices march = new Prices(DAY, "EUR", "EUR", book);
        assertEquals(money("4"), march.find("flux").orElseThrow());
        assertEquals(money("3"), new Prices(LocalDate.of(2026, 1, 31), "EUR", "EUR", book).find("flux").orElseThrow());
        assertEquals(0, money("18").compareTo(march.find("crate").orElseThrow()));
        assertEquals(0, money("10").compareTo(new Prices(DAY, "EUR", "USD", book).ofStudio(money("9"))));
        Refusal noRate = assertThrows(Refusal.class, () -> new Prices(DAY.plusDays(1), "EUR", "EUR", book).find("crate"));
        assertEquals("price book: it has no rate of USD for 2026-03-02; put in rate-USD@2026-03-02 with the EUR that one USD costs", noRate.getMessage());
        assertTrue(assertThrows(Refusal.class, () -> march.need("cement", "m2")).getMessage().contains("no price of 'cement'"));
        assertThrows(Refusal.class, () -> DatedPrice.parse("flux@soon", "m2", money("3"), "EUR"));
        assertThrows(Refusal.class, () -> new Prices(DAY, "EUR", "QQQ", book));
    }

    @Property(tries = 500)
    void depositsSumToThePrice(@ForAll @LongRange(min = 0, max = 1_000_000_000L) long cents,
            @ForAll @Size(min = 1, max = 8) List<@IntRange(min = 1, max = 100) Integer> shares) {
        BigDecimal price = BigDecimal.valueOf(cents, 2);
        List<Deposits.Part> parts = new Deposits(shares.stream().map(share -> "m").toList(), shares).of(price, CENTS);
        assertEquals(price, parts.stream().map(Deposits.Part::amount).reduce(BigDecimal.ZERO, BigDecimal::add));
        assertTrue(parts.stream().allMatch(part -> part.amount().signum() >= 0));
    }

    @Property(tries = 500)
    void variancePartsSumToTheWhole(@ForAll @IntRange(max = 10_000) int eq, @ForAll @IntRange(max = 10_000) int ep, @ForAll @IntRange(max = 10_000) int aq,
            @ForAll @IntRange(max = 10_000) int ap) {
        Variance variance = Variance.of(BigDecimal.valueOf(eq), BigDecimal.valueOf(ep, 2), BigDecimal.valueOf(aq), BigDecimal.valueOf(ap, 2));
        BigDecimal whole = BigDecimal.valueOf(aq).multiply(BigDecimal.valueOf(ap, 2)).subtract(BigDecimal.valueOf(eq).multiply(BigDecimal.valueOf(ep, 2)));
        assertEquals(0, whole.compareTo(variance.total()));
    }
}
