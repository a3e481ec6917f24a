package saddlebar.ui.easel;

import org.eclipse.swt.graphics.Color;

/** Colours as numbers on their way to the screen and back. */
final class ScreenColours {
    private ScreenColours() {
    }

    static Color of(int rgb) {
        return new Color(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff);
    }

    static int rgb(Color colour) {
        return colour.getRed() << 16 | colour.getGreen() << 8 | colour.getBlue();
    }
}
