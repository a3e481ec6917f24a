package saddlebar.ui.screening;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

import saddlebar.model.art.GrayCoding;
import saddlebar.stencil.tone.Calibration;
import saddlebar.stencil.tone.DrawnCurve;
import saddlebar.stencil.tone.EndLimits;
import saddlebar.stencil.tone.GrayHistogram;
import saddlebar.stencil.tone.Stretch;
import saddlebar.stencil.tone.ToneTable;

/**
 * How a recipe turns drawn gray into coverage.
 *
 * @param codeValues  tone as the code values stand, without anything else
 * @param from        darkness that stays bare
 * @param to          darkness that becomes solid; empty: measured on the layer
 * @param curve       drawn by hand, if any
 * @param calibration of the print, if it counts
 * @param ends        tones that hold
 */
public record ToneWay(boolean codeValues, double from, OptionalDouble to, Optional<DrawnCurve> curve, Optional<Calibration> calibration, EndLimits ends) {
    public ToneWay {
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(curve, "curve");
        Objects.requireNonNull(calibration, "calibration");
        Objects.requireNonNull(ends, "ends");
    }

    GrayCoding coding() {
        return codeValues ? GrayCoding.CODE_VALUES : GrayCoding.SRGB_LUMINANCE;
    }

    /** @param layer grays of the whole layer, asked for only where they count */
    ToneTable table(Supplier<GrayHistogram> layer) {
        return codeValues ? ToneTable.linear() : ToneTable.of(coding(), stretch(layer), curve, calibration, ends);
    }

    Stretch stretch(Supplier<GrayHistogram> layer) {
        return to.isPresent() ? new Stretch(from, to.getAsDouble()) : Stretch.of(from, to, layer.get());
    }
}
