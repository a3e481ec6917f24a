package saddlebar.ui.easel;

import saddlebar.production.light.ScenePiece;
import saddlebar.production.light.EaselScene;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** From piece to piece without a mouse: in the order of numbers, or to the nearest in a direction. */
public final class PieceWalk {
    /** Which way. */
    public enum Way {
        NEXT, PREVIOUS, LEFT, RIGHT, UP, DOWN
    }

    private final List<ScenePiece> pieces;

    public PieceWalk(EaselScene scene) {
        this.pieces = scene.pieces();
    }

    /** The piece one step on; the first, or last when going back, if none is chosen yet. Empty if there is no piece that way. */
    public Optional<ScenePiece> from(Optional<ScenePiece> chosen, Way way) {
        if (pieces.isEmpty()) {
            return Optional.empty();
        }
        int at = chosen.map(pieces::indexOf).orElse(-1);
        if (at < 0) {
            return Optional.of(pieces.get(way == Way.PREVIOUS ? pieces.size() - 1 : 0));
        }
        return switch (way) {
            case NEXT -> Optional.of(pieces.get((at + 1) % pieces.size()));
            case PREVIOUS -> Optional.of(pieces.get((at + pieces.size() - 1) % pieces.size()));
            default -> nearest(pieces.get(at), way);
        };
    }

    /** Nearest in a direction: distance along it, with what lies aside counted double, within 60 degrees of it. */
    private Optional<ScenePiece> nearest(ScenePiece from, Way way) {
        double dx = way == Way.LEFT ? -1 : way == Way.RIGHT ? 1 : 0;
        double dy = way == Way.UP ? -1 : way == Way.DOWN ? 1 : 0;
        return pieces.stream().filter(piece -> piece != from).filter(piece -> {
            double along = along(from, piece, dx, dy);
            return along > 0 && aside(from, piece, dx, dy) <= along * Math.sqrt(3);
        }).min(Comparator.comparingDouble(piece -> along(from, piece, dx, dy) + 2 * aside(from, piece, dx, dy)));
    }

    private static double along(ScenePiece from, ScenePiece to, double dx, double dy) {
        return (to.labelXMm() - from.labelXMm()) * dx + (to.labelYMm() - from.labelYMm()) * dy;
    }

    private static double aside(ScenePiece from, ScenePiece to, double dx, double dy) {
        return Math.abs((to.labelXMm() - from.labelXMm()) * dy) + Math.abs((to.labelYMm() - from.labelYMm()) * dx);
    }
}
