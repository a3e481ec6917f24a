package saddlebar.kiln.paint;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;

/** The rule of the trade (common practice, no source): hottest-maturing paint first, stain last. */
public final class FiringOrder {
    /** Firings this near in peak count as equally hot. */
    private static final double ALIKE_K = 5;

    private FiringOrder() {
    }

    /** A firing as planned or done: the paint that is new in it, and its peak. */
    public record Step(PaintFlux paint, double peakC) {
    }

    /** What breaks the rule, in the order of the firings. */
    public static List<Problem> check(List<Step> steps) {
        List<Problem> found = new ArrayList<>();
        for (int i = 1; i < steps.size(); i++) {
            Step before = steps.get(i - 1);
            Step now = steps.get(i);
            if (before.paint().kind() == PaintKind.STAIN && now.paint().kind() != PaintKind.STAIN) {
                found.add(Problem.of("order-stain", Severity.WARNING, now.paint().name(),
                        now.paint().name() + " would be fired after the stain " + before.paint().name()
                                + ": fire stain last, a second heat changes its colour."));
            } else if (now.peakC() > before.peakC() + ALIKE_K) {
                found.add(Problem.of("order-hotter", Severity.WARNING, now.paint().name(), String.format(Locale.ROOT,
                        "%s at %.0f degC would follow %s at %.0f degC: fire the hottest first, or the earlier layer softens again.",
                        now.paint().name(), now.peakC(),
                        before.paint().name(), before.peakC())));
            }
        }
        return found;
    }

    /** The order in which these paints should be fired: by the middle of the maturing range, stain behind all others. */
    public static List<PaintFlux> best(List<PaintFlux> paints) {
        return paints.stream().sorted(java.util.Comparator.comparing((PaintFlux p) -> p.kind() == PaintKind.STAIN)
                .thenComparing(p -> -(p.maturingFromC() + p.maturingToC())).thenComparing(PaintFlux::name)).toList();
    }
}
