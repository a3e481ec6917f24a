package saddlebar.ui.screening;

import java.util.Optional;

import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Stencil;
import saddlebar.model.commission.StencilPiece;

/** Where a place of a stencil lies on the panel's page. */
public final class StencilPlace {
    private StencilPlace() {
    }

    /**
     * The place on the page.
     *
     * @param xMm from the stencil's left edge, as it prints: not mirrored
     * @param yMm from its upper edge
     * @return empty if no piece lies there
     */
    public static Optional<PreviewAsk.PlaceMm> onPage(Stencil stencil, double xMm, double yMm) {
        return stencil.getPieces().stream().flatMap(entry -> within(entry, xMm, yMm).stream()).findFirst();
    }

    private static Optional<PreviewAsk.PlaceMm> within(StencilPiece entry, double xMm, double yMm) {
        Piece piece = entry.getPiece();
        if (piece == null || piece.getNet() == null || piece.getNet().isEmpty()) {
            return Optional.empty();
        }
        double turn = Math.toRadians(entry.getRotationDeg());
        double dx = xMm - entry.getXMm();
        double dy = yMm - entry.getYMm();
        double x = dx * Math.cos(turn) + dy * Math.sin(turn);
        double y = dy * Math.cos(turn) - dx * Math.sin(turn);
        double[] box = piece.getNet().boundsMm();
        return x >= box[0] && y >= box[1] && x <= box[2] && y <= box[3] ? Optional.of(new PreviewAsk.PlaceMm(x, y)) : Optional.empty();
    }
}
