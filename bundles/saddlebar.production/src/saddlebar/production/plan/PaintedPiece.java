package saddlebar.production.plan;

import java.util.Objects;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * A piece on which a layer has something to print.
 *
 * @param layerId    id of the layer it is printed for
 * @param label      what people call it, such as {@code W02/17}; no two pieces have the same
 * @param glass      the glass as cut, in mm of the artwork's page
 * @param boxMm      what must lie within a screen's image area to print the piece: its printed area with the bleed
 * @param paintPrint a coarse picture of what is printed on it, taken from the piece's own corner, so that equal pieces have equal pictures
 */
public record PaintedPiece(String layerId, String label, Polygon glass, Envelope boxMm, PaintPrint paintPrint) {
    public PaintedPiece {
        Objects.requireNonNull(layerId, "layerId");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(glass, "glass");
        Objects.requireNonNull(paintPrint, "paintPrint");
        boxMm = new Envelope(boxMm);
    }

    /** Whether one stencil can print both: the same outline and the same paint, shifted. */
    boolean prints(PaintedPiece other) {
        return SameOutline.shifted(glass, other.glass) && paintPrint.sameAs(other.paintPrint);
    }
}
