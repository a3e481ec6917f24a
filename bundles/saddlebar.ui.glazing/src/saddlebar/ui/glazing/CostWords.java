package saddlebar.ui.glazing;

import java.math.BigDecimal;
import java.text.NumberFormat;
import java.util.Locale;

import saddlebar.materials.cost.CostRange;

/** What the parts say in the language of whoever looks at them. */
final class CostWords {
    private CostWords() {
    }

    static String number(double value, int digits) {
        NumberFormat numbers = NumberFormat.getNumberInstance(Locale.getDefault(Locale.Category.FORMAT));
        numbers.setMinimumFractionDigits(digits);
        numbers.setMaximumFractionDigits(digits);
        return numbers.format(value);
    }

    static String money(BigDecimal amount) {
        NumberFormat numbers = NumberFormat.getNumberInstance(Locale.getDefault(Locale.Category.FORMAT));
        numbers.setMinimumFractionDigits(amount.scale());
        numbers.setMaximumFractionDigits(amount.scale());
        return numbers.format(amount);
    }

    static String quantity(BigDecimal quantity) {
        NumberFormat numbers = NumberFormat.getNumberInstance(Locale.getDefault(Locale.Category.FORMAT));
        numbers.setMaximumFractionDigits(3);
        return numbers.format(quantity);
    }

    static String range(CostRange range) {
        return number(range.low(), 0) + " \u2026 " + number(range.likely(), 0) + " \u2026 " + number(range.high(), 0);
    }
}
