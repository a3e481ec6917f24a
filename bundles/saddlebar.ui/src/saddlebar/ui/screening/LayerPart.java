package saddlebar.ui.screening;

import java.util.Optional;

import saddlebar.model.commission.DesignLayer;

/** A part that speaks of one layer; a part opened later speaks of the same one. */
public interface LayerPart {
    Optional<DesignLayer> layer();
}
