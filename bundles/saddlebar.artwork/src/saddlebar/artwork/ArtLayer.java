package saddlebar.artwork;

import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * A group of the artwork that can be asked for by itself.
 *
 * @param id           unique in the artwork: the group's own id, or one made from its place such as {@code group-2.1}
 * @param label        what the person called it; the id if it has no name
 * @param depth        0 for a group of the page, 1 for one inside that, …
 * @param parentId     id of the group around it, empty at depth 0
 * @param elementCount shapes, texts and pictures drawn in it, those of inner groups included
 * @param hidden       switched off in the drawing (itself, not a group around it): drawn only when asked for by name
 * @param hint         what it looks like
 */
public record ArtLayer(String id, String label, int depth, String parentId, int elementCount, boolean hidden, LayerHint hint) {
    public ArtLayer {
        Require.text("id", id);
        Require.text("label", label);
        Require.within("depth", depth, 0, Integer.MAX_VALUE);
        Objects.requireNonNull(parentId, "parentId");
        Require.within("elementCount", elementCount, 0, Integer.MAX_VALUE);
        Objects.requireNonNull(hint, "hint");
    }
}
