package saddlebar.production.colourway;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

import saddlebar.model.commission.Approval;
import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.Commission;
import saddlebar.model.commission.Window;
import saddlebar.model.units.Require;
import saddlebar.production.light.LightLook;
import saddlebar.production.light.WindowSketch;
import saddlebar.production.light.WindowSketcher;

/**
 * Which picture is wanted, and all that the model knows of it: taken on the thread that owns the model, painted on any.
 *
 * @param sketch     the window
 * @param colourway  index of the colourway in the sketch
 * @param name       of the colourway, empty if the window has none
 * @param commission its title
 * @param window     its name and title
 * @param approvedOn day, if the colourway is approved
 * @param approvedBy who agreed
 * @param light      behind it
 * @param sidePx     longer side of the window in the picture, {@value #LEAST_PX} to {@value #MOST_PX}
 */
public record VidimusOrder(WindowSketch sketch, int colourway, Optional<String> name, String commission, String window, Optional<String> approvedOn,
        String approvedBy, LightLook light, int sidePx) {
    public static final int LEAST_PX = 100;
    public static final int MOST_PX = 8000;

    public VidimusOrder {
        Objects.requireNonNull(sketch, "sketch");
        Objects.requireNonNull(light, "light");
        Require.within("sidePx", sidePx, LEAST_PX, MOST_PX);
    }

    /**
     * @param folder    of the commission, from which artwork is named
     * @param colourway empty: the one that is made, or the first
     */
    public static VidimusOrder of(Path folder, Commission commission, Window window, Optional<Colourway> colourway, LightLook light, int sidePx) {
        Optional<Colourway> shown = colourway.or(() -> Optional.ofNullable(window.getChosen())).or(() -> window.getColourways().stream().findFirst());
        Optional<Approval> approval = shown.flatMap(one -> ColourwayApproval.of(one, commission));
        String title = text(window.getTitle());
        return new VidimusOrder(new WindowSketcher(folder, commission).sketch(window), shown.map(one -> window.getColourways().indexOf(one)).orElse(0),
                shown.map(Colourways::name), text(commission.getTitle()), window.getName() + (title.isEmpty() ? "" : " " + title),
                approval.map(given -> String.valueOf(given.getOn())), approval.map(given -> text(given.getBy())).orElse(""), light, sidePx);
    }

    private static String text(String text) {
        return text == null ? "" : text.strip();
    }
}
