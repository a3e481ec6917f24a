package saddlebar.production.stock;

import java.util.List;

import saddlebar.model.units.Require;

/**
 * One sheet with the pieces that are cut from it.
 *
 * @param sheet   of the shelf, or one to be bought
 * @param toBuy   whether it is not at hand yet
 * @param pieces  in the order of their names
 * @param offcuts what is left to keep, the largest first
 */
public record LaidGlass(String glass, ShelfSheet sheet, boolean toBuy, List<LaidPiece> pieces, List<Offcut> offcuts) {
    /** A rectangle of the sheet that is worth keeping. */
    public record Offcut(double xMm, double yMm, double widthMm, double heightMm) {
        public Offcut {
            Require.within("widthMm", widthMm, 1, 10_000);
            Require.within("heightMm", heightMm, 1, 10_000);
        }

        public double areaMm2() {
            return widthMm * heightMm;
        }
    }

    public LaidGlass {
        Require.text("glass", glass);
        pieces = List.copyOf(pieces);
        offcuts = List.copyOf(offcuts);
    }

    public double piecesMm2() {
        return pieces.stream().mapToDouble(piece -> piece.outline().areaMm2()).sum();
    }

    /** Share of the sheet that becomes pieces. */
    public double use() {
        return piecesMm2() / sheet.areaMm2();
    }
}
