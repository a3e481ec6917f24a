package saddlebar.stencil.sheet;

import java.util.Locale;

/** Lengths for a person's eye, in the words that stand on sheets. */
final class Sides {
    private Sides() {
    }

    static String of(double widthMm, double heightMm) {
        return mm(widthMm) + " x " + mm(heightMm) + " mm";
    }

    /** One decimal, none if it is a whole number. */
    static String mm(double lengthMm) {
        String text = String.format(Locale.ROOT, "%.1f", lengthMm);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
