package saddlebar.materials.money;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Objects;
import java.util.Optional;

import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Require;

/**
 * A price as a price book holds it. Its key is {@code WORD}, {@code WORD@DAY} or {@code WORD@DAY:CURRENCY}: without a day it has always held, without
 * a currency it is the studio's.
 *
 * @param word     by which a source of cost finds it
 * @param from     first day on which it holds
 * @param currency ISO 4217
 * @param unit     what it is the price of
 */
public record DatedPrice(String word, LocalDate from, String currency, String unit, BigDecimal price) {
    public DatedPrice {
        Require.text("word", word);
        Objects.requireNonNull(from, "from");
        Require.text("currency", currency);
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(price, "price");
        if (price.signum() < 0) {
            throw new Refusal("price book", "the price of '" + word + "' is " + price.toPlainString(),
                    "a price is 0 or more; what is given back is a discount line");
        }
    }

    /** An item of a price book: its fields count before what an older book wrote into the key. */
    public static DatedPrice of(String key, Optional<LocalDate> from, Optional<String> currency, String unit, BigDecimal price, String studioCurrency) {
        DatedPrice written = parse(key, unit, price, currency.orElse(studioCurrency));
        currency.ifPresent(Currencies::decimals);
        return new DatedPrice(written.word, from.orElse(written.from), currency.orElse(written.currency), unit, price);
    }

    public static DatedPrice parse(String key, String unit, BigDecimal price, String studioCurrency) {
        int at = key.indexOf('@');
        int colon = key.indexOf(':');
        String word = key.substring(0, at >= 0 ? at : colon >= 0 ? colon : key.length());
        String currency = colon >= 0 ? key.substring(colon + 1) : studioCurrency;
        Currencies.decimals(currency);
        if (word.isBlank()) {
            throw new Refusal("price book", "the key '" + key + "' has no word", "write WORD, WORD@2026-01-31 or WORD@2026-01-31:USD");
        }
        try {
            LocalDate from = at < 0 ? LocalDate.MIN : LocalDate.parse(key.substring(at + 1, colon > at ? colon : key.length()));
            return new DatedPrice(word, from, currency, unit, price);
        } catch (DateTimeParseException e) {
            throw new Refusal("price book", "the key '" + key + "' has no day that can be read", "write it as WORD@2026-01-31", e);
        }
    }
}
