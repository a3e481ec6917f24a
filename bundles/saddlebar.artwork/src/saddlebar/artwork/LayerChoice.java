package saddlebar.artwork;

import java.util.Objects;
import java.util.Optional;

/**
 * Which part of an artwork is meant: all that is drawn (hidden groups are not), or one group with what is in it, even if it or a group around
 * it is hidden.
 *
 * @param layerId id of the one group, empty for all that is drawn
 */
public record LayerChoice(Optional<String> layerId) {
    private static final LayerChoice ALL = new LayerChoice(Optional.empty());

    public LayerChoice {
        Objects.requireNonNull(layerId, "layerId");
    }

    /** All that is drawn. */
    public static LayerChoice all() {
        return ALL;
    }

    /** One group. */
    public static LayerChoice of(ArtLayer layer) {
        return new LayerChoice(Optional.of(layer.id()));
    }
}
