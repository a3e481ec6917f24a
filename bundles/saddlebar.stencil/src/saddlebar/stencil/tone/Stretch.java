package saddlebar.stencil.tone;

import static saddlebar.model.units.Units.plain;

import java.util.OptionalDouble;

import saddlebar.model.problem.Refusal;

/**
 * The range of a drawing's darkness that becomes bare to solid: coverage = (k - from)/(to - from), cut to 0 to 1. The paint itself is the light
 * tone, so shading that is drawn pale must be stretched before it is screened (common practice).
 *
 * @param from darkness that stays bare, 0 to less than {@code to}
 * @param to   darkness that becomes solid, to 1
 */
public record Stretch(double from, double to) {
    /** Of what is drawn, so much is not darker than the default {@code to}: some specks may be. */
    public static final double USUAL_SHARE = 0.995;

    public Stretch {
        if (!(from >= 0 && from < 1)) {
            throw new Refusal("from", "a darkness of " + plain(from) + " cannot stay bare", "take 0 (white) to less than 1 (black)");
        }
        if (!(to > 0 && to <= 1)) {
            throw new Refusal("to", "a darkness of " + plain(to) + " cannot become solid", "take more than 0 (white) to 1 (black)");
        }
        if (from >= to) {
            throw new Refusal("from", "what stays bare, " + plain(from) + ", must be lighter than what becomes solid, " + plain(to),
                    "take a smaller from or a larger to");
        }
    }

    /** As asked for; without {@code to}, up to the darkness that 99.5 % of what is drawn does not exceed. */
    public static Stretch of(double from, OptionalDouble to, GrayHistogram histogram) {
        return new Stretch(from, to.isPresent() ? to.getAsDouble() : histogram.drawnPercentile(USUAL_SHARE));
    }

    /** Coverage for a darkness, 0 to 1. */
    public double coverage(double darkness) {
        return Math.max(0, Math.min(1, (darkness - from) / (to - from)));
    }
}
