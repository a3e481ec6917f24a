package saddlebar.production.plan;

import java.util.List;

import org.locationtech.jts.geom.Envelope;

/**
 * What one stencil prints.
 *
 * @param pieces pieces that lie in it where they lie in the cartoon, in reading order
 * @param alike  for each of {@code pieces} all pieces that it prints, itself first: more than one where pieces are identical
 * @param boxMm  the smallest box around all that is printed, in mm of the artwork's page
 */
public record PlannedStencil(List<PaintedPiece> pieces, List<List<PaintedPiece>> alike, Envelope boxMm) {
    public PlannedStencil {
        pieces = List.copyOf(pieces);
        alike = alike.stream().map(List::copyOf).toList();
        boxMm = new Envelope(boxMm);
        if (pieces.isEmpty() || pieces.size() != alike.size()) {
            throw new IllegalArgumentException("a stencil needs pieces, each with those it prints: " + pieces.size() + " and " + alike.size());
        }
    }

    /** Id of the layer in whose place the stencil lies. */
    public String layerId() {
        return pieces.get(0).layerId();
    }

    /** How often the stencil is printed: once for each piece alike. */
    public int prints() {
        return alike.stream().mapToInt(List::size).max().orElseThrow();
    }
}
