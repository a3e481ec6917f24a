package saddlebar.colour;

import java.util.Locale;
import java.util.Optional;

import saddlebar.model.units.Require;

/**
 * A colour of the sRGB screen as linear light (IEC 61966-2-1:1999), not as code values. Values outside 0 to 1 are colours that the screen cannot
 * show.
 *
 * @param red   linear red, 1 in full
 * @param green linear green
 * @param blue  linear blue
 */
public record Srgb(double red, double green, double blue) {
    private static final Matrix3 TO_XYZ = new Matrix3(.4124, .3576, .1805, .2126, .7152, .0722, .0193, .1192, .9505);
    private static final Matrix3 FROM_XYZ = TO_XYZ.inverse();
    /** White of the screen: the row sums of the standard's matrix, X 95.05 Y 100 Z 108.90, that is D65 to four digits. */
    public static final Xyz WHITE = new Srgb(1, 1, 1).xyz();
    /** A third of the smallest step of an 8-bit code: further out is out of gamut. */
    private static final double SLACK = 1e-4;

    public Srgb {
        Require.finite("red", red);
        Require.finite("green", green);
        Require.finite("blue", blue);
    }

    /** From {@code #rrggbb}, upper or lower case; empty if the text is not that. */
    public static Optional<Srgb> parse(String text) {
        if (text.length() != 7 || text.charAt(0) != '#') {
            return Optional.empty();
        }
        int code = 0;
        for (int i = 1; i < 7; i++) {
            int digit = Character.digit(text.charAt(i), 16);
            if (digit < 0 || text.charAt(i) > 'f') {
                return Optional.empty();
            }
            code = 16 * code + digit;
        }
        return Optional.of(ofCodes(code >> 16, code >> 8 & 255, code & 255));
    }

    /** From 8-bit code values, 0 to 255. */
    public static Srgb ofCodes(int red, int green, int blue) {
        return new Srgb(linear(Require.within("red", red, 0, 255) / 255.0), linear(Require.within("green", green, 0, 255) / 255.0),
                linear(Require.within("blue", blue, 0, 255) / 255.0));
    }

    /** @param xyz as seen beside {@link #WHITE} */
    public static Srgb of(Xyz xyz) {
        double[] rgb = FROM_XYZ.times(xyz.x() / 100, xyz.y() / 100, xyz.z() / 100);
        return new Srgb(rgb[0], rgb[1], rgb[2]);
    }

    /** Beside {@link #WHITE}. */
    public Xyz xyz() {
        double[] xyz = TO_XYZ.times(red, green, blue);
        return new Xyz(100 * xyz[0], 100 * xyz[1], 100 * xyz[2]);
    }

    public Lab lab() {
        return Lab.of(xyz(), WHITE);
    }

    /** Linear light of a code value from 0 to 1. */
    public static double linear(double code) {
        return code <= 0.04045 ? code / 12.92 : StrictMath.pow((code + 0.055) / 1.055, 2.4);
    }

    /** Code value of linear light from 0 to 1: the inverse of {@link #linear}. */
    public static double code(double linear) {
        return linear <= 0.0031308 ? 12.92 * linear : 1.055 * StrictMath.pow(linear, 1 / 2.4) - 0.055;
    }

    /** Whether the screen can show it. */
    public boolean isShowable() {
        return within(red) && within(green) && within(blue);
    }

    private static boolean within(double value) {
        return value >= -SLACK && value <= 1 + SLACK;
    }

    /** Each value brought to 0 to 1 by itself; hue may change: use {@link ScreenColour} for colours far out. */
    public Srgb clipped() {
        return new Srgb(clip(red), clip(green), clip(blue));
    }

    private static double clip(double value) {
        return Math.max(0, Math.min(1, value));
    }

    /** {@code #rrggbb} of the clipped colour. */
    public String hex() {
        return String.format(Locale.ROOT, "#%02x%02x%02x", byteOf(red), byteOf(green), byteOf(blue));
    }

    private static long byteOf(double value) {
        return Math.round(255 * code(clip(value)));
    }
}
