package saddlebar.production.make;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import saddlebar.model.art.GrayBands;
import saddlebar.model.problem.PlaceMm;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Units;
import saddlebar.model.work.Work;
import saddlebar.production.facts.ArtFile;
import saddlebar.production.facts.CommissionFacts.PlacedPanel;
import saddlebar.production.facts.LayerFacts;
import saddlebar.stencil.BitPicture;
import saddlebar.stencil.limits.LayerTrap;
import saddlebar.stencil.tone.ToneTable;

/**
 * Finds where two layers of one face meet on a piece without overlapping by the trap that one of their recipes asks for: printed a hair apart, bare
 * glass would show between them. A layer's edge is taken where its wanted coverage passes one half. Looked for at ten px a mm.
 */
final class LayerRegistration {
    private static final double LOOK_DPI = 254;
    private static final double EDGE_COVERAGE = 0.5;

    private final OpenArtworks artworks;
    private final LayerTones tones;

    LayerRegistration(OpenArtworks artworks) {
        this.artworks = artworks;
        this.tones = new LayerTones(artworks);
    }

    List<Problem> problems(PanelPieces panel, Work work) throws IOException {
        List<Problem> problems = new ArrayList<>();
        Optional<ArtFile> art = panel.placed().panel().art();
        List<LayerFacts> layers = panel.placed().panel().layers();
        for (int i = 0; i < layers.size() && art.isPresent(); i++) {
            for (int j = i + 1; j < layers.size(); j++) {
                double trapMm = Math.max(layers.get(i).recipe().trapMm(), layers.get(j).recipe().trapMm());
                if (trapMm > 0 && layers.get(i).face() == layers.get(j).face()) {
                    for (CutPiece piece : panel.pieces()) {
                        work.checkpoint();
                        meeting(panel, art.get(), layers.get(i), layers.get(j), piece, trapMm, work).ifPresent(problems::add);
                    }
                }
            }
        }
        return problems;
    }

    private Optional<Problem> meeting(PanelPieces panel, ArtFile art, LayerFacts under, LayerFacts over, CutPiece piece, double trapMm, Work work)
            throws IOException {
        RasterPlace place = RasterPlace.around(piece.glass().getEnvelopeInternal(), LOOK_DPI);
        BitPicture first = painted(panel, art, under, piece, place, work);
        if (first.count() == 0) {
            return Optional.empty();
        }
        BitPicture second = painted(panel, art, over, piece, place, work);
        LayerTrap.Meeting meeting = LayerTrap.meeting(first, second, LOOK_DPI, trapMm);
        if (meeting.places().isEmpty()) {
            return Optional.empty();
        }
        PlaceMm at = meeting.places().get(0);
        return Optional.of(new Problem("layers-without-trap", Severity.WARNING, piece.label(),
                Optional.of(new PlaceMm(at.xMm() + place.originXMm(), at.yMm() + place.originYMm())),
                String.format(Locale.ROOT,
                        "%s and %s meet over about %.1f mm in %d places without overlapping by the %s mm asked for (they overlap on %.1f mm2 in"
                                + " all); printed a hair apart, bare glass shows between them: draw one of them on under the other",
                        under.name(), over.name(),
                        meeting.lengthMm(), meeting.places().size(), Units.plain(trapMm), meeting.overlapMm2())));
    }

    private BitPicture painted(PanelPieces panel, ArtFile art, LayerFacts layer, CutPiece piece, RasterPlace place, Work work) throws IOException {
        PlacedPanel placed = panel.placed();
        ToneTable tone = tones.of(new PaintedLayer(placed, layer, art, panel.pieces(), panel.key()), new StopOnly(work));
        BitPicture mask = BitPicture.of(new MaskBands(List.of(SightLineMask.printed(piece.glass(), layer)), place));
        BitPicture painted = new BitPicture(place.widthPx(), place.heightPx());
        byte[] band = new byte[place.widthPx() * Math.min(place.heightPx(), 64)];
        try (GrayBands gray = artworks.gray(art, layer.artLayer(), place, LayerTones.coding(layer.recipe().tone()), new StopOnly(work))) {
            int y = 0;
            for (int rows = gray.read(band, 64); rows > 0; rows = gray.read(band, 64)) {
                for (int i = 0; i < rows * place.widthPx(); i++) {
                    int x = i % place.widthPx();
                    int row = y + i / place.widthPx();
                    painted.set(x, row, tone.coverage(band[i] & 255) >= EDGE_COVERAGE && mask.get(x, row));
                }
                y += rows;
            }
        }
        return painted;
    }
}
