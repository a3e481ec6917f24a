package saddlebar.report.document;

import java.util.Locale;
import java.util.Optional;

/** The documents there are. */
public enum ReportKind {
    /** For the client before the work: designs, sizes, price, terms. */
    PROPOSAL,
    /** For the client during the work. */
    PROGRESS,
    /** For the bench: lists and cards. */
    WORKSHOP,
    /** For the client after the work, and for whoever mends it one day. */
    DOSSIER,
    /** One sheet a window for a jury. */
    COMPETITION,
    /** To make one piece again. */
    REMAKE,
    /** What was found wrong, and where it leads. */
    DEFECT;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<ReportKind> ofWord(String word) {
        for (ReportKind kind : values()) {
            if (kind.word().equals(word.strip().toLowerCase(Locale.ROOT))) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
