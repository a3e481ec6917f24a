package saddlebar.production.light;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

import saddlebar.colour.picture.ColourVision;
import saddlebar.colour.picture.LightSpread;
import saddlebar.colour.picture.LinearPicture;
import saddlebar.model.work.Work;

/**
 * What eyes make of a painted picture: light that spreads over the lead, and a colour sense that lacks something. For looking only.
 *
 * @param eye      whose
 * @param radiusPx of the spread, 0 for none
 */
record SeenPicture(ColourVision eye, double radiusPx) {
    /** Of the window's longer side: how far light spreads when the whole window is looked at (studio setting, no source). */
    private static final double SPREAD_SHARE = 1 / 400.0;
    /** When nearer the spread is so wide that it is no more seen as one; it stays at this. */
    private static final double MOST_RADIUS_PX = 40;
    /** Standard deviations of the far part that are painted around a part of the window. */
    private static final double MARGIN = 2.5;
    private static final double FAR = 3;

    static SeenPicture of(LightLook look, RectMm bounds, double pxPerMm) {
        double radius = look.spread() ? Math.min(MOST_RADIUS_PX, SPREAD_SHARE * Math.max(bounds.widthMm(), bounds.heightMm()) * pxPerMm) : 0;
        return new SeenPicture(look.eye(), radius);
    }

    /** Pixels that are needed on each side of what is shown. */
    int marginPx() {
        return (int) Math.ceil(MARGIN * FAR * radiusPx);
    }

    /** @param painted with the margin; the margin is taken off */
    BufferedImage of(BufferedImage painted, Work work) {
        LinearPicture picture = linear(painted);
        if (radiusPx > 0) {
            picture = LightSpread.usual(radiusPx).spread(picture, work);
        }
        if (eye != ColourVision.USUAL) {
            picture = eye.seen(picture);
        }
        int margin = marginPx();
        int width = painted.getWidth() - 2 * margin;
        BufferedImage seen = new BufferedImage(width, painted.getHeight() - 2 * margin, BufferedImage.TYPE_INT_RGB);
        int[] pixels = ((DataBufferInt) seen.getRaster().getDataBuffer()).getData();
        float[] one = new float[3];
        for (int i = 0; i < pixels.length; i++) {
            System.arraycopy(picture.rgb(), 3 * ((i / width + margin) * painted.getWidth() + i % width + margin), one, 0, 3);
            pixels[i] = ScreenLight.rgb(one);
        }
        return seen;
    }

    private static LinearPicture linear(BufferedImage painted) {
        int[] pixels = ((DataBufferInt) painted.getRaster().getDataBuffer()).getData();
        float[] rgb = new float[3 * pixels.length];
        for (int i = 0; i < pixels.length; i++) {
            rgb[3 * i] = ScreenLight.lightOf(pixels[i] >> 16 & 0xff) / (float) ScreenLight.FULL_LIGHT;
            rgb[3 * i + 1] = ScreenLight.lightOf(pixels[i] >> 8 & 0xff) / (float) ScreenLight.FULL_LIGHT;
            rgb[3 * i + 2] = ScreenLight.lightOf(pixels[i] & 0xff) / (float) ScreenLight.FULL_LIGHT;
        }
        return new LinearPicture(painted.getWidth(), painted.getHeight(), rgb);
    }
}
