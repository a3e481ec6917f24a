package saddlebar.production.light;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A colour as the model writes it: {@code #rrggbb} in sRGB. */
final class ColourText {
    private static final Pattern RGB = Pattern.compile("#([0-9a-fA-F]{6})");

    private ColourText() {
    }

    /** 0xRRGGBB, or nothing if no colour is written. */
    static Optional<Integer> rgb(String text) {
        if (text == null) {
            return Optional.empty();
        }
        Matcher matcher = RGB.matcher(text.strip());
        return matcher.matches() ? Optional.of(Integer.parseInt(matcher.group(1), 16)) : Optional.empty();
    }
}
