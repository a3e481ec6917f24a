package saddlebar.production.make;

import java.util.List;
import java.util.Optional;

import saddlebar.production.facts.ArtFile;
import saddlebar.production.facts.CommissionFacts.PlacedPanel;
import saddlebar.production.facts.LayerFacts;

/**
 * A layer and the pieces it may print on.
 *
 * @param placed the panel and its window
 * @param layer  the layer
 * @param art    the panel's artwork
 * @param pieces all pieces of the panel
 * @param piecesKey content key of the pieces
 */
public record PaintedLayer(PlacedPanel placed, LayerFacts layer, ArtFile art, List<CutPiece> pieces, String piecesKey) {
    public PaintedLayer {
        pieces = List.copyOf(pieces);
    }

    String label() {
        return placed.label() + " " + layer.name();
    }

    Optional<CutPiece> piece(String label) {
        return pieces.stream().filter(piece -> piece.label().equals(label)).findFirst();
    }

    /** What decides which pieces are painted, and which are painted alike. */
    String paintedKey() {
        return ContentKey.of("painted", art, piecesKey, layer.printedPlace());
    }
}
