package saddlebar.production.make;

import java.util.List;
import java.util.Optional;

import saddlebar.cartoon.Cartoon;
import saddlebar.model.problem.Problem;
import saddlebar.production.facts.CommissionFacts.PlacedPanel;

/**
 * The pieces of a panel.
 *
 * @param placed       the panel and its window
 * @param key          content key of the pieces
 * @param cartoon      present if the pieces were made now; else those of the model are still good
 * @param pieces       by number
 * @param problems     found now, worst first; none if the pieces are still good
 * @param droppedMends keys of agreed mends that found nothing to do
 */
public record PanelPieces(PlacedPanel placed, String key, Optional<Cartoon> cartoon, List<CutPiece> pieces, List<Problem> problems,
        List<String> droppedMends) {
    public PanelPieces {
        pieces = List.copyOf(pieces);
        problems = List.copyOf(problems);
        droppedMends = List.copyOf(droppedMends);
    }
}
