package saddlebar.ui.make;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import saddlebar.model.units.Require;
import saddlebar.production.bring.LayerPurpose;

/**
 * What is brought, to which window, how large.
 *
 * @param art        the file
 * @param windowName an existing window's name for a revision, or a new one's
 * @param title      of a new window; empty: from the file's name
 * @param widthMm    of the drawing's page in glass; empty: as the file says
 * @param page       of a file of several, from 1
 * @param layers     what each layer is for, as the person left it; empty: as it is guessed
 */
public record BringChoice(Path art, String windowName, String title, OptionalDouble widthMm, int page, List<LayerPurpose> layers) {
    private static final Pattern NUMBERED = Pattern.compile("W(\\d+)");

    public BringChoice {
        Objects.requireNonNull(art, "art");
        Require.text("windowName", windowName);
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(widthMm, "widthMm");
        Require.within("page", page, 1, Integer.MAX_VALUE);
        layers = List.copyOf(layers);
    }

    /** The first page, its layers as they are guessed. */
    public BringChoice(Path art, String windowName, String title, OptionalDouble widthMm) {
        this(art, windowName, title, widthMm, 1, List.of());
    }

    /** The next free name of the usual kind: W01, W02, … */
    public static String nextName(List<String> taken) {
        int highest = 0;
        for (String name : taken) {
            Matcher matcher = NUMBERED.matcher(name);
            if (matcher.matches() && matcher.group(1).length() < 6) {
                highest = Math.max(highest, Integer.parseInt(matcher.group(1)));
            }
        }
        return String.format(Locale.ROOT, "W%02d", highest + 1);
    }
}
