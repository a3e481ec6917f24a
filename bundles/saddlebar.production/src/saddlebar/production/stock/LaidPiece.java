package saddlebar.production.stock;

import saddlebar.model.art.OutlineMm;
import saddlebar.model.units.Require;

/**
 * A piece where it lies on its sheet.
 *
 * @param outline     on the sheet
 * @param rotationDeg how far it is turned from upright, from x towards y
 */
public record LaidPiece(String label, OutlineMm outline, double rotationDeg) {
    public LaidPiece {
        Require.text("label", label);
        Require.within("rotationDeg", rotationDeg, 0, 360);
    }
}
