/** Numbers as SVG writes them: a point, no needless digits. */
final class SvgNumber {
    private SvgNumber() {
    }

    /** Rounded to a hundredth. */
    static String of(double value) {
        return ofHundredths(Math.round(value * 100));
    }

    /** Rounded to a thousandth. */
    static String ofThousandths(double value) {
        return java.math.BigDecimal.valueOf(Math.round(value * 1000), 3).stripTrailingZeros().toPlainString();
    }

    /** Rounded to a millionth. */
    static String ofMillionths(double value) {
        return java.math.BigDecimal.valueOf(Math.round(value * 1_000_000), 6).stripTrailingZeros().toPlainString();
    }

    static String ofHundredths(long hundredths) {
        long size = Math.abs(hundredths);
        StringBuilder out = new StringBuilder(hundredths < 0 ? "-" : "");
        out.append(size / 100);
        if (size % 100 != 0) {
            out.append('.').append(size / 10 % 10);
            if (size % 10 != 0) {
                out.append(size % 10);
            }
        }
        return out.toString();
    }
}
