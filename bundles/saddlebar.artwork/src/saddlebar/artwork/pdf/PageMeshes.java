package saddlebar.artwork.pdf;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Optional;

import org.apache.pdfbox.pdmodel.graphics.shading.PDShading;
import org.apache.pdfbox.util.Matrix;

import saddlebar.artwork.drawing.Origin;
import saddlebar.artwork.drawing.Photo;

/**
 * Shadings that are no ramp (by a function, by triangles, by patches, and between circles of which neither holds the other; ISO 32000-1, 8.7.4.5) as pictures,
 * painted by the library: they are smooth, so 300 px an inch say all there is. Painted tile by tile, since the library keeps a table of all pixels it is
 * asked for.
 */
final class PageMeshes {
    private static final double PX_PER_UNIT = 300 / 72.0;
    private static final double MOST_PX = 4_000_000;
    private static final int TILE_PX = 256;

    private PageMeshes() {
    }

    /**
     * @param toPage from shading space to default user space
     * @param box    what is wanted of it, in default user space
     * @return empty if nothing of it is wanted
     */
    static Optional<Photo> picture(Origin origin, PDShading shading, Matrix toPage, Rectangle2D box, AffineTransform pageToMm) {
        if (!(box.getWidth() > 0 && box.getHeight() > 0)) {
            return Optional.empty();
        }
        double scale = Math.min(PX_PER_UNIT, Math.sqrt(MOST_PX / (box.getWidth() * box.getHeight())));
        int width = (int) Math.max(1, Math.ceil(box.getWidth() * scale));
        int height = (int) Math.max(1, Math.ceil(box.getHeight() * scale));
        AffineTransform pageToPx = new AffineTransform(scale, 0, 0, -scale, -box.getX() * scale, box.getMaxY() * scale);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        for (int y = 0; y < height; y += TILE_PX) {
            for (int x = 0; x < width; x += TILE_PX) {
                Graphics2D g = image.createGraphics();
                g.setClip(x, y, Math.min(TILE_PX, width - x), Math.min(TILE_PX, height - y));
                g.transform(pageToPx);
                g.setPaint(shading.toPaint(toPage));
                g.fill(new Rectangle2D.Double(box.getX() - 1 / scale, box.getY() - 1 / scale, (width + 2) / scale, (height + 2) / scale));
                g.dispose();
            }
        }
        try {
            AffineTransform pxToMm = new AffineTransform(pageToMm);
            pxToMm.concatenate(pageToPx.createInverse());
            return Optional.of(Photo.of(origin, PagePictures.picture(image), pxToMm, true));
        } catch (NoninvertibleTransformException e) {
            throw new IllegalStateException("a scale above 0 can be turned back", e);
        }
    }
}
