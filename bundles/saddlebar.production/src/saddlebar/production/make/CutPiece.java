package saddlebar.production.make;

import java.util.Objects;

import org.locationtech.jts.geom.Polygon;

import saddlebar.model.units.Require;

/** A piece of glass to be painted: what people call it, its number, and its outline as cut. */
public record CutPiece(String label, int number, Polygon glass) {
    public CutPiece {
        Require.text("label", label);
        Require.within("number", number, 1, 1_000_000);
        Objects.requireNonNull(glass, "glass");
    }
}
