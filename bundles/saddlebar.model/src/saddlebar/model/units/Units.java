package saddlebar.model.units;

import java.math.BigDecimal;

/** The exact relations between the units of the bench and those of the device (international inch: 25.4 mm by definition). */
public final class Units {
    public static final double MM_PER_INCH = 25.4;
    public static final double UM_PER_INCH = 25400;
    public static final double PT_PER_INCH = 72;

    private Units() {
    }

    /** Nearest whole number of device pixels for a length in mm. */
    public static int pxOfMm(double mm, double dpi) {
        double px = Math.rint(mm * dpi / MM_PER_INCH);
        if (!(Math.abs(px) <= Integer.MAX_VALUE)) {
            throw new IllegalArgumentException("a length of " + mm + " mm at " + dpi + " dpi has no whole number of pixels");
        }
        return (int) px;
    }

    /** A number in the shortest plain decimals that give it back, without exponent or trailing zeros: 40, 0.254; for sentences. */
    public static String plain(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        String text = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
        return text.equals("-0") ? "0" : text;
    }

    /** Length in mm of so many device pixels. */
    public static double mmOfPx(double px, double dpi) {
        return px * MM_PER_INCH / dpi;
    }
}
