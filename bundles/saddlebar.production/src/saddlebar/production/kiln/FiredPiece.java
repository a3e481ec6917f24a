package saddlebar.production.kiln;

import java.util.List;
import java.util.Optional;

/**
 * A piece in a firing.
 *
 * @param window  its window's name
 * @param piece   its number
 * @param pieceId its lasting id, empty if the record has none
 * @param layers  names of the layers that were fired on it
 * @param place   as written on the load card, empty if it was not written down
 * @param xMm     from the shelf's front left corner
 * @param yMm     to the back
 */
public record FiredPiece(String window, String piece, String pieceId, List<String> layers, String place, Optional<Double> xMm, Optional<Double> yMm) {
    public FiredPiece {
        layers = List.copyOf(layers);
    }

    /** As people write it: W01/12. */
    public String label() {
        return window + "/" + piece;
    }
}
