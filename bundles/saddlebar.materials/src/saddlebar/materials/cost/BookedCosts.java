package saddlebar.materials.cost;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import saddlebar.materials.job.CostJob;
import saddlebar.materials.job.JobRecords;
import saddlebar.materials.money.Prices;
import saddlebar.model.store.RecordLine;

/**
 * What records say about cost: the estimate frozen last, and what it came to. Money comes from {@code cost} records; a source that has none is
 * reckoned from what was used: powder of mixes and energy of firings of this commission at the prices of the day on which it is reckoned, and stock that was
 * taken out with a price.
 *
 * @param frozen the lines of the quote frozen last; empty if there is none
 * @param quote  its number
 */
public record BookedCosts(List<BookedLine> frozen, String quote, List<BookedLine> actual) {
    /** Setting of a cost record that names the quote it was frozen with. */
    static final String QUOTE = "quote";
    /** A number of more digits is no quantity or money of this world. */
    private static final int MOST_DIGITS = 30;

    public static BookedCosts of(CostJob job, JobRecords records, Prices prices) {
        List<RecordLine> costs = records.commission().stream().filter(line -> line.kind().equals("cost")).toList();
        String quote = "";
        for (RecordLine line : costs) {
            if (isEstimate(line)) {
                quote = text(line, QUOTE);
            }
        }
        List<BookedLine> frozen = new ArrayList<>();
        List<BookedLine> actual = new ArrayList<>();
        Set<String> booked = new HashSet<>();
        for (RecordLine line : costs) {
            if (!isEstimate(line)) {
                actual.add(booked(line, prices));
                booked.add(text(line, "sourceKey"));
            } else if (text(line, QUOTE).equals(quote)) {
                frozen.add(booked(line, prices));
            }
        }
        used(job, records, prices).stream().filter(line -> !booked.contains(line.source())).forEach(actual::add);
        return new BookedCosts(frozen, quote, actual);
    }

    private static List<BookedLine> used(CostJob job, JobRecords records, Prices prices) {
        List<BookedLine> used = new ArrayList<>();
        for (RecordLine line : records.commission()) {
            if (line.kind().equals("mix")) {
                job.studio().paint(text(line, "paintId")).ifPresent(paint -> {
                    String source = paint.flags().gold() ? PaintCost.GOLD : "paint";
                    powder(line, paint.pricePerKg(), "powderG", source, paint.name() + " powder", prices).ifPresent(used::add);
                    powder(line, paint.mediumPricePerKg(), "mediumG", "paint", "medium for " + paint.name(), prices).ifPresent(used::add);
                });
            } else if (line.kind().equals("fire")) {
                number(line, "energyKwh").ifPresent(kwh -> used.add(line("energy", "energy of the kiln", kwh, "kWh", prices.need("energy", "kWh"), prices)));
            } else if (line.kind().equals("stock") && !text(line, "sourceKey").isEmpty()) {
                Optional<BigDecimal> out = number(line, "quantity").filter(quantity -> quantity.signum() < 0).map(BigDecimal::negate);
                Optional<BigDecimal> price = number(line, "unitPrice");
                if (out.isPresent() && price.isPresent()) {
                    used.add(line(text(line, "sourceKey"), text(line, "what").isEmpty() ? "from stock" : text(line, "what"), out.get(), text(line, "unit"),
                            prices.ofStudio(price.get()), prices));
                }
            }
        }
        return used;
    }

    private static Optional<BookedLine> powder(RecordLine line, Optional<BigDecimal> perKg, String key, String source, String what,
            Prices prices) {
        return number(line, key).filter(grams -> grams.signum() > 0).flatMap(grams -> perKg
                .map(price -> line(source, what, grams, "g", prices.ofStudio(price).scaleByPowerOfTen(-3), prices)));
    }

    private static BookedLine line(String source, String what, BigDecimal quantity, String unit, BigDecimal unitPrice, Prices prices) {
        return new BookedLine(source, what, quantity, unit, prices.rounding().cost(quantity.multiply(unitPrice)));
    }

    private static BookedLine booked(RecordLine line, Prices prices) {
        String currency = text(line, "currency").isEmpty() ? prices.studioCurrency() : text(line, "currency");
        LocalDate day = line.time().atZone(ZoneOffset.UTC).toLocalDate();
        BigDecimal quantity = number(line, "quantity").orElse(BigDecimal.ONE);
        BigDecimal amount = number(line, "amount").orElseGet(() -> quantity.multiply(number(line, "unitPrice").orElse(BigDecimal.ZERO)));
        return new BookedLine(text(line, "sourceKey").isEmpty() ? "other" : text(line, "sourceKey"), text(line, "what"), quantity, text(line, "unit"),
                prices.rounding().cost(prices.exchange(amount, currency, day)), text(line, "window"));
    }

    private static boolean isEstimate(RecordLine line) {
        return Boolean.TRUE.equals(line.settings().get("estimate"));
    }

    private static String text(RecordLine line, String key) {
        return line.settings().get(key) instanceof String text ? text : "";
    }

    /** A number, or money as decimal text. */
    private static Optional<BigDecimal> number(RecordLine line, String key) {
        Object value = line.settings().get(key);
        try {
            return value instanceof Number || value instanceof String
                    ? Optional.of(new BigDecimal(value.toString())).filter(number -> Math.abs((long) number.precision() - number.scale()) <= MOST_DIGITS)
                    : Optional.empty();
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
