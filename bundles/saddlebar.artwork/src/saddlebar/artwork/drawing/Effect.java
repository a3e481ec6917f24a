package saddlebar.artwork.drawing;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;

/** Paints a group in a way that is not ours, such as a filter. Called by one thread at a time. */
public interface Effect {
    Rectangle2D boundsMm();

    /**
     * Paints all of it that falls on the image.
     *
     * @param image    premultiplied, clear
     * @param graphics draws on it
     * @param mmToPx   from mm of the page to pixels of the image
     */
    void paint(BufferedImage image, Graphics2D graphics, AffineTransform mmToPx);
}
