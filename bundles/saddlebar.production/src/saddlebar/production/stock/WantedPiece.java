package saddlebar.production.stock;

import java.util.Objects;

import saddlebar.model.art.OutlineMm;
import saddlebar.model.units.Require;

/** A piece to be cut, such as {@code W01/12}; its outline is the glass as cut, upright as in the window. */
public record WantedPiece(String label, String glass, OutlineMm outline) {
    public WantedPiece {
        Require.text("label", label);
        Require.text("glass", glass);
        Objects.requireNonNull(outline, "outline");
    }
}
