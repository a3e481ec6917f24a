package saddlebar.production.facts;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

import saddlebar.model.commission.EndRule;
import saddlebar.model.commission.ToneMode;
import saddlebar.model.units.Require;

/**
 * How drawn gray becomes coverage.
 *
 * @param mode        as the recipe says
 * @param from        darkness of the drawing that stays bare, 0 to 1 of linear light
 * @param to          darkness that is covered whole; empty: measured on the layer
 * @param curve       drawn by hand, in words of {@link saddlebar.stencil.tone.DrawnCurve}; empty if there is none
 * @param calibration measured points nominal, effective, … of the tone calibration, ascending; empty if there is none
 * @param endLow      least coverage that prints, 0 if not limited
 * @param endHigh     greatest coverage that stays open, 1 if not limited
 * @param endRule     what becomes of tones beyond
 */
public record ToneFacts(ToneMode mode, double from, OptionalDouble to, String curve, List<Double> calibration, double endLow, double endHigh,
        EndRule endRule) {
    public ToneFacts {
        Objects.requireNonNull(mode, "mode");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(curve, "curve");
        Objects.requireNonNull(endRule, "endRule");
        Require.within("from", from, 0, 1);
        Require.within("endLow", endLow, 0, 1);
        Require.within("endHigh", endHigh, 0, 1);
        calibration = List.copyOf(calibration);
    }
}
