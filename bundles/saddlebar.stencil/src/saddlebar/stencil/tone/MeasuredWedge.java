package saddlebar.stencil.tone;

import java.util.List;
import java.util.OptionalDouble;

import saddlebar.model.problem.Refusal;

/** From measured densities of a wedge to the coverage that each step shows ({@link TintDensity}), bare and solid taken from the wedge itself. */
public final class MeasuredWedge {
    private MeasuredWedge() {
    }

    /**
     * Effective coverages in the order given.
     *
     * @param n Yule-Nielsen factor: 1 for paint seen through glass
     * @throws Refusal without bare or solid, or where they hardly differ
     */
    public static List<WedgeReading> readings(List<MeasuredStep> steps, double n) {
        double bare = mean(steps, 0).orElseThrow(() -> missing("bare glass (step 0)"));
        double solid = mean(steps, 1).orElseThrow(() -> missing("solid (step 1)"));
        TintDensity tint = new TintDensity(bare, solid, n);
        return steps.stream().map(step -> new WedgeReading(step.nominal(), tint.effective(step.density()))).toList();
    }

    private static OptionalDouble mean(List<MeasuredStep> steps, double nominal) {
        return steps.stream().filter(step -> step.nominal() == nominal).mapToDouble(MeasuredStep::density).average();
    }

    private static Refusal missing(String what) {
        return new Refusal("wedge", "the " + what + " is missing", "measure it and add it");
    }
}
