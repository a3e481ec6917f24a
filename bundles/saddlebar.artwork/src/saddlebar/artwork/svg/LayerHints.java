package saddlebar.artwork.svg;

import java.util.Locale;
import java.util.regex.Pattern;

import saddlebar.artwork.LayerHint;

/** What a layer may be by its name, in the words of the trade. */
public final class LayerHints {
    private static final Pattern CUTLINE = words("cut ?lines?", "cuts?", "cutting", "lead ?lines?", "cartoon lines?");
    private static final Pattern TRACE = words("trace", "traces", "tracing", "trace ?lines?", "line ?work");
    private static final Pattern MATT = words("matt?e?s?", "shades?", "shading", "shadows?", "tones?", "half ?tones?");
    private static final Pattern LETTERING = words("lettering", "letters?", "texts?", "inscriptions?", "captions?");
    private static final Pattern STAIN = words("stains?", "silver ?stains?");
    private static final Pattern ENAMEL = words("enamels?");
    private static final Pattern GLASS = words("glass(es)?", "colou?rs?", "colou?rways?");

    private LayerHints() {
    }

    private static Pattern words(String... words) {
        return Pattern.compile("(^|[^a-z])(" + String.join("|", words) + ")($|[^a-z])");
    }

    public static LayerHint of(String label) {
        String name = label.toLowerCase(Locale.ROOT).replaceAll("[-_.\\s]+", " ");
        if (CUTLINE.matcher(name).find()) {
            return LayerHint.CUTLINE;
        } else if (TRACE.matcher(name).find()) {
            return LayerHint.TRACE;
        } else if (LETTERING.matcher(name).find()) {
            return LayerHint.LETTERING;
        } else if (STAIN.matcher(name).find()) {
            return LayerHint.STAIN;
        } else if (ENAMEL.matcher(name).find()) {
            return LayerHint.ENAMEL;
        } else if (MATT.matcher(name).find()) {
            return LayerHint.MATT;
        } else if (GLASS.matcher(name).find()) {
            return LayerHint.GLASS;
        }
        return LayerHint.NONE;
    }
}
