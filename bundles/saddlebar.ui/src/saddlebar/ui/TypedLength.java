package saddlebar.ui;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import saddlebar.model.units.Units;
import saddlebar.ui.easel.RulerScale;

/**
 * Lengths as people type them: {@code 470 mm}, {@code 47 cm}, {@code 18 1/2 in}, {@code 18.5"}, {@code 18½"}; a number without a unit is in the
 * unit that the person has chosen. A comma may stand for the point.
 */
public final class TypedLength {
    private static final Pattern LENGTH = Pattern.compile("(?:(\\d+(?:[.,]\\d*)?|[.,]\\d+)(?!\\d|\\s*/)\\s*)?(?:(\\d+)\\s*/\\s*(\\d+)\\s*)?"
            + "(mm|cm|m|in|inch|inches|zoll|\")?", Pattern.CASE_INSENSITIVE);

    private final RulerScale.Unit usual;

    public TypedLength(RulerScale.Unit usual) {
        this.usual = usual;
    }

    /** In mm; empty if it is no length. */
    public OptionalDouble mm(String typed) {
        String plain = typed.strip().replace("½", " 1/2").replace("¼", " 1/4").replace("¾", " 3/4").strip();
        Matcher matcher = LENGTH.matcher(plain);
        if (!matcher.matches() || matcher.group(1) == null && matcher.group(2) == null) {
            return OptionalDouble.empty();
        }
        double number = matcher.group(1) == null ? 0 : Double.parseDouble(matcher.group(1).replace(',', '.'));
        if (matcher.group(2) != null) {
            double bottom = Double.parseDouble(matcher.group(3));
            if (bottom == 0) {
                return OptionalDouble.empty();
            }
            number += Double.parseDouble(matcher.group(2)) / bottom;
        }
        return OptionalDouble.of(number * mmPer(matcher.group(4)));
    }

    private double mmPer(String unit) {
        if (unit == null) {
            return usual == RulerScale.Unit.INCH ? Units.MM_PER_INCH : 1;
        }
        return switch (unit.toLowerCase(Locale.ROOT)) {
            case "mm" -> 1;
            case "cm" -> 10;
            case "m" -> 1000;
            default -> Units.MM_PER_INCH;
        };
    }
}
