package saddlebar.ui.screening;

import java.text.NumberFormat;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import saddlebar.model.units.Units;

/** What is measured in a recipe, as people type it: {@code 40 lpi}, {@code 16 /cm}, {@code 22,5°}, {@code 30 %}, {@code 254 um}, {@code 1/100 in}. */
public enum TypedNumber {
    /** A number without a unit. */
    PLAIN("", 1, Map.of("", 1.0)),
    /** Lines an inch; plain numbers are lines an inch. */
    RULING(" lpi", 1, Map.of("", 1.0, "lpi", 1.0, "/in", 1.0, "lines/in", 1.0, "/cm", Units.MM_PER_INCH / 10, "lines/cm", Units.MM_PER_INCH / 10, "l/cm",
            Units.MM_PER_INCH / 10)),
    /** Degrees. */
    ANGLE("°", 1, Map.of("", 1.0, "°", 1.0, "deg", 1.0, "degrees", 1.0)),
    /** A share of 0 to 1, typed in per cent. */
    SHARE(" %", 0.01, Map.of("", 0.01, "%", 0.01)),
    /** Millimetres. */
    FINE_LENGTH(" mm", 1, Map.of("", 1.0, "mm", 1.0, "um", 0.001, "\u00B5m", 0.001, "\u03BCm", 0.001, "cm", 10.0, "in", Units.MM_PER_INCH, "\"",
            Units.MM_PER_INCH)),
    /** Device pixels an inch. */
    PIXELS(" dpi", 1, Map.of("", 1.0, "dpi", 1.0, "px/in", 1.0)),
    /** How far away somebody stands, metres. */
    DISTANCE(" m", 1, Map.of("", 1.0, "m", 1.0, "cm", 0.01, "mm", 0.001, "ft", 0.3048, "in", Units.MM_PER_INCH / 1000));

    private static final Pattern TYPED = Pattern.compile("([+-]?(?:\\d+(?:[.,]\\d*)?|[.,]\\d+))(?:\\s*/\\s*(\\d+))?\\s*(\\D*)");
    private static final int MOST_DIGITS = 4;

    private final String unit;
    private final double shownAs;
    private final Map<String, Double> units;

    TypedNumber(String unit, double shownAs, Map<String, Double> units) {
        this.unit = unit;
        this.shownAs = shownAs;
        this.units = units;
    }

    /** The value that was typed; empty if it is none. */
    public OptionalDouble read(String typed) {
        Matcher matcher = TYPED.matcher(typed.strip());
        Double factor = matcher.matches() ? units.get(matcher.group(3).strip().toLowerCase(Locale.ROOT)) : null;
        if (factor == null) {
            return OptionalDouble.empty();
        }
        double below = matcher.group(2) == null ? 1 : Double.parseDouble(matcher.group(2));
        return below == 0 ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(matcher.group(1).replace(',', '.')) / below * factor);
    }

    /** As it is shown, with its unit; {@link #read} reads it. */
    public String words(double value, Locale locale) {
        NumberFormat numbers = NumberFormat.getNumberInstance(locale);
        numbers.setGroupingUsed(false);
        numbers.setMaximumFractionDigits(MOST_DIGITS);
        return numbers.format(value / shownAs) + unit;
    }
}
