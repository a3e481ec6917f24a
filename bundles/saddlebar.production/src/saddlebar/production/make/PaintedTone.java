package saddlebar.production.make;

import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;

import org.locationtech.jts.geom.Envelope;

import saddlebar.artwork.RasterRequest;
import saddlebar.model.art.GrayBands;
import saddlebar.model.art.GrayCoding;
import saddlebar.model.units.Units;
import saddlebar.model.work.Work;
import saddlebar.production.facts.ArtFile;
import saddlebar.production.facts.LayerFacts;
import saddlebar.report.truesize.Ink;

/** All painted layers of a panel as one light gray picture for its cartoon: dark enough to paint after, light enough to write on. */
final class PaintedTone {
    /** Solid paint prints as this share of black (common practice for a drawing that is worked over, no source). */
    private static final double DARKEST = 0.42;
    private static final double BEST_DPI = 150;
    /** Memory for one picture. */
    private static final double MOST_PX = 40e6;

    private final OpenArtworks artworks;

    PaintedTone(OpenArtworks artworks) {
        this.artworks = artworks;
    }

    /** Empty where nothing is painted with stencils, or the panel has no pieces. */
    Optional<Ink.Picture> of(PanelPieces panel, Work work) throws IOException {
        Envelope box = new Envelope();
        panel.pieces().forEach(piece -> box.expandToInclude(piece.glass().getEnvelopeInternal()));
        if (box.isNull() || panel.placed().panel().layers().isEmpty()) {
            return Optional.empty();
        }
        ArtFile art = panel.placed().panel().art().orElseThrow();
        double inches2 = box.getWidth() * box.getHeight() / (Units.MM_PER_INCH * Units.MM_PER_INCH);
        double dpi = Math.min(BEST_DPI, Math.sqrt(MOST_PX / inches2));
        RasterPlace place = RasterPlace.around(box, dpi);
        byte[] tone = new byte[place.widthPx() * place.heightPx()];
        Arrays.fill(tone, (byte) 255);
        for (LayerFacts layer : panel.placed().panel().layers()) {
            work.say(panel.placed().label() + " " + layer.name());
            RasterRequest request = new RasterRequest(place.originXMm(), place.originYMm(), place.widthPx(), place.heightPx(), dpi, GrayCoding.CODE_VALUES);
            try (GrayBands bands = artworks.gray(art, layer.artLayer(), request, work)) {
                darken(tone, bands, place);
            }
        }
        return Optional.of(new Ink.Picture(place.widthPx(), place.heightPx(), tone, place.originXMm(), place.originYMm(), place.widthMm(), place.heightMm()));
    }

    /** Paint over paint is darker, up to the darkest tone. */
    private static void darken(byte[] tone, GrayBands bands, RasterPlace place) throws IOException {
        byte[] band = new byte[place.widthPx() * 64];
        int at = 0;
        for (int rows = bands.read(band, 64); rows > 0; rows = bands.read(band, 64)) {
            for (int i = 0; i < rows * place.widthPx(); i++, at++) {
                int lightened = 255 - (int) Math.round((255 - (band[i] & 255)) * DARKEST);
                tone[at] = (byte) Math.max((int) Math.round(255 * (1 - DARKEST)), (tone[at] & 255) * lightened / 255);
            }
        }
    }
}
