package saddlebar.cartoon.opening;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Require;

/**
 * One size measured at several places, such as the width at top, middle and bottom: the least one decides, since the panel must pass everywhere.
 *
 * @param what  {@code width} or {@code height}
 * @param mm    readings in order along the opening, at least one
 */
public record SizeReadings(String what, List<Double> mm) {
    /** Readings that differ by more are told (studio setting, no source). */
    public static final double TOLD_MM = 3;

    public SizeReadings {
        Require.text("what", what);
        mm = List.copyOf(mm);
        Require.within("readings", mm.size(), 1, 1000);
        mm.forEach(reading -> Require.within("mm", reading, 10, 20_000));
    }

    public double leastMm() {
        return Collections.min(mm);
    }

    /** Greatest less least. */
    public double spreadMm() {
        return Collections.max(mm) - leastMm();
    }

    public Optional<Problem> problem() {
        return spreadMm() <= TOLD_MM
                ? Optional.empty()
                : Optional.of(Problem.of("size-varies", Severity.WARNING, what, String.format(Locale.ROOT,
                        "the %s varies by %.1f mm along the opening; the least, %.1f mm, is taken: measure sides and diagonals, or take a template",
                        what, spreadMm(), leastMm())));
    }
}
