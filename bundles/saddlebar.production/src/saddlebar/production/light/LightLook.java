package saddlebar.production.light;

import java.util.Objects;

import saddlebar.colour.picture.ColourVision;

/**
 * In which light a window is looked at, and with which eyes.
 *
 * @param behind    the light
 * @param eyeIsUsed whether the eye is used to that light, so that clear glass looks clear; else it comes from daylight, and a lamp looks yellow
 * @param eye       whose colour sense; for looking only
 * @param spread    whether strong light spreads over the lead; for looking only
 */
public record LightLook(LightBehind behind, boolean eyeIsUsed, ColourVision eye, boolean spread) {
    /** North light, usual eyes, sharp edges. */
    public static final LightLook USUAL = new LightLook(LightBehind.NORTH, true, ColourVision.USUAL, false);

    public LightLook {
        Objects.requireNonNull(behind, "behind");
        Objects.requireNonNull(eye, "eye");
    }

    public LightLook withBehind(LightBehind other) {
        return new LightLook(other, eyeIsUsed, eye, spread);
    }

    public LightLook withEyeUsed(boolean used) {
        return new LightLook(behind, used, eye, spread);
    }

    public LightLook withEye(ColourVision other) {
        return new LightLook(behind, eyeIsUsed, other, spread);
    }

    public LightLook withSpread(boolean on) {
        return new LightLook(behind, eyeIsUsed, eye, on);
    }

    /** Whether the painted picture is to be changed as a whole. */
    boolean changesPicture() {
        return spread || eye != ColourVision.USUAL;
    }
}
