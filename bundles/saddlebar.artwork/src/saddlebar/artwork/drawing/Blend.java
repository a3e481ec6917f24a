package saddlebar.artwork.drawing;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/**
 * How a group is laid over what is below it (ISO 32000-1, 11.3.5; the same words in Compositing and Blending 1 of the W3C). Colours are code values; the
 * result is ar Cr = (1 - as) ab Cb + as (1 - ab) Cs + as ab B(Cb, Cs) with ar = ab + as - ab as (11.3.6).
 */
public enum Blend {
    NORMAL, MULTIPLY, SCREEN, OVERLAY, DARKEN, LIGHTEN, COLOR_DODGE, COLOR_BURN, HARD_LIGHT, SOFT_LIGHT, DIFFERENCE, EXCLUSION, HUE, SATURATION, COLOR,
    LUMINOSITY,
    /** Laid over as normal, but painted by itself first, so that what is blended in it does not see what is below. */
    APART;

    /** Whether the group must be painted by itself before it is laid over. */
    boolean isPlain() {
        return this == NORMAL;
    }

    private boolean isWhole() {
        return this == HUE || this == SATURATION || this == COLOR || this == LUMINOSITY;
    }

    /**
     * Lays one picture over another in this way.
     *
     * @param source  premultiplied, {@code TYPE_INT_ARGB_PRE}
     * @param target  the same, or opaque {@code TYPE_INT_RGB}
     * @param dx      where the source's first column lies in the target
     * @param dy      and its first row
     * @param opacity 0 to 1
     */
    void lay(BufferedImage source, BufferedImage target, int dx, int dy, double opacity) {
        int[] from = ((DataBufferInt) source.getRaster().getDataBuffer()).getData();
        int[] to = ((DataBufferInt) target.getRaster().getDataBuffer()).getData();
        boolean opaque = target.getType() == BufferedImage.TYPE_INT_RGB;
        double[] own = new double[3];
        double[] below = new double[3];
        double[] mixed = new double[3];
        for (int y = Math.max(0, -dy); y < Math.min(source.getHeight(), target.getHeight() - dy); y++) {
            for (int x = Math.max(0, -dx); x < Math.min(source.getWidth(), target.getWidth() - dx); x++) {
                int over = from[y * source.getWidth() + x];
                if (over >>> 24 != 0) {
                    int at = (y + dy) * target.getWidth() + x + dx;
                    to[at] = pixel(over, opaque ? to[at] | 0xFF000000 : to[at], opacity, own, below, mixed);
                }
            }
        }
    }

    private int pixel(int over, int under, double opacity, double[] own, double[] below, double[] mixed) {
        double full = (over >>> 24) / 255.0;
        double as = full * opacity;
        double ab = (under >>> 24) / 255.0;
        for (int c = 0; c < 3; c++) {
            own[c] = Math.min(1, (over >> 16 - 8 * c & 0xFF) / 255.0 / full);
            below[c] = ab > 0 ? Math.min(1, (under >> 16 - 8 * c & 0xFF) / 255.0 / ab) : 0;
        }
        if (isWhole()) {
            whole(below, own, mixed);
        } else {
            for (int c = 0; c < 3; c++) {
                mixed[c] = channel(below[c], own[c]);
            }
        }
        int result = code(ab + as - ab * as) << 24;
        for (int c = 0; c < 3; c++) {
            result |= code((1 - as) * ab * below[c] + as * (1 - ab) * own[c] + as * ab * mixed[c]) << 16 - 8 * c;
        }
        return result;
    }

    private static int code(double share) {
        return (int) (Math.max(0, Math.min(1, share)) * 255 + 0.5);
    }

    private double channel(double b, double s) {
        return switch (this) {
            case MULTIPLY -> b * s;
            case SCREEN -> b + s - b * s;
            case OVERLAY -> hardLight(s, b);
            case DARKEN -> Math.min(b, s);
            case LIGHTEN -> Math.max(b, s);
            case COLOR_DODGE -> b == 0 ? 0 : s >= 1 ? 1 : Math.min(1, b / (1 - s));
            case COLOR_BURN -> b >= 1 ? 1 : s <= 0 ? 0 : 1 - Math.min(1, (1 - b) / s);
            case HARD_LIGHT -> hardLight(b, s);
            case SOFT_LIGHT -> softLight(b, s);
            case DIFFERENCE -> Math.abs(b - s);
            case EXCLUSION -> b + s - 2 * b * s;
            default -> s;
        };
    }

    private static double hardLight(double b, double s) {
        return s <= 0.5 ? b * 2 * s : b + 2 * s - 1 - b * (2 * s - 1);
    }

    private static double softLight(double b, double s) {
        if (s <= 0.5) {
            return b - (1 - 2 * s) * b * (1 - b);
        }
        double d = b <= 0.25 ? ((16 * b - 12) * b + 4) * b : Math.sqrt(b);
        return b + (2 * s - 1) * (d - b);
    }

    // ---- hue, saturation, luminosity (11.3.5.3)

    private void whole(double[] b, double[] s, double[] result) {
        switch (this) {
            case HUE -> {
                saturated(s, saturation(b), result);
                lit(result, light(b), result);
            }
            case SATURATION -> {
                saturated(b, saturation(s), result);
                lit(result, light(b), result);
            }
            case COLOR -> lit(s, light(b), result);
            default -> lit(b, light(s), result);
        }
    }

    private static double light(double[] c) {
        return 0.3 * c[0] + 0.59 * c[1] + 0.11 * c[2];
    }

    private static double saturation(double[] c) {
        return Math.max(c[0], Math.max(c[1], c[2])) - Math.min(c[0], Math.min(c[1], c[2]));
    }

    private static void saturated(double[] c, double saturation, double[] result) {
        double least = Math.min(c[0], Math.min(c[1], c[2]));
        double span = saturation(c);
        for (int i = 0; i < 3; i++) {
            result[i] = span > 0 ? (c[i] - least) * saturation / span : 0;
        }
    }

    private static void lit(double[] c, double wanted, double[] result) {
        double d = wanted - light(c);
        for (int i = 0; i < 3; i++) {
            result[i] = c[i] + d;
        }
        double l = light(result);
        double least = Math.min(result[0], Math.min(result[1], result[2]));
        double most = Math.max(result[0], Math.max(result[1], result[2]));
        for (int i = 0; i < 3; i++) {
            if (least < 0) {
                result[i] = l + (result[i] - l) * l / (l - least);
            }
            if (most > 1) {
                result[i] = l + (result[i] - l) * (1 - l) / (most - l);
            }
        }
    }
}
