package saddlebar.materials.money;

import java.util.Currency;

import saddlebar.model.problem.Refusal;

/** Currencies by their ISO 4217 code, and rounding to their minor unit. */
public final class Currencies {
    private Currencies() {
    }

    /** Decimals of the minor unit. */
    public static int decimals(String code) {
        try {
            return Math.max(0, Currency.getInstance(code).getDefaultFractionDigits());
        } catch (IllegalArgumentException e) {
            throw new Refusal("currency", "'" + code + "' is no currency", "take a code of ISO 4217, such as EUR", e);
        }
    }
}
