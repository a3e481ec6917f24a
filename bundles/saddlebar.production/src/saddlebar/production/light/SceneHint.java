package saddlebar.production.light;

import java.util.List;
import java.util.Objects;

/**
 * A proposal drawn over the glass as broken lines: it changes nothing until somebody agrees to it.
 *
 * @param kind  what is proposed
 * @param lines each as x, y, x, y in mm of the window
 * @param words one sentence
 */
public record SceneHint(Kind kind, List<double[]> lines, String words) {
    /** What is proposed. */
    public enum Kind {
        /** Scores in the waste of an inside curve. */
        RELIEF_CUTS,
        /** A joint that would make a piece easier to cut. */
        JOINT,
        /** A mended line. */
        MEND
    }

    public SceneHint {
        Objects.requireNonNull(kind, "kind");
        lines = lines.stream().map(double[]::clone).toList();
        Objects.requireNonNull(words, "words");
    }
}
