package saddlebar.artwork.svg;

/** Reads numbers as SVG writes them (SVG 1.1, 8.3.9): run together, with or without comma. Belongs to one caller. */
final class Scanner {
    private final String text;
    private int at;

    Scanner(String text) {
        this.text = text;
    }

    boolean atEnd() {
        return at >= text.length();
    }

    int position() {
        return at;
    }

    void back(int position) {
        at = position;
    }

    char peek() {
        return text.charAt(at);
    }

    char next() {
        return text.charAt(at++);
    }

    void space() {
        while (at < text.length() && isSpace(text.charAt(at))) {
            at++;
        }
    }

    /** Space with at most one comma in it. */
    void separator() {
        space();
        if (at < text.length() && text.charAt(at) == ',') {
            at++;
            space();
        }
    }

    private static boolean isSpace(char c) {
        return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\f';
    }

    /** Whether a number could start here. */
    boolean atNumber() {
        return at < text.length() && "+-.0123456789".indexOf(text.charAt(at)) >= 0;
    }

    /**
     * The number that starts here.
     *
     * @throws NumberFormatException if none does; the position is then unchanged
     */
    double number() {
        int from = at;
        int i = at;
        int n = text.length();
        if (i < n && (text.charAt(i) == '+' || text.charAt(i) == '-')) {
            i++;
        }
        int digits = i;
        while (i < n && isDigit(text.charAt(i))) {
            i++;
        }
        int whole = i - digits;
        int part = 0;
        if (i < n && text.charAt(i) == '.') {
            int dot = ++i;
            while (i < n && isDigit(text.charAt(i))) {
                i++;
            }
            part = i - dot;
        }
        if (whole + part == 0) {
            throw new NumberFormatException("no number at character " + (from + 1));
        }
        if (i < n && (text.charAt(i) == 'e' || text.charAt(i) == 'E')) {
            int power = i + 1;
            if (power < n && (text.charAt(power) == '+' || text.charAt(power) == '-')) {
                power++;
            }
            int first = power;
            while (power < n && isDigit(text.charAt(power))) {
                power++;
            }
            i = power > first ? power : i; // else the e belongs to a unit such as em
        }
        at = i;
        return Double.parseDouble(text.substring(from, i));
    }

    /** The flag of an arc: exactly one digit 0 or 1, which needs no separator after it. */
    boolean flag() {
        if (at < text.length() && (text.charAt(at) == '0' || text.charAt(at) == '1')) {
            return text.charAt(at++) == '1';
        }
        throw new NumberFormatException("no flag 0 or 1 at character " + (at + 1));
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
