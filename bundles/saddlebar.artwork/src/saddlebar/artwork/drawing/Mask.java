package saddlebar.artwork.drawing;

import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.Objects;

/**
 * Lets a group show where the mask is light and opaque: share shown = luminance of code values * opacity (SVG 1.1, 14.4, with color-interpolation sRGB;
 * ISO 32000-1, 11.5.3), or by opacity alone (11.5.2).
 *
 * @param content   what the mask is drawn with
 * @param regionMm  nothing shows outside
 * @param byOpacity whether only its opacity counts and not its light
 * @param ground    luminance behind what the mask is drawn with, 0 to 255; 0 unless the file says
 * @param curve     share shown in 255ths for each such share found, or null for the same
 */
public record Mask(Group content, Shape regionMm, boolean byOpacity, int ground, byte[] curve) {
    public Mask {
        Objects.requireNonNull(content, "content");
        Objects.requireNonNull(regionMm, "regionMm");
        if (curve != null && curve.length != 256) {
            throw new IllegalArgumentException("a curve has 256 entries but this one " + curve.length);
        }
    }

    /** By luminance on black. */
    public static Mask ofLight(Group content, Shape regionMm) {
        return new Mask(content, regionMm, false, 0, null);
    }

    Rectangle2D boundsMm() {
        return content.boundsMm().createIntersection(regionMm.getBounds2D());
    }

    /** What a premultiplied pixel of the mask lets through, in 255ths. */
    int share(int argb) {
        int found = byOpacity
                ? argb >>> 24
                : (int) (0.2126 * (argb >> 16 & 0xFF) + 0.7152 * (argb >> 8 & 0xFF) + 0.0722 * (argb & 0xFF) + ground * (255 - (argb >>> 24)) / 255.0 + 0.5);
        return curve == null ? Math.min(255, found) : curve[Math.min(255, found)] & 0xFF;
    }
}
