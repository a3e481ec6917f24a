package saddlebar.model.problem;

import java.util.Locale;

/** How much a problem matters, worst first: the order of the constants is the order of lists. */
public enum Severity {
    /** The result cannot be used as it is. */
    ERROR,
    /** Usable, but somebody should look. */
    WARNING,
    /** Good to know. */
    NOTE;

    /** The word used in JSON and records. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
