package saddlebar.artwork.drawing;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.awt.image.DataBufferInt;

/** A window of device pixels to paint on: premultiplied colour with alpha, or opaque colour. Belongs to one thread. */
final class Canvas implements AutoCloseable {
    private final Rectangle window;
    private final AffineTransform mmToPx;
    private final BufferedImage image;
    private final Graphics2D graphics;

    private Canvas(Rectangle window, AffineTransform mmToDevice, BufferedImage image) {
        this.window = window;
        this.image = image;
        this.mmToPx = AffineTransform.getTranslateInstance(-window.x, -window.y);
        this.mmToPx.concatenate(mmToDevice);
        this.graphics = image.createGraphics();
        this.graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        this.graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        this.graphics.setRenderingHint(RenderingHints.KEY_RENDERING, RenderingHints.VALUE_RENDER_QUALITY);
        this.graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    }

    static Canvas clear(Rectangle window, AffineTransform mmToDevice) {
        return new Canvas(window, mmToDevice, new BufferedImage(window.width, window.height, BufferedImage.TYPE_INT_ARGB_PRE));
    }

    /** The same pixels, with the page laid over them in another way; closing it does not harm this one. */
    Canvas movedTo(AffineTransform mmToDevice) {
        return new Canvas(window, mmToDevice, image);
    }

    /** The same memory for another window of the same size. */
    Canvas at(Rectangle other, AffineTransform mmToDevice) {
        return new Canvas(other, mmToDevice, image);
    }

    static Canvas opaque(Rectangle window, AffineTransform mmToDevice) {
        return new Canvas(window, mmToDevice, new BufferedImage(window.width, window.height, BufferedImage.TYPE_INT_RGB));
    }

    /** The pixels it holds, in device px. Not to be changed. */
    Rectangle window() {
        return window;
    }

    /** From mm of the page to pixels of this window. Not to be changed. */
    AffineTransform mmToPx() {
        return mmToPx;
    }

    Graphics2D graphics() {
        return graphics;
    }

    BufferedImage image() {
        return image;
    }

    int[] data() {
        return ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    }

    /** Keeps of each pixel the share that lies inside a shape. */
    void cut(Shape clipMm) {
        BufferedImage cover = new BufferedImage(window.width, window.height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = cover.createGraphics();
        g.setRenderingHints(graphics.getRenderingHints());
        g.setTransform(mmToPx);
        g.setColor(java.awt.Color.WHITE);
        g.fill(clipMm);
        g.dispose();
        byte[] share = ((DataBufferByte) cover.getRaster().getDataBuffer()).getData();
        int[] data = data();
        for (int i = 0; i < data.length; i++) {
            if (data[i] != 0) {
                data[i] = scaled(data[i], share[i] & 0xFF);
            }
        }
    }

    /** Keeps of each pixel the share that a mask, painted on a canvas of the same window, lets through. */
    void cut(Canvas painted, Mask mask) {
        int[] data = data();
        int[] other = painted.data();
        for (int i = 0; i < data.length; i++) {
            if (data[i] != 0) {
                data[i] = scaled(data[i], mask.share(other[i]));
            }
        }
    }

    /** All four premultiplied values times share / 255, to nearest. */
    private static int scaled(int argb, int share) {
        if (share == 255) {
            return argb;
        }
        if (share == 0) {
            return 0;
        }
        return part(argb >>> 24, share) << 24 | part(argb >> 16 & 0xFF, share) << 16 | part(argb >> 8 & 0xFF, share) << 8 | part(argb & 0xFF, share);
    }

    private static int part(int value, int share) {
        return (value * share + 127) / 255;
    }

    @Override
    public void close() {
        graphics.dispose();
    }
}
