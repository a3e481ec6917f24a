package saddlebar.ui.colourway;

import org.eclipse.osgi.util.NLS;

import saddlebar.colour.Lab;

/**
 * A colour in words, for those who do not see the swatch: how light, and which hue. The bounds between hues lie half-way between the CIELAB hues of common
 * examples (common practice, no source).
 */
final class ColourInWords {
    private static final double LEAST_CHROMA = 6;
    private static final double PALE_L = 82;
    private static final double DEEP_L = 42;
    private static final double DARK_L = 22;

    private ColourInWords() {
    }

    static String of(Lab lab) {
        double chroma = Math.hypot(lab.a(), lab.b());
        if (chroma < LEAST_CHROMA) {
            return lab.l() > 90
                    ? ColourWords.Hue_clear
                    : lab.l() > 60
                            ? ColourWords.Hue_lightGray
                            : lab.l() > DARK_L
                                    ? ColourWords.Hue_gray
                                    : ColourWords.Hue_black;
        }
        String hue = hue(Math.floorMod(Math.round(Math.toDegrees(Math.atan2(lab.b(), lab.a()))), 360L), lab.l());
        if (lab.l() > PALE_L) {
            return NLS.bind(ColourWords.Hue_pale, hue);
        }
        return lab.l() < DARK_L ? NLS.bind(ColourWords.Hue_dark, hue) : lab.l() < DEEP_L ? NLS.bind(ColourWords.Hue_deep, hue) : hue;
    }

    private static String hue(long degrees, double lightness) {
        if (degrees < 15 || degrees >= 345) {
            return ColourWords.Hue_rose;
        } else if (degrees < 48) {
            return ColourWords.Hue_red;
        } else if (degrees < 78) {
            return lightness < 55 ? ColourWords.Hue_brown : ColourWords.Hue_orange;
        } else if (degrees < 105) {
            return lightness < 50 ? ColourWords.Hue_olive : ColourWords.Hue_yellow;
        } else if (degrees < 125) {
            return ColourWords.Hue_yellowGreen;
        } else if (degrees < 170) {
            return ColourWords.Hue_green;
        } else if (degrees < 235) {
            return ColourWords.Hue_blueGreen;
        } else if (degrees < 295) {
            return ColourWords.Hue_blue;
        }
        return degrees < 320 ? ColourWords.Hue_violet : ColourWords.Hue_purple;
    }
}
