package saddlebar.ui.easel;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Pattern;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.Transform;

/**
 * A picture that is on the screen's side, drawn many times a second. Under GTK it is drawn as a pattern: {@code GC.drawImage} there fetches all
 * pixels of the image back at every call to learn its size (seen in SWT 3.132), a millisecond and half a megabyte a square.
 */
final class ScreenTile {
    private final Image image;
    private final Pattern pattern;
    private final int widthPt;
    private final int heightPt;
    private final long bytes;

    ScreenTile(Device device, ScreenPicture picture) {
        this.image = picture.toImage(device);
        this.pattern = "gtk".equals(SWT.getPlatform()) ? new Pattern(device, image) : null;
        this.widthPt = picture.widthPt();
        this.heightPt = picture.heightPt();
        this.bytes = picture.bytes();
    }

    long bytes() {
        return bytes;
    }

    void dispose() {
        if (pattern != null) {
            pattern.dispose();
        }
        image.dispose();
    }

    /** Draws it so that it fills {@code to}. */
    void draw(GC gc, Rectangle to) {
        boolean asItIs = to.width == widthPt && to.height == heightPt;
        if (to.isEmpty()) {
            return;
        }
        if (asItIs && pattern == null) {
            gc.drawImage(image, to.x, to.y);
            return;
        }
        Transform before = new Transform(gc.getDevice());
        Transform within = new Transform(gc.getDevice());
        try {
            gc.getTransform(before);
            gc.getTransform(within);
            within.translate(to.x, to.y);
            if (!asItIs) {
                within.scale((float) to.width / widthPt, (float) to.height / heightPt);
            }
            gc.setTransform(within);
            if (pattern == null) {
                gc.drawImage(image, 0, 0);
            } else {
                gc.setBackgroundPattern(pattern);
                gc.fillRectangle(0, 0, widthPt, heightPt);
                gc.setBackgroundPattern(null);
            }
            gc.setTransform(before);
        } finally {
            within.dispose();
            before.dispose();
        }
    }
}
