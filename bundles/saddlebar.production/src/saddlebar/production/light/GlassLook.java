package saddlebar.ui.easel;

import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * How a glass looks with white light behind it.
 *
 * @param name what the studio calls it; empty if no glass has been chosen yet
 * @param rgb  colour on the screen, 0xRRGGBB in sRGB
 */
public record GlassLook(String name, int rgb) {
    /** A piece whose glass nobody has chosen yet: nearly clear. */
    public static final GlassLook UNCHOSEN = new GlassLook("", 0xE6E9E4);

    public GlassLook {
        Objects.requireNonNull(name, "name");
        Require.within("rgb", rgb, 0, 0xFFFFFF);
    }
}
