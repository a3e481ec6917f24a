package saddlebar.materials.money;

import java.math.BigDecimal;

/**
 * Actual against estimate, split so that the parts sum to the whole: price (ap - ep) x aq, quantity (aq - eq) x ep.
 *
 * @param price    from paying another price
 * @param quantity from using another quantity
 */
public record Variance(BigDecimal price, BigDecimal quantity) {

    public static Variance of(BigDecimal estimatedQuantity, BigDecimal estimatedPrice, BigDecimal actualQuantity, BigDecimal actualPrice) {
        return new Variance(actualPrice.subtract(estimatedPrice).multiply(actualQuantity), actualQuantity.subtract(estimatedQuantity).multiply(estimatedPrice));
    }

    /** Above 0 where it cost more than reckoned. */
    public BigDecimal total() {
        return price.add(quantity);
    }
}
