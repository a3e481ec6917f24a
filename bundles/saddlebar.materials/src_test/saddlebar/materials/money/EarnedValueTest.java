package saddlebar.materials.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import saddlebar.model.problem.Refusal;

class EarnedValueTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 31);
    private static final Rounding EURO = Rounding.of("EUR");

    private static EarnedValue.Step step(String share, int dueMonth, int doneMonth) {
        return new EarnedValue.Step("step", new BigDecimal(share), Optional.of(LocalDate.of(2026, dueMonth, 1)),
                doneMonth == 0 ? Optional.empty() : Optional.of(LocalDate.of(2026, doneMonth, 1)));
    }

    /** By hand: of 10 000, half is due and 40 % done for 5 000 spent: CPI 4000/5000 = 0.8, SPI 4000/5000 = 0.8, forecast 10 000/0.8 = 12 500. */
    @Test
    void byHand() {
        EarnedValue value = EarnedValue.of(List.of(step("0.4", 2, 2), step("0.1", 3, 0), step("0.5", 6, 0)), DAY, new BigDecimal("10000"),
                new BigDecimal("5000"), EURO).orElseThrow();
        assertEquals(new BigDecimal("5000.00"), value.planned());
        assertEquals(new BigDecimal("4000.00"), value.earned());
        assertEquals(0.8, value.costIndex().orElseThrow(), 1e-12);
        assertEquals(0.8, value.scheduleIndex().orElseThrow(), 1e-12);
        assertEquals(new BigDecimal("12500.00"), value.forecast(EURO).orElseThrow());
    }

    @Test
    void nothingIsMadeUp() {
        assertEquals(Optional.empty(), EarnedValue.of(List.of(step("0", 1, 1)), DAY, BigDecimal.TEN, BigDecimal.ONE, EURO));
        EarnedValue none = EarnedValue.of(List.of(step("1", 12, 0)), DAY, BigDecimal.TEN, BigDecimal.ZERO, EURO).orElseThrow();
        assertEquals(Optional.empty(), none.costIndex());
        assertEquals(Optional.empty(), none.scheduleIndex());
        assertEquals(Optional.empty(), none.forecast(EURO));
        assertThrows(IllegalArgumentException.class, () -> step("1.1", 1, 0));
    }

    @Test
    void pricesByDayAndCurrencyAndNeverBelowZero() {
        List<DatedPrice> book = List.of(DatedPrice.of("flux", Optional.empty(), Optional.empty(), "m2", new BigDecimal("3"), "EUR"),
                DatedPrice.of("flux", Optional.of(LocalDate.of(2026, 3, 1)), Optional.of("USD"), "m2", new BigDecimal("4"), "EUR"),
                DatedPrice.of("rate-USD@2026-03-31", Optional.empty(), Optional.empty(), "", new BigDecimal("0.9"), "EUR"));
        assertEquals(new BigDecimal("3"), new Prices(LocalDate.of(2026, 2, 1), "EUR", "EUR", book).need("flux", "m2"));
        assertEquals(0, new BigDecimal("3.6").compareTo(new Prices(DAY, "EUR", "EUR", book).need("flux", "m2")));
        assertThrows(Refusal.class, () -> new Prices(DAY.plusDays(1), "EUR", "EUR", book).need("flux", "m2"), "no rate for that day");
        assertThrows(Refusal.class, () -> DatedPrice.parse("flux", "m2", new BigDecimal("-1"), "EUR"));
        assertThrows(Refusal.class, () -> new Prices(DAY, "EUR", "EUR", book).ofStudio(new BigDecimal("-0.01")));
        assertThrows(Refusal.class, () -> DatedPrice.of("flux", Optional.empty(), Optional.of("XQQ"), "m2", BigDecimal.ONE, "EUR"));
    }
}
