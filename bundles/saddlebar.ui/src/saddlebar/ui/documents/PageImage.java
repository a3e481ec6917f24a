package saddlebar.ui.documents;

import java.awt.image.BufferedImage;

import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;

/** A picture of the plain kind as the widgets' kind. */
final class PageImage {
    private PageImage() {
    }

    static ImageData data(BufferedImage image) {
        ImageData data = new ImageData(image.getWidth(), image.getHeight(), 24, new PaletteData(0xFF0000, 0xFF00, 0xFF));
        int[] row = new int[image.getWidth()];
        for (int y = 0; y < image.getHeight(); y++) {
            image.getRGB(0, y, row.length, 1, row, 0, row.length);
            for (int x = 0; x < row.length; x++) {
                row[x] &= 0xFFFFFF;
            }
            data.setPixels(0, y, row.length, row, 0);
        }
        return data;
    }
}
