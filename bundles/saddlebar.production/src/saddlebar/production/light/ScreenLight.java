package saddlebar.production.light;

/**
 * Light and its coding for the screen: c = 12.92 L for L up to 0.0031308, else 1.055 L^(1/2.4) - 0.055, and back.
 * Source: IEC 61966-2-1:1999, Multimedia systems and equipment, colour management, part 2-1: default RGB colour space sRGB.
 */
public final class ScreenLight {
    /** Linear light is held as whole numbers 0 to this, fine enough that no code value is lost on the way there and back. */
    public static final int FULL_LIGHT = 65535;

    private static final int[] LIGHT_OF_CODE = new int[256];
    private static final byte[] CODE_OF_LIGHT = new byte[FULL_LIGHT + 1];

    static {
        for (int code = 0; code < 256; code++) {
            LIGHT_OF_CODE[code] = (int) Math.round(light(code / 255.0) * FULL_LIGHT);
        }
        for (int light = 0; light <= FULL_LIGHT; light++) {
            CODE_OF_LIGHT[light] = (byte) Math.round(code((double) light / FULL_LIGHT) * 255);
        }
    }

    private ScreenLight() {
    }

    /** Linear light, 0 to 1, of a code value, 0 to 1. */
    static double light(double code) {
        return code <= 0.04045 ? code / 12.92 : Math.pow((code + 0.055) / 1.055, 2.4);
    }

    /** Code value, 0 to 1, of linear light, 0 to 1. */
    static double code(double light) {
        return light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
    }

    /** Linear light, 0 to {@link #FULL_LIGHT}, of a code value, 0 to 255. */
    static int lightOf(int code) {
        return LIGHT_OF_CODE[code];
    }

    /** Code value, 0 to 255, of linear light, 0 to {@link #FULL_LIGHT}. */
    static int codeOf(int light) {
        return CODE_OF_LIGHT[light] & 0xff;
    }

    /** 0xRRGGBB of linear red, green, blue; what is outside 0 to 1 is brought there. */
    static int rgb(float[] linear) {
        return codeOf(whole(linear[0])) << 16 | codeOf(whole(linear[1])) << 8 | codeOf(whole(linear[2]));
    }

    private static int whole(float light) {
        return Math.max(0, Math.min(FULL_LIGHT, Math.round(light * FULL_LIGHT)));
    }

    /** How light a colour 0xRRGGBB looks, 0 to 1: the luminance of its light. */
    public static double luminance(int rgb) {
        return (0.2126 * lightOf(rgb >> 16 & 0xff) + 0.7152 * lightOf(rgb >> 8 & 0xff) + 0.0722 * lightOf(rgb & 0xff)) / FULL_LIGHT;
    }
}
