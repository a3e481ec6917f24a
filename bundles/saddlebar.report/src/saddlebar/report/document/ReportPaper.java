package saddlebar.report.document;

import java.util.Locale;
import java.util.Optional;

/** Paper of a document: A4 by ISO 216, letter by ANSI/ASME Y14.1. */
public enum ReportPaper {
    A4("210mm 297mm", 210), LETTER("8.5in 11in", 215.9);

    private final String css;
    private final double widthMm;

    ReportPaper(String css, double widthMm) {
        this.css = css;
        this.widthMm = widthMm;
    }

    String css() {
        return css;
    }

    public double widthMm() {
        return widthMm;
    }

    public static Optional<ReportPaper> ofWord(String word) {
        return switch (word.strip().toLowerCase(Locale.ROOT)) {
            case "a4" -> Optional.of(A4);
            case "letter" -> Optional.of(LETTER);
            default -> Optional.empty();
        };
    }
}
