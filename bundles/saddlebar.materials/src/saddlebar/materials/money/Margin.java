package saddlebar.materials.money;

import java.math.BigDecimal;
import java.math.MathContext;

/** What is put on a cost. A markup m counts from the cost, a margin g from the price: g = m / (1 + m), m = g / (1 - g). */
public final class Margin {
    private static final MathContext DIGITS = MathContext.DECIMAL64;

    private Margin() {
    }

    public static BigDecimal marginOfMarkup(BigDecimal markup) {
        return markup.divide(BigDecimal.ONE.add(markup), DIGITS);
    }

    /** @param margin 0 or more, less than 1 */
    public static BigDecimal markupOfMargin(BigDecimal margin) {
        requireBelowOne(margin);
        return margin.divide(BigDecimal.ONE.subtract(margin), DIGITS);
    }

    /** The price whose share {@code margin} is left when the cost is paid; not rounded. */
    public static BigDecimal priceFor(BigDecimal cost, BigDecimal margin) {
        requireBelowOne(margin);
        return cost.divide(BigDecimal.ONE.subtract(margin), DIGITS);
    }

    private static void requireBelowOne(BigDecimal margin) {
        if (margin.signum() < 0 || margin.compareTo(BigDecimal.ONE) >= 0) {
            throw new IllegalArgumentException("margin must be 0 to less than 1 but is " + margin);
        }
    }
}
