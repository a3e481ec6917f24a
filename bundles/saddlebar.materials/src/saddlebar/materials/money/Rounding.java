package saddlebar.materials.money;

import java.math.BigDecimal;
import java.math.RoundingMode;

import saddlebar.model.units.Require;

/**
 * Money is rounded once a line, and totals are sums of rounded lines. Costs go to the even neighbour where they lie in the middle; tax goes up, as most
 * tax laws ask (a setting).
 *
 * @param decimals of the currency's minor unit, 0 to 4
 * @param tax      how tax is rounded
 */
public record Rounding(int decimals, RoundingMode tax) {
    public Rounding {
        Require.within("decimals", decimals, 0, 4);
    }

    public static Rounding of(String currency) {
        return new Rounding(Currencies.decimals(currency), RoundingMode.HALF_UP);
    }

    public BigDecimal cost(BigDecimal amount) {
        return amount.setScale(decimals, RoundingMode.HALF_EVEN);
    }

    public BigDecimal tax(BigDecimal amount) {
        return amount.setScale(decimals, tax);
    }
}
