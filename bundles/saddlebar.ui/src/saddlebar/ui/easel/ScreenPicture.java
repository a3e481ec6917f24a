package saddlebar.ui.easel;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageDataProvider;
import org.eclipse.swt.graphics.PaletteData;

/** A picture painted in memory, on its way to the screen. */
public final class ScreenPicture {
    private final ImageData data;
    private final int zoomPercent;

    private ScreenPicture(ImageData data, int zoomPercent) {
        this.data = data;
        this.zoomPercent = zoomPercent;
    }

    /**
     * @param picture     of type INT_RGB
     * @param zoomPercent device pixels of the picture for 100 points
     */
    public static ScreenPicture of(BufferedImage picture, int zoomPercent) {
        int[] pixels = ((DataBufferInt) picture.getRaster().getDataBuffer()).getData();
        byte[] bytes = new byte[pixels.length * 4];
        for (int i = 0, b = 0; i < pixels.length; i++, b += 4) {
            int rgb = pixels[i];
            bytes[b + 1] = (byte) (rgb >> 16);
            bytes[b + 2] = (byte) (rgb >> 8);
            bytes[b + 3] = (byte) rgb;
        }
        PaletteData palette = new PaletteData(0xFF0000, 0xFF00, 0xFF);
        return new ScreenPicture(new ImageData(picture.getWidth(), picture.getHeight(), 32, palette, 4, bytes), zoomPercent);
    }

    long bytes() {
        return 4L * data.width * data.height;
    }

    int widthPt() {
        return Math.max(1, Math.round(data.width * 100f / zoomPercent));
    }

    int heightPt() {
        return Math.max(1, Math.round(data.height * 100f / zoomPercent));
    }

    /** The caller owns the image. */
    public Image toImage(Device device) {
        ImageDataProvider bySize = zoom -> zoom == zoomPercent
                ? data
                : data.scaledTo(Math.max(1, widthPt() * zoom / 100), Math.max(1, heightPt() * zoom / 100));
        return new Image(device, bySize);
    }
}
