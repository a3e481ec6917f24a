package saddlebar.production.light;

import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * How a glass looks with daylight behind it, and what is known of its sheet.
 *
 * @param name  what the studio calls it; empty if no glass has been chosen yet
 * @param rgb   colour on the screen, 0xRRGGBB in sRGB, at the sheet's measured thickness
 * @param sheet for other thicknesses and lights
 */
public record GlassLook(String name, int rgb, SheetLook sheet) {
    /** A piece whose glass nobody has chosen yet: nearly clear. */
    public static final GlassLook UNCHOSEN = new GlassLook("", 0xE6E9E4);

    public GlassLook {
        Objects.requireNonNull(name, "name");
        Require.within("rgb", rgb, 0, 0xFFFFFF);
        Objects.requireNonNull(sheet, "sheet");
    }

    /** Of whose sheet nothing else is known. */
    public GlassLook(String name, int rgb) {
        this(name, rgb, SheetLook.PLAIN);
    }
}
