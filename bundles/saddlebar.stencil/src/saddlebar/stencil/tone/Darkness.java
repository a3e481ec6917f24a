package saddlebar.stencil.tone;

import saddlebar.model.art.GrayCoding;

/** How dark a code value of a gray band is: 0 for white to 1 for black, in the light that the coding stands for. */
final class Darkness {
    private Darkness() {
    }

    static double of(int code, GrayCoding coding) {
        double value = code / 255.0;
        return switch (coding) {
            case CODE_VALUES -> (255 - code) / 255.0;
            case SRGB_LUMINANCE -> 1 - linear(value);
        };
    }

    /** The sRGB curve, IEC 61966-2-1. */
    private static double linear(double value) {
        return value <= 0.04045 ? value / 12.92 : StrictMath.pow((value + 0.055) / 1.055, 2.4);
    }
}
