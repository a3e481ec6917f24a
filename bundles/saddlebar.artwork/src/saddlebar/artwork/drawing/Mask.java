package saddlebar.artwork.drawing;

import java.awt.geom.Rectangle2D;
import java.awt.Shape;

/**
 * Lets a group show where the mask is light and opaque: share shown = luminance of code values * opacity (SVG 1.1, 14.4, with
 * color-interpolation sRGB).
 *
 * @param content  what the mask is drawn with
 * @param regionMm nothing shows outside
 */
public record Mask(Group content, Shape regionMm) {
    Rectangle2D boundsMm() {
        return content.boundsMm().createIntersection(regionMm.getBounds2D());
    }
}
