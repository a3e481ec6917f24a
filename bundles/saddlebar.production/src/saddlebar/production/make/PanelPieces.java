package saddlebar.production.make;

import java.util.List;
import java.util.Optional;

import saddlebar.cartoon.Cartoon;
import saddlebar.production.facts.CommissionFacts.PlacedPanel;

/**
 * The pieces of a panel.
 *
 * @param placed  the panel and its window
 * @param key     content key of the pieces
 * @param cartoon present if the pieces were made now; else those of the model are still good
 * @param pieces  by number
 */
public record PanelPieces(PlacedPanel placed, String key, Optional<Cartoon> cartoon, List<CutPiece> pieces) {
    public PanelPieces {
        pieces = List.copyOf(pieces);
    }
}
