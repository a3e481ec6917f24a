package saddlebar.artwork.svg;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;

import org.apache.batik.gvt.AbstractGraphicsNode;

import saddlebar.artwork.drawing.Photo;
import saddlebar.artwork.drawing.Origin;
import saddlebar.artwork.drawing.Picture;
import saddlebar.artwork.drawing.Sketch;

/** A picture as a node of Batik's tree, in pixels of the picture. */
final class PhotoNode extends AbstractGraphicsNode {
    private final Picture picture;
    private final boolean smooth;

    PhotoNode(Picture picture, boolean smooth) {
        this.picture = picture;
        this.smooth = smooth;
    }

    Picture picture() {
        return picture;
    }

    boolean smooth() {
        return smooth;
    }

    /** Only where Batik paints by itself, inside a filter. */
    @Override
    public void primitivePaint(Graphics2D g) {
        Sketch.paint(Photo.of(new Origin("image", 0), picture, new AffineTransform(), smooth), g);
    }

    @Override
    public Rectangle2D getPrimitiveBounds() {
        return new Rectangle2D.Double(0, 0, picture.widthPx(), picture.heightPx());
    }

    @Override
    public Rectangle2D getGeometryBounds() {
        return getPrimitiveBounds();
    }

    @Override
    public Rectangle2D getSensitiveBounds() {
        return getPrimitiveBounds();
    }

    @Override
    public Shape getOutline() {
        return getPrimitiveBounds();
    }
}
