package saddlebar.materials.money;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/**
 * Tax on a price of one rate.
 *
 * @param rate    0 to 1
 * @param perLine rounded on each line and then summed; else on the sum of the lines
 */
public record Tax(BigDecimal rate, boolean perLine) {
    public Tax {
        if (rate.signum() < 0 || rate.compareTo(BigDecimal.ONE) > 0) {
            throw new IllegalArgumentException("rate must be 0 to 1 but is " + rate);
        }
    }

    /** Tax on net lines. */
    public BigDecimal on(List<BigDecimal> nets, Rounding rounding) {
        if (perLine) {
            return nets.stream().map(net -> rounding.tax(net.multiply(rate))).reduce(BigDecimal.ZERO, BigDecimal::add);
        }
        return rounding.tax(nets.stream().reduce(BigDecimal.ZERO, BigDecimal::add).multiply(rate));
    }

    /** Net within a gross price. */
    public BigDecimal netOf(BigDecimal gross, Rounding rounding) {
        return rounding.tax(gross.divide(BigDecimal.ONE.add(rate), MathContext.DECIMAL64));
    }
}
