package saddlebar.production.light;

import java.util.List;
import java.util.Optional;

import saddlebar.artwork.ArtLayer;
import saddlebar.artwork.Artwork;
import saddlebar.artwork.ColourArea;
import saddlebar.artwork.LayerChoice;
import saddlebar.artwork.LayerHint;

/** Glass as the artwork colours it, for pieces whose glass has not been chosen from the studio's stock yet. */
final class DrawnGlass {
    private final List<ColourArea> areas;

    private DrawnGlass(List<ColourArea> areas) {
        this.areas = areas;
    }

    /** By the first layer that looks like glass; without one nothing is known. */
    static DrawnGlass of(Artwork artwork) {
        Optional<ArtLayer> glass = artwork.layers().stream().filter(layer -> layer.hint() == LayerHint.GLASS).findFirst();
        return new DrawnGlass(glass.map(layer -> artwork.areas(LayerChoice.of(layer))).orElse(List.of()));
    }

    /** The colour drawn at a place of the page; the topmost counts. */
    GlassLook at(double xMm, double yMm) {
        for (int i = areas.size() - 1; i >= 0; i--) {
            if (areas.get(i).contains(xMm, yMm)) {
                return new GlassLook("", areas.get(i).rgb());
            }
        }
        return GlassLook.UNCHOSEN;
    }
}
