package saddlebar.kiln.log;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;

/**
 * Whether a kiln changes over the months: thermocouples age and elements weaken. What is followed is the shift of the peak that would explain each
 * firing's heat work ({@link LogReview#equivalentShiftK}), or what witness cones showed; the line through it by least squares.
 *
 * @param kPerMonth     slope, K in 30 days
 * @param standardError of the slope
 * @param nowK          the line's value at the last firing
 * @param firings       how many
 */
public record KilnDrift(double kPerMonth, double standardError, double nowK, int firings) {
    private static final int LEAST = 4;
    private static final double MONTH_DAYS = 30;
    private static final double CLEAR = 2.5;
    private static final double SHOWS_K = 5;

    /** A firing: its day (any count of days) and its shift in K. */
    public record Seen(double day, double shiftK) {
    }

    /** Empty with fewer than four firings or all on one day. */
    public static Optional<KilnDrift> of(List<Seen> firings) {
        double first = firings.stream().mapToDouble(Seen::day).min().orElse(0);
        double last = firings.stream().mapToDouble(Seen::day).max().orElse(0);
        if (firings.size() < LEAST || last == first) {
            return Optional.empty();
        }
        LinearFit fit = LinearFit.of(firings.stream().map(s -> new double[] {(s.day() - first) / MONTH_DAYS}).toArray(double[][]::new),
                firings.stream().mapToDouble(Seen::shiftK).toArray());
        return Optional.of(new KilnDrift(fit.coefficients()[1], fit.standardErrors()[1], fit.at((last - first) / MONTH_DAYS), firings.size()));
    }

    /** A slope 2.5 times its standard error that has come to 5 K, or would within half a year. */
    public boolean clear() {
        return Math.abs(kPerMonth) > CLEAR * standardError && Math.max(Math.abs(nowK), Math.abs(6 * kPerMonth)) >= SHOWS_K;
    }

    public Optional<Problem> caution(String kiln) {
        return clear()
                ? Optional.of(Problem.of("kiln-drifts", Severity.WARNING, kiln, String.format(Locale.ROOT,
                        "Over %d firings it has come to fire %.1f K %s than told, %.1f K a month; check the thermocouple against witness cones "
                                + "and the elements' current.",
                        firings, Math.abs(nowK), nowK > 0 ? "hotter" : "cooler", Math.abs(kPerMonth))))
                : Optional.empty();
    }
}
