package saddlebar.artwork.drawing;

import java.awt.Paint;
import java.awt.PaintContext;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Transparency;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.ColorModel;
import java.awt.image.DataBufferInt;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;

/** A paint computed pixel by pixel, at pixel centres, from where the pixel lies. */
abstract class PixelPaint implements Paint {
    private final boolean opaque;

    PixelPaint(boolean opaque) {
        this.opaque = opaque;
    }

    /** Colours 0xAARRGGBB, not premultiplied, of {@code count} pixels of a row, the first with its corner at x, y. */
    abstract void row(int x, int y, int[] argb, int from, int count);

    @Override
    public int getTransparency() {
        return opaque ? Transparency.OPAQUE : Transparency.TRANSLUCENT;
    }

    @Override
    public PaintContext createContext(ColorModel wanted, Rectangle device, Rectangle2D user, AffineTransform transform, RenderingHints hints) {
        return new PaintContext() {
            private WritableRaster raster;

            @Override
            public ColorModel getColorModel() {
                return ColorModel.getRGBdefault();
            }

            @Override
            public Raster getRaster(int x, int y, int w, int h) {
                if (raster == null || raster.getWidth() < w || raster.getHeight() < h) {
                    raster = ColorModel.getRGBdefault().createCompatibleWritableRaster(Math.max(w, 32), Math.max(h, 32));
                }
                int[] data = ((DataBufferInt) raster.getDataBuffer()).getData();
                for (int row = 0; row < h; row++) {
                    row(x, y + row, data, row * raster.getWidth(), w);
                }
                return raster;
            }

            @Override
            public void dispose() {
                raster = null;
            }
        };
    }
}
