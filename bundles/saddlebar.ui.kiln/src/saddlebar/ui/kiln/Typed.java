package saddlebar.ui.kiln;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import saddlebar.production.kiln.RecordedFiring;

/** What people type into the small questions of the bench. */
final class Typed {
    private static final Pattern WITNESS = Pattern.compile("(\\S.*?)[\\s:=]+([\\d.,]+\\s*\u00b0?\\s*[CcFf]?)");
    private static final double MOST_C = 1400;
    private static final double MOST_KWH = 10_000;

    private Typed() {
    }

    /** A place and what was shown there, such as {@code A1 652} or {@code A1: 1206 F}. */
    static Optional<RecordedFiring.Witness> witness(String typed) {
        Matcher matcher = WITNESS.matcher(typed.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        OptionalDouble shown = TypedHeat.TEMPERATURE.read(matcher.group(2));
        return shown.isPresent() && shown.getAsDouble() >= 0 && shown.getAsDouble() <= MOST_C
                ? Optional.of(new RecordedFiring.Witness(matcher.group(1).strip(), shown.getAsDouble()))
                : Optional.empty();
    }

    /** Energy, with or without its unit. */
    static OptionalDouble kWh(String typed) {
        String plain = typed.strip().replaceFirst("(?i)\\s*kwh$", "").replace(',', '.');
        try {
            double value = Double.parseDouble(plain);
            return value > 0 && value <= MOST_KWH ? OptionalDouble.of(value) : OptionalDouble.empty();
        } catch (NumberFormatException noNumber) {
            return OptionalDouble.empty();
        }
    }
}
