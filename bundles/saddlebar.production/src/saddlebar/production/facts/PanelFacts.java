package saddlebar.production.facts;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import saddlebar.model.commission.JoinKind;
import saddlebar.model.units.Require;

/**
 * A panel with its artwork.
 *
 * @param id           id in the model
 * @param name         its name within the window
 * @param art          empty if none was brought yet
 * @param cutlineLayer the artwork's layer that is cut
 * @param join         what holds the pieces
 * @param gapMm        between glasses, all in
 * @param pieces       as last made, with numbers to keep
 * @param highestEver  the highest number that any piece ever had, also retired ones; 0 if none
 * @param piecesKey    content key of the last making of pieces, empty if never
 * @param layers       painted layers made with stencils, in firing order
 * @param cut          how its cutline is read, beside join and gap
 */
public record PanelFacts(String id, String name, Optional<ArtFile> art, String cutlineLayer, JoinKind join, double gapMm, List<PieceFacts> pieces,
        int highestEver, String piecesKey, List<LayerFacts> layers, CutFacts cut) {
    public PanelFacts {
        Require.text("id", id);
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(art, "art");
        Objects.requireNonNull(cutlineLayer, "cutlineLayer");
        Objects.requireNonNull(join, "join");
        Require.within("gapMm", gapMm, 0, 20);
        pieces = List.copyOf(pieces);
        Require.within("highestEver", highestEver, 0, 1_000_000);
        Objects.requireNonNull(piecesKey, "piecesKey");
        layers = List.copyOf(layers);
        Objects.requireNonNull(cut, "cut");
    }
}
