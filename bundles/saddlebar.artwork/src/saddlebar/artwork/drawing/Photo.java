package saddlebar.artwork.drawing;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.Objects;

/**
 * A picture of pixels in the drawing.
 *
 * @param picture its pixels
 * @param pxToMm  from its pixels, first one at 0 to 1, to mm of the page
 * @param smooth  whether pixels run into each other when enlarged
 */
public record Photo(Origin origin, Picture picture, AffineTransform pxToMm, boolean smooth, Rectangle2D boundsMm) implements Item {
    public Photo {
        Objects.requireNonNull(picture, "picture");
    }

    public static Photo of(Origin origin, Picture picture, AffineTransform pxToMm, boolean smooth) {
        return new Photo(origin, picture, new AffineTransform(pxToMm), smooth,
                pxToMm.createTransformedShape(new Rectangle2D.Double(0, 0, picture.widthPx(), picture.heightPx())).getBounds2D());
    }
}
