package saddlebar.production.make;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

import org.locationtech.jts.geom.Envelope;

import saddlebar.model.art.GrayBands;
import saddlebar.model.art.GrayCoding;
import saddlebar.model.commission.EndRule;
import saddlebar.model.commission.ToneMode;
import saddlebar.model.work.Work;
import saddlebar.production.facts.ToneFacts;
import saddlebar.stencil.tone.Calibration;
import saddlebar.stencil.tone.DrawnCurve;
import saddlebar.stencil.tone.EndLimits;
import saddlebar.stencil.tone.GrayHistogram;
import saddlebar.stencil.tone.Stretch;
import saddlebar.stencil.tone.ToneTable;
import saddlebar.stencil.tone.WedgeReading;

/** The tone table of each layer, the same for all its stencils: a range that is measured is measured over the whole layer, once. */
final class LayerTones {
    /** Fine enough for the range of a drawing: a px is 1/3 mm. */
    private static final double MEASURE_DPI = 76.2;

    private final OpenArtworks artworks;
    private final Map<String, GrayHistogram> measured = new ConcurrentHashMap<>();

    LayerTones(OpenArtworks artworks) {
        this.artworks = artworks;
    }

    static GrayCoding coding(ToneFacts tone) {
        return tone.mode() == ToneMode.LINEAR ? GrayCoding.CODE_VALUES : GrayCoding.SRGB_LUMINANCE;
    }

    ToneTable of(PaintedLayer layer, Work work) {
        ToneFacts tone = layer.layer().recipe().tone();
        if (tone.mode() == ToneMode.LINEAR) {
            return ToneTable.linear();
        }
        Stretch stretch = tone.to().isPresent()
                ? new Stretch(tone.from(), tone.to().getAsDouble())
                : Stretch.of(tone.from(), tone.to(), measured.computeIfAbsent(layer.layer().id(), id -> measure(layer, work)));
        return ToneTable.of(coding(tone), stretch, DrawnCurve.parse(tone.curve()), calibration(tone), ends(tone));
    }

    private GrayHistogram measure(PaintedLayer layer, Work work) {
        Envelope box = new Envelope();
        layer.pieces().forEach(piece -> box.expandToInclude(piece.glass().getEnvelopeInternal()));
        RasterPlace place = RasterPlace.around(box, MEASURE_DPI);
        try {
            GrayBands gray = artworks.gray(layer.art(), layer.layer().artLayer(), place, GrayCoding.SRGB_LUMINANCE, work.part(0, place.heightPx()));
            return GrayHistogram.of(gray);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Optional<Calibration> calibration(ToneFacts tone) {
        if (tone.mode() != ToneMode.CALIBRATED || tone.calibration().isEmpty()) {
            return Optional.empty();
        }
        List<WedgeReading> readings = new ArrayList<>();
        for (int i = 0; i + 1 < tone.calibration().size(); i += 2) {
            readings.add(new WedgeReading(tone.calibration().get(i), tone.calibration().get(i + 1)));
        }
        return Optional.of(Calibration.of(readings));
    }

    private static EndLimits ends(ToneFacts tone) {
        EndLimits.Soft soft = tone.endRule() == EndRule.CUT
                ? EndLimits.Soft.CUT
                : tone.endRule() == EndRule.LIFT ? EndLimits.Soft.LIFTED : EndLimits.Soft.NEAREST;
        return new EndLimits(tone.endLow(), tone.endHigh(), soft);
    }
}
