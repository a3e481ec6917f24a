package saddlebar.materials.money;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import saddlebar.model.problem.Refusal;

/**
 * The price book of one day, in one currency. A price holds from its day until the next of its word. A rate of exchange holds on its own day only, since
 * yesterday's is a guess; its word is {@code rate-CUR}, and it says how much of the studio's currency one unit of CUR costs.
 *
 * @param day            on which it is reckoned
 * @param studioCurrency of prices without one
 * @param currency       in which it is reckoned
 * @param book           every price
 */
public record Prices(LocalDate day, String studioCurrency, String currency, List<DatedPrice> book) {
    /** Words of rates of exchange begin so. */
    public static final String RATE = "rate-";

    public Prices {
        Currencies.decimals(studioCurrency);
        Currencies.decimals(currency);
        book = List.copyOf(book);
    }

    public Rounding rounding() {
        return Rounding.of(currency);
    }

    /** The price that holds on the day, in the currency of this reckoning. */
    public Optional<BigDecimal> find(String word) {
        return latest(word).map(price -> exchanged(price.price(), price.currency()));
    }

    /** @throws Refusal if the book has none for that day */
    public BigDecimal need(String word, String unit) {
        return find(word).orElseThrow(() -> new Refusal("price book", "it has no price of '" + word + "' on " + day,
                "put one in, a " + unit + ", or date an older one earlier"));
    }

    /** A price that another part of the studio's tables holds, in the studio's currency. */
    public BigDecimal ofStudio(BigDecimal price) {
        if (price.signum() < 0) {
            throw new Refusal("studio", "a price is " + price.toPlainString(), "a price is 0 or more");
        }
        return exchanged(price, studioCurrency);
    }

    /** A number that is no money, such as minutes or a share. */
    public Optional<BigDecimal> number(String word) {
        return latest(word).map(DatedPrice::price);
    }

    /** A number that must lie within bounds, both included. */
    public BigDecimal number(String word, BigDecimal usual, String least, String most) {
        BigDecimal number = number(word).orElse(usual);
        if (number.compareTo(new BigDecimal(least)) < 0 || number.compareTo(new BigDecimal(most)) > 0) {
            throw new Refusal("price book", word + " is " + number.toPlainString(), "put in " + least + " to " + most);
        }
        return number;
    }

    /** Every word of the book that begins so, such as {@code tax-}. */
    public List<String> words(String beginning) {
        return book.stream().map(DatedPrice::word).filter(word -> word.startsWith(beginning)).distinct().sorted().toList();
    }

    private Optional<DatedPrice> latest(String word) {
        return book.stream().filter(price -> price.word().equals(word) && !price.from().isAfter(day)).max(Comparator.comparing(DatedPrice::from));
    }

    /** An amount of that day in another currency, in the currency of this reckoning. */
    public BigDecimal exchange(BigDecimal amount, String from, LocalDate on) {
        return new Prices(on, studioCurrency, currency, book).exchanged(amount, from);
    }

    private BigDecimal exchanged(BigDecimal price, String from) {
        if (from.equals(currency)) {
            return price;
        }
        return price.multiply(rate(from)).divide(rate(currency), MathContext.DECIMAL64);
    }

    private BigDecimal rate(String code) {
        if (code.equals(studioCurrency)) {
            return BigDecimal.ONE;
        }
        return book.stream().filter(price -> price.word().equals(RATE + code) && price.from().equals(day) && price.price().signum() > 0).findFirst()
                .map(DatedPrice::price).orElseThrow(() -> new Refusal("price book", "it has no rate of " + code + " for " + day,
                        "put in " + RATE + code + "@" + day + " with the " + studioCurrency + " that one " + code + " costs"));
    }
}
