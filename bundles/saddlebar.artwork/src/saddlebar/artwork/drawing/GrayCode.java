package saddlebar.artwork.drawing;

import saddlebar.model.art.GrayCoding;

/**
 * Gray of a colour: 0.2126 R + 0.7152 G + 0.0722 B (IEC 61966-2-1, the row of Y), of code values or of linear light coded back with the sRGB
 * curve; rounded to nearest, halves up. Gray stays what it is in both.
 */
public final class GrayCode {
    private static final double RED = 0.2126;
    private static final double GREEN = 0.7152;
    private static final double BLUE = 0.0722;
    private static final double[] LINEAR = new double[256];
    /** The linear light at which the nearest code changes from i to i + 1. */
    private static final double[] EDGE = new double[255];
    /** First guess of a code for a linear light in 1024ths. */
    private static final short[] GUESS = new short[1025];

    static {
        for (int i = 0; i < 256; i++) {
            LINEAR[i] = linear(i / 255.0);
        }
        for (int i = 0; i < 255; i++) {
            EDGE[i] = linear((i + 0.5) / 255);
        }
        for (int i = 0, code = 0; i <= 1024; i++) {
            while (code < 255 && EDGE[code] <= i / 1024.0) {
                code++;
            }
            GUESS[i] = (short) code;
        }
    }

    private GrayCode() {
    }

    /** Linear light, 0 to 1, of an sRGB value 0 to 1 (IEC 61966-2-1). */
    static double linear(double coded) {
        return coded <= 0.04045 ? coded / 12.92 : Math.pow((coded + 0.055) / 1.055, 2.4);
    }

    /** The code, 0 to 255, nearest to a linear light. */
    static int coded(double light) {
        int code = GUESS[(int) (Math.min(Math.max(light, 0), 1) * 1024)];
        while (code < 255 && EDGE[code] <= light) {
            code++;
        }
        return code;
    }

    static int mixedInLight(int from, int to, double share) {
        return coded(LINEAR[from] + share * (LINEAR[to] - LINEAR[from]));
    }

    /** Gray of an opaque colour 0xRRGGBB. */
    public static int of(int rgb, GrayCoding coding) {
        int r = rgb >> 16 & 0xFF;
        int g = rgb >> 8 & 0xFF;
        int b = rgb & 0xFF;
        if (r == g && g == b) {
            return g;
        }
        return coding == GrayCoding.CODE_VALUES
                ? (int) (RED * r + GREEN * g + BLUE * b + 0.5)
                : coded(RED * LINEAR[r] + GREEN * LINEAR[g] + BLUE * LINEAR[b]);
    }

    /** A row of opaque colours. */
    public static void row(int[] rgb, int from, byte[] gray, int to, int count, GrayCoding coding) {
        int lastRgb = -1;
        byte last = 0;
        for (int i = 0; i < count; i++) {
            int colour = rgb[from + i] & 0xFFFFFF;
            if (colour != lastRgb) { // art is mostly flat
                lastRgb = colour;
                last = (byte) of(colour, coding);
            }
            gray[to + i] = last;
        }
    }
}
