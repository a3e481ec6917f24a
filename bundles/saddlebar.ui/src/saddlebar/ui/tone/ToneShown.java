package saddlebar.ui.tone;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import saddlebar.model.commission.StencilRecipe;
import saddlebar.model.commission.ToneMode;
import saddlebar.model.problem.Refusal;
import saddlebar.stencil.tone.Calibration;
import saddlebar.stencil.tone.GrayHistogram;
import saddlebar.stencil.tone.Light;
import saddlebar.stencil.tone.Stretch;
import saddlebar.stencil.tone.WedgeReading;

/**
 * What the Tone part draws.
 *
 * @param readings    of the wedge, as measured; empty: none
 * @param calibration through them
 * @param curve       drawn for the layer
 * @param grays       of the layer, once they are read
 * @param stretch     from bare to solid, where tone is stretched
 * @param least       palest tone that holds
 * @param most        darkest tone that stays open
 */
record ToneShown(List<WedgeReading> readings, Optional<Calibration> calibration, CurvePoints curve, Optional<GrayHistogram> grays, Optional<Stretch> stretch,
        double least, double most) {
    static final int BINS = 64;
    static final ToneShown NOTHING = new ToneShown(List.of(), Optional.empty(), CurvePoints.of(""), Optional.empty(), Optional.empty(), 0, 1);

    ToneShown {
        readings = List.copyOf(readings);
        Objects.requireNonNull(curve, "curve");
    }

    static ToneShown of(List<WedgeReading> readings, StencilRecipe recipe, Optional<GrayHistogram> grays) {
        Optional<Stretch> stretch = Optional.empty();
        if (recipe.getToneMode() != ToneMode.LINEAR) {
            try {
                stretch = recipe.getToneTo() != null
                        ? Optional.of(new Stretch(recipe.getToneFrom(), recipe.getToneTo()))
                        : grays.map(found -> Stretch.of(recipe.getToneFrom(), OptionalDouble.empty(), found));
            } catch (Refusal e) {
                stretch = Optional.empty(); // the Recipe part says what is wrong
            }
        }
        return new ToneShown(readings, calibration(readings), CurvePoints.of(recipe.getCurve()), grays, stretch, recipe.getEndLow(), recipe.getEndHigh());
    }

    private static Optional<Calibration> calibration(List<WedgeReading> readings) {
        try {
            return readings.isEmpty() ? Optional.empty() : Optional.of(Calibration.of(readings));
        } catch (Refusal e) {
            return Optional.empty(); // said beside the readings
        }
    }

    ToneShown with(CurvePoints other) {
        return new ToneShown(readings, calibration, other, grays, stretch, least, most);
    }

    /** How much of what is drawn has which darkness: shares of the largest, from white to black; all 0 if nothing is drawn. */
    double[] bins() {
        double[] bins = new double[BINS];
        grays.ifPresent(found -> {
            for (int code = 0; code < 255; code++) {
                double dark = 1 - Light.of(code, found.coding());
                bins[Math.min(BINS - 1, (int) (dark * BINS))] += found.count(code);
            }
        });
        double most = 0;
        for (double bin : bins) {
            most = Math.max(most, bin);
        }
        for (int i = 0; i < BINS && most > 0; i++) {
            bins[i] /= most;
        }
        return bins;
    }
}
