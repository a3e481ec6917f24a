package saddlebar.ui.colourway;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.widgets.Control;

import saddlebar.production.light.BareColour;

/** Small pictures of colours, which go with their control. A plus in one says that the glass is stronger than the screen can show. */
final class Swatches {
    private static final int SIDE_PT = 16;
    private static final int RIM_RGB = 0x808080;

    private record Swatch(BareColour colour) {
    }

    private final LocalResourceManager images;

    Swatches(Control owner) {
        images = new LocalResourceManager(JFaceResources.getResources(), owner);
    }

    Image of(BareColour colour) {
        Swatch key = new Swatch(colour);
        return images.create(new ImageDescriptor() {
            @Override
            public ImageData getImageData(int zoom) {
                return paint(colour, SIDE_PT * zoom / 100);
            }

            @Override
            public boolean equals(Object other) {
                return other instanceof ImageDescriptor && other.hashCode() == hashCode() && other.getClass() == getClass();
            }

            @Override
            public int hashCode() {
                return key.hashCode();
            }
        });
    }

    private static ImageData paint(BareColour colour, int side) {
        ImageData data = new ImageData(side, side, 24, new PaletteData(0xFF0000, 0xFF00, 0xFF));
        int line = Math.max(1, side / 16);
        int ink = luminous(colour.rgb()) ? 0x000000 : 0xFFFFFF;
        for (int y = 0; y < side; y++) {
            for (int x = 0; x < side; x++) {
                boolean rim = x < line || y < line || x >= side - line || y >= side - line;
                boolean across = Math.abs(y - side / 2) <= line / 2 && Math.abs(x - side / 2) <= side / 4;
                boolean down = Math.abs(x - side / 2) <= line / 2 && Math.abs(y - side / 2) <= side / 4;
                data.setPixel(x, y, rim ? RIM_RGB : colour.outOfGamut() && (across || down) ? ink : colour.rgb());
            }
        }
        return data;
    }

    private static boolean luminous(int rgb) {
        return 0.299 * (rgb >> 16 & 0xff) + 0.587 * (rgb >> 8 & 0xff) + 0.114 * (rgb & 0xff) > 128;
    }
}
