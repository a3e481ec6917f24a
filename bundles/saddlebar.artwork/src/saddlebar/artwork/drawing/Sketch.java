package saddlebar.artwork.drawing;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Rectangle2D;

/** Paints on graphics that are not ours, whose transform stands for mm to pixels. */
public final class Sketch {
    private Sketch() {
    }

    public static void paint(Photo photo, Graphics2D g) {
        AffineTransform before = g.getTransform();
        AffineTransform pxToPx = Tint.joined(before, photo.pxToMm());
        try {
            AffineTransform back = pxToPx.createInverse();
            Shape edge = pxToPx.createTransformedShape(new Rectangle2D.Double(0, 0, photo.picture().widthPx(), photo.picture().heightPx()));
            g.setTransform(new AffineTransform());
            g.setPaint(new PhotoPaint(photo.picture(), back, photo.smooth()));
            g.fill(edge);
            g.setTransform(before);
        } catch (NoninvertibleTransformException e) {
            return; // squeezed flat: nothing shows
        }
    }
}
