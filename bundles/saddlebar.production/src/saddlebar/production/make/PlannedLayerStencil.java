package saddlebar.production.make;

import java.util.List;
import java.util.Locale;

import saddlebar.model.units.Require;
import saddlebar.production.facts.LayerFacts;

/**
 * A stencil to be made.
 *
 * @param layer  the layer in whose place it lies
 * @param number from 1 within its layer
 * @param pieces pieces in it, in reading order
 * @param alike  for each of {@code pieces} the labels of all pieces that it prints, itself first
 * @param place  its px on the artwork's page
 */
public record PlannedLayerStencil(PaintedLayer layer, int number, List<CutPiece> pieces, List<List<String>> alike, RasterPlace place) {
    public PlannedLayerStencil {
        Require.within("number", number, 1, 100_000);
        pieces = List.copyOf(pieces);
        alike = alike.stream().map(List::copyOf).toList();
    }

    /** What people call it, such as {@code W01 trace 2}. */
    String label() {
        return layer.label() + " " + number;
    }

    /** A few letters for the sheet: the window, the layer's first letter, the number. */
    String shortLabel() {
        return layer.placed().label() + "-" + layer.layer().name().substring(0, 1).toUpperCase(Locale.ROOT) + number;
    }

    /** Path under {@code made/}, without its ending. */
    String file() {
        return "stencils/" + FileNames.of(label());
    }

    int prints() {
        return alike.stream().mapToInt(List::size).max().orElse(1);
    }

    LayerFacts facts() {
        return layer.layer();
    }
}
