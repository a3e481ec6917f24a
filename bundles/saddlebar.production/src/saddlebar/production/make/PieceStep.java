package saddlebar.production.make;

import java.util.List;
import java.util.Optional;

import saddlebar.cartoon.Cartoon;
import saddlebar.cartoon.CartoonMaker;
import saddlebar.cartoon.CartoonSettings;
import saddlebar.cartoon.Join;
import saddlebar.cartoon.NumberedFace;
import saddlebar.model.art.DrawnLine;
import saddlebar.model.commission.JoinKind;
import saddlebar.model.work.Work;
import saddlebar.production.facts.ArtFile;
import saddlebar.production.facts.CommissionFacts.PlacedPanel;
import saddlebar.production.facts.PanelFacts;

/** From the cutline to numbered pieces; numbers that a piece once had it keeps. */
final class PieceStep {
    private final OpenArtworks artworks;

    PieceStep(OpenArtworks artworks) {
        this.artworks = artworks;
    }

    /** Only for panels that have artwork and a cutline. */
    PanelPieces run(PlacedPanel placed, boolean afresh, Work work) {
        PanelFacts panel = placed.panel();
        ArtFile art = panel.art().orElseThrow();
        CartoonSettings settings = settings(panel);
        String key = ContentKey.of("pieces", art, panel.cutlineLayer(), settings);
        if (!afresh && key.equals(panel.piecesKey()) && !panel.pieces().isEmpty()) {
            List<CutPiece> kept = panel.pieces().stream().filter(piece -> !piece.glass().isEmpty())
                    .map(piece -> new CutPiece(placed.window().label(panel, piece.number()), piece.number(), Outlines.polygon(piece.glass()))).toList();
            return new PanelPieces(placed, key, Optional.empty(), kept);
        }
        work.say(placed.label() + ": pieces");
        List<DrawnLine> cutline = artworks.lines(art, panel.cutlineLayer());
        List<NumberedFace> before = panel.pieces().stream().map(piece -> new NumberedFace(piece.number(), Outlines.polygon(piece.face()))).toList();
        Cartoon cartoon = CartoonMaker.make(cutline, settings, before, panel.highestEver() + 1, work);
        List<CutPiece> pieces = cartoon.pieces().stream().filter(piece -> !piece.glass().isEmpty())
                .map(piece -> new CutPiece(placed.window().label(panel, piece.number()), piece.number(), piece.glass())).toList();
        return new PanelPieces(placed, key, Optional.of(cartoon), pieces);
    }

    private static CartoonSettings settings(PanelFacts panel) {
        Join join = panel.join() == JoinKind.LEAD ? Join.came(panel.gapMm()) : Join.gap(panel.gapMm());
        return CartoonSettings.defaults().withJoin(join);
    }
}
