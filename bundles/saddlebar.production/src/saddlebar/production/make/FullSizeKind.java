package saddlebar.production.make;

import java.util.Locale;
import java.util.Optional;

/** What can be printed at full size. */
public enum FullSizeKind {
    /** Everything: what is painted as a light tone, the cutline and the numbers over it. */
    CARTOON,
    /** The cutline with the numbers, to lie under the glass. */
    CUTLINE,
    /** Each piece as its glass is cut, ganged, to cut out. */
    PATTERNS,
    /** Where bars go, and where they are tied. */
    BARS,
    /** Bare outlines for a machine that cuts, as SVG and PDF. */
    OUTLINES;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<FullSizeKind> ofWord(String word) {
        for (FullSizeKind kind : values()) {
            if (kind.word().equals(word.strip().toLowerCase(Locale.ROOT))) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
