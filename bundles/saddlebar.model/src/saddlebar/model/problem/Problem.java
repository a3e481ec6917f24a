package saddlebar.model.problem;

import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;

import saddlebar.model.units.Require;

/**
 * Something a person should look at: what, where, how bad.
 *
 * @param code     short stable word such as {@code open-end}; used in JSON and by quick fixes, never changed
 * @param severity how much it matters
 * @param where    file, line, element, piece or stencil; empty if {@code at} says it all
 * @param at       place in the artwork, if it has one
 * @param message  one clear sentence: what is wrong and what to do
 */
public record Problem(String code, Severity severity, String where, Optional<PlaceMm> at, String message) {
    /** Worst first, then by code, place and words, so that lists are the same on every run. */
    public static final Comparator<Problem> WORST_FIRST = Comparator.comparing(Problem::severity).thenComparing(Problem::code)
            .thenComparing(Problem::where).thenComparing(p -> p.at.map(PlaceMm::yMm).orElse(0.0))
            .thenComparing(p -> p.at.map(PlaceMm::xMm).orElse(0.0)).thenComparing(Problem::message);

    public Problem {
        Require.text("code", code);
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(where, "where");
        Objects.requireNonNull(at, "at");
        Require.text("message", message);
    }

    public static Problem of(String code, Severity severity, String where, String message) {
        return new Problem(code, severity, where, Optional.empty(), message);
    }

    public static Problem at(String code, Severity severity, double xMm, double yMm, String message) {
        return new Problem(code, severity, "", Optional.of(new PlaceMm(xMm, yMm)), message);
    }
}
