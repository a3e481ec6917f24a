package saddlebar.materials.cost;

import java.math.BigDecimal;
import java.math.RoundingMode;

import saddlebar.materials.money.Rounding;
import saddlebar.model.units.Require;

/**
 * One line of an estimate: amount = quantity x unit price, rounded once.
 *
 * @param source   key of the source that reckoned it
 * @param window   name of the window, empty for the whole commission
 * @param quantity as shown, to six decimals at most
 */
public record ReckonedLine(String source, String what, String window, BigDecimal quantity, String unit, BigDecimal unitPrice, BigDecimal amount,
        Spread spread) {
    private static final int DECIMALS = 6;

    public ReckonedLine {
        Require.text("source", source);
        Require.text("what", what);
    }

    public static ReckonedLine of(String source, String what, String window, double quantity, String unit, BigDecimal unitPrice, Rounding rounding,
            Spread spread) {
        BigDecimal shown = BigDecimal.valueOf(Require.within("quantity", quantity, 0, 1e12)).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
        BigDecimal plain = shown.scale() < 0 ? shown.setScale(0) : shown;
        return new ReckonedLine(source, what, window, plain, unit, unitPrice, rounding.cost(plain.multiply(unitPrice)), spread);
    }
}
