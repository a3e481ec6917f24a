package saddlebar.artwork.drawing;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.Arrays;

/** How much of each pixel a shape covers, 0 to 255; a buffer used again and again. Belongs to one thread. */
final class Coverage {
    private BufferedImage image;
    private byte[] data;
    private int stride;

    /** Computes the share of each pixel of a window; rows then start at {@link #row(int)}. */
    void of(Shape shape, AffineTransform toPx, Rectangle window) {
        if (image == null || image.getWidth() < window.width || image.getHeight() < window.height) {
            int width = Math.max(window.width, image == null ? 0 : image.getWidth());
            int height = Math.max(window.height, image == null ? 0 : image.getHeight());
            image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
            data = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
            stride = width;
        }
        for (int y = 0; y < window.height; y++) {
            Arrays.fill(data, y * stride, y * stride + window.width, (byte) 0);
        }
        AffineTransform moved = AffineTransform.getTranslateInstance(-window.x, -window.y);
        moved.concatenate(toPx);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setClip(0, 0, window.width, window.height);
        g.setTransform(moved);
        g.setColor(Color.WHITE);
        g.fill(shape);
        g.dispose();
    }

    /** The shares, row after row. */
    byte[] data() {
        return data;
    }

    /** Where the shares of a row of the window begin. */
    int row(int y) {
        return y * stride;
    }
}
