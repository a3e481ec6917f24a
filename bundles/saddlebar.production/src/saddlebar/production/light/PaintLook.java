package saddlebar.production.light;

import saddlebar.model.units.Require;

/**
 * What a fired paint or stain lets through where it covers the glass wholly: shares of linear light, each 0 to 1. A tracing colour lets almost
 * nothing through, a matt a part of all colours, a silver stain takes the blue and leaves amber.
 *
 * <p>Where dots cover the share a of the glass, the eye sees the mean of bare and covered glass, {@code 1 - a + a T}, in each channel. Source:
 * Murray, A. (1936). Monochrome reproduction in photoengraving. J. Franklin Inst. 221(6), 721-744 (the Murray-Davies equation), for the
 * light let through in place of the light thrown back.
 */
public record PaintLook(double red, double green, double blue) {
    public PaintLook {
        Require.within("red", red, 0, 1);
        Require.within("green", green, 0, 1);
        Require.within("blue", blue, 0, 1);
    }

    /** A paint that would look so on a white screen when it covers all. */
    public static PaintLook ofRgb(int rgb) {
        Require.within("rgb", rgb, 0, 0xFFFFFF);
        return new PaintLook(ScreenLight.light((rgb >> 16 & 0xff) / 255.0), ScreenLight.light((rgb >> 8 & 0xff) / 255.0),
                ScreenLight.light((rgb & 0xff) / 255.0));
    }

    /** Share of the light of a channel (0 red, 1 green, 2 blue) that comes through when the paint covers the share {@code covered}. */
    public double through(int channel, double covered) {
        double wholly = channel == 0 ? red : channel == 1 ? green : blue;
        return 1 - covered + covered * wholly;
    }
}
