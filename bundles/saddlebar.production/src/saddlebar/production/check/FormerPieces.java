package saddlebar.production.check;

import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;

/** Follows pieces through the revisions of their drawing: a record names the piece that was, and what lies on the bench may be what became of it. */
public final class FormerPieces {
    private FormerPieces() {
    }

    /** All pieces that it came from, the nearest first; not itself. */
    public static List<Piece> of(Piece piece) {
        return walked(piece, true);
    }

    /** All pieces that came from it, the nearest first; not itself. */
    public static List<Piece> heirsOf(Piece piece) {
        return walked(piece, false);
    }

    private static List<Piece> walked(Piece from, boolean back) {
        Set<Piece> seen = new LinkedHashSet<>();
        Deque<Piece> open = new ArrayDeque<>(List.of(from));
        while (!open.isEmpty()) {
            Piece piece = open.poll();
            for (Piece next : back ? piece.getCameFrom() : piece.getBecame()) {
                if (next != from && seen.add(next)) {
                    open.add(next);
                }
            }
        }
        return List.copyOf(seen);
    }

    /** Numbers of the pieces of today that hold what a record calls by this number: itself if it is still there, and its heirs; ascending. */
    public static List<Integer> numbersNow(Window window, int number) {
        Set<Piece> now = new LinkedHashSet<>();
        window.getPanels().forEach(panel -> panel.getPieces().stream().filter(piece -> piece.getNumber() == number).forEach(piece -> {
            now.add(piece);
            now.addAll(heirsOf(piece));
        }));
        return now.stream().filter(piece -> !piece.isRetired()).map(Piece::getNumber).distinct().sorted(Comparator.naturalOrder()).toList();
    }
}
