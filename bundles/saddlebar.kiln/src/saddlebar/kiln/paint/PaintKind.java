package saddlebar.kiln.paint;

import java.util.Locale;
import java.util.Optional;

/** Kinds of kiln-fired paint. */
public enum PaintKind {
    TRACE, MATT, LETTERING, ENAMEL, STAIN;

    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<PaintKind> of(String word) {
        for (PaintKind kind : values()) {
            if (kind.key().equalsIgnoreCase(word.strip())) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
