package saddlebar.production.light;

import java.util.List;
import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * One piece of glass as it lies on the Easel.
 *
 * @param id            the piece's lasting id
 * @param number        what is written on it
 * @param contour       its shape, gap taken off
 * @param labelXMm      where its number stands
 * @param labelYMm      where its number stands
 * @param labelRadiusMm free room about that place
 * @param glass         its glass in each colourway, at least one
 */
public record ScenePiece(String id, String number, Contour contour, double labelXMm, double labelYMm, double labelRadiusMm, List<GlassLook> glass) {
    public ScenePiece {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(number, "number");
        Objects.requireNonNull(contour, "contour");
        Require.finite("labelXMm", labelXMm);
        Require.finite("labelYMm", labelYMm);
        Require.within("labelRadiusMm", labelRadiusMm, 0, Double.MAX_VALUE);
        glass = List.copyOf(glass);
        if (glass.isEmpty()) {
            throw new IllegalArgumentException("glass of piece " + number + " must name at least one colourway's glass");
        }
    }

    /** The glass in a colourway; the first colourway's where the piece knows no other. */
    public GlassLook glass(int colourway) {
        return glass.get(colourway < glass.size() ? colourway : 0);
    }
}
