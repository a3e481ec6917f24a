package saddlebar.production.light;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

import saddlebar.colour.Light;

/** The light that stands behind a window. */
public enum LightBehind {
    /** North sky by day: CIE D65. */
    NORTH("D65", Light.D65),
    /** A lamp: CIE illuminant A. */
    LAMP("A", Light.A),
    /** Clear sky after sunset, see {@link Light#dusk}. */
    DUSK("dusk", Light.dusk());

    private final String word;
    private final Light light;

    LightBehind(String word, Light light) {
        this.word = word;
        this.light = light;
    }

    /** As written in files and on the command line. */
    public String word() {
        return word;
    }

    public Light light() {
        return light;
    }

    /** By its {@link #word}, whatever the case of its letters. */
    public static Optional<LightBehind> of(String word) {
        return Arrays.stream(values()).filter(behind -> behind.word.toLowerCase(Locale.ROOT).equals(word.strip().toLowerCase(Locale.ROOT))).findFirst();
    }
}
