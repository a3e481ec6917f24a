package saddlebar.production.light;

import java.util.HashSet;
import java.util.Objects;
import java.util.Set;

import saddlebar.model.units.Require;

/**
 * What of a scene is shown.
 *
 * @param colourway    index of the choice of glass
 * @param shown        overlays that are on
 * @param hiddenLayers ids of layers that are off
 * @param surroundRgb  colour of the room around the window, 0xRRGGBB
 * @param light        behind the window
 */
public record EaselLook(int colourway, Set<Overlay> shown, Set<String> hiddenLayers, int surroundRgb, LightLook light) {
    /** What can be laid over the glass. */
    public enum Overlay {
        /** The number of each piece. */
        NUMBERS,
        /** Foil or came at its true width; without it only the gap between the pieces. */
        METAL,
        /** How far each piece is made, by hatching. */
        STATES,
        /** Marks where somebody should look. */
        PROBLEMS,
        /** Marks glass that is stronger in colour than the screen can show. */
        STRONGER
    }

    public EaselLook {
        Require.within("colourway", colourway, 0, 1000);
        shown = Set.copyOf(shown);
        hiddenLayers = Set.copyOf(hiddenLayers);
        Require.within("surroundRgb", surroundRgb, 0, 0xFFFFFF);
        Objects.requireNonNull(light, "light");
    }

    /** In north light. */
    public EaselLook(int colourway, Set<Overlay> shown, Set<String> hiddenLayers, int surroundRgb) {
        this(colourway, shown, hiddenLayers, surroundRgb, LightLook.USUAL);
    }

    public static EaselLook withSurround(int surroundRgb) {
        return new EaselLook(0, Set.of(Overlay.METAL, Overlay.PROBLEMS), Set.of(), surroundRgb);
    }

    public boolean shows(Overlay overlay) {
        return shown.contains(overlay);
    }

    public boolean showsLayer(String layerId) {
        return !hiddenLayers.contains(layerId);
    }

    public EaselLook with(Overlay overlay, boolean on) {
        return new EaselLook(colourway, changed(shown, Objects.requireNonNull(overlay), on), hiddenLayers, surroundRgb, light);
    }

    public EaselLook withLayer(String layerId, boolean on) {
        return new EaselLook(colourway, shown, changed(hiddenLayers, layerId, !on), surroundRgb, light);
    }

    public EaselLook withColourway(int index) {
        return new EaselLook(index, shown, hiddenLayers, surroundRgb, light);
    }

    public EaselLook withSurroundRgb(int rgb) {
        return new EaselLook(colourway, shown, hiddenLayers, rgb, light);
    }

    public EaselLook withLight(LightLook other) {
        return new EaselLook(colourway, shown, hiddenLayers, surroundRgb, other);
    }

    private static <T> Set<T> changed(Set<T> set, T member, boolean in) {
        Set<T> next = new HashSet<>(set);
        if (in) {
            next.add(member);
        } else {
            next.remove(member);
        }
        return next;
    }
}
