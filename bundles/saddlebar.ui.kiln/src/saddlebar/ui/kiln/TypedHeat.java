package saddlebar.ui.kiln;

import java.text.NumberFormat;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What stands in a schedule, as people type it: {@code 150 K/h}, {@code 270 F/h}, {@code 540 °C}, {@code 1200 F}, {@code 10 min}, {@code 1,5 h}, {@code 1:30}. */
public enum TypedHeat {
    /** K/h; empty is as fast as the kiln goes, which is 0. */
    RATE(" K/h"),
    /** degC. */
    TEMPERATURE(" \u00b0C"),
    /** Minutes; empty is none. */
    TIME(" min");

    private static final Pattern TYPED = Pattern.compile("([+-]?(?:\\d+(?:[.,]\\d*)?|[.,]\\d+))\\s*([^\\d]*)");
    private static final Pattern CLOCK = Pattern.compile("(\\d+):([0-5]\\d)");
    private static final double F_PER_K = 1.8;
    private static final double F_AT_ZERO_C = 32;
    private static final int MINUTES = 60;

    private final String unit;

    TypedHeat(String unit) {
        this.unit = unit;
    }

    /** The value that was typed; empty if it is none. */
    public OptionalDouble read(String typed) {
        String text = typed.strip();
        if (text.isEmpty()) {
            return this == TEMPERATURE ? OptionalDouble.empty() : OptionalDouble.of(0);
        }
        Matcher clock = CLOCK.matcher(text);
        if (this == TIME && clock.matches()) {
            return OptionalDouble.of(Double.parseDouble(clock.group(1)) * MINUTES + Double.parseDouble(clock.group(2)));
        }
        Matcher matcher = TYPED.matcher(text);
        if (!matcher.matches()) {
            return OptionalDouble.empty();
        }
        double number = Double.parseDouble(matcher.group(1).replace(',', '.'));
        return inOurUnit(number, matcher.group(2).strip().replace("\u00b0", "").toLowerCase(Locale.ROOT)).map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    private Optional<Double> inOurUnit(double number, String word) {
        return Optional.ofNullable(switch (this) {
            case RATE -> switch (word) {
                case "", "k/h", "c/h" -> number;
                case "f/h" -> number / F_PER_K;
                case "k/min", "c/min" -> number * MINUTES;
                default -> null;
            };
            case TEMPERATURE -> switch (word) {
                case "", "c" -> number;
                case "f" -> (number - F_AT_ZERO_C) / F_PER_K;
                default -> null;
            };
            case TIME -> switch (word) {
                case "", "min" -> number;
                case "h" -> number * MINUTES;
                default -> null;
            };
        });
    }

    /** As it is shown, with its unit; {@link #read} reads it. */
    public String words(double value, Locale locale) {
        if (this == RATE && value == 0) {
            return "";
        }
        NumberFormat numbers = NumberFormat.getNumberInstance(locale);
        numbers.setGroupingUsed(false);
        numbers.setMaximumFractionDigits(1);
        return numbers.format(value) + unit;
    }
}
