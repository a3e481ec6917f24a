package saddlebar.production.pieces;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.locationtech.jts.geom.Polygon;

import saddlebar.cartoon.Numbering;
import saddlebar.cartoon.PieceOrder;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.problem.PlaceMm;
import saddlebar.model.problem.Refusal;
import saddlebar.production.facts.PieceFacts;
import saddlebar.production.make.Outlines;

/**
 * Numbers given anew. A locked piece, one that a person numbered, and one that records name keep theirs, and the others go round them; a number that a
 * piece had which is gone is not used again.
 *
 * @param changed pieces that get another number, with that number, in the order of numbering
 * @param kept    pieces that would have been numbered too, with the reason why they keep theirs, by number
 */
public record PieceNumbering(Map<Piece, Integer> changed, Map<Piece, Reason> kept) {
    /** Why a piece keeps its number. */
    public enum Reason {
        LOCKED("is locked"), BY_HAND("was numbered by hand"), RECORDED("is named in records");

        private final String words;

        Reason(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * @param panels   of one window, in their order
     * @param through  whether numbers run through all panels; else each begins with 1
     * @param recorded ids of pieces that records name
     */
    public static PieceNumbering plan(List<Panel> panels, NumberOrder order, boolean through, Set<String> recorded) {
        Map<Piece, Integer> changed = new LinkedHashMap<>();
        Map<Piece, Reason> kept = new LinkedHashMap<>();
        int next = 1;
        for (Panel panel : panels) {
            next = through ? next : 1;
            List<Piece> pieces = panel.getPieces().stream().filter(piece -> !piece.isRetired() && piece.getFace() != null).toList();
            Set<Integer> taken = new HashSet<>();
            (through ? panels : List.of(panel)).forEach(one -> one.getPieces().stream().filter(piece -> piece.isRetired() || reason(piece, recorded) != null)
                    .forEach(piece -> taken.add(piece.getNumber())));
            for (Piece piece : inOrder(pieces, order)) {
                Reason reason = reason(piece, recorded);
                if (reason != null) {
                    kept.put(piece, reason);
                    continue;
                }
                while (taken.contains(next)) {
                    next++;
                }
                if (piece.getNumber() != next) {
                    changed.put(piece, next);
                }
                next++;
            }
        }
        return new PieceNumbering(changed, kept);
    }

    private static Reason reason(Piece piece, Set<String> recorded) {
        if (piece.isLocked()) {
            return Reason.LOCKED;
        }
        return piece.isNumberedByHand() ? Reason.BY_HAND : isIn(recorded, piece) ? Reason.RECORDED : null;
    }

    /** A piece without an id was never saved, so no record names it. */
    private static boolean isIn(Set<String> recorded, Piece piece) {
        return piece.getId() != null && recorded.contains(piece.getId());
    }

    private static List<Piece> inOrder(List<Piece> pieces, NumberOrder order) {
        List<Polygon> faces = pieces.stream().map(piece -> Outlines.polygon(piece.getFace())).toList();
        List<PlaceMm> labels = pieces.stream().map(piece -> new PlaceMm(piece.getLabelXMm(), piece.getLabelYMm())).toList();
        Numbering numbering = switch (order) {
            case READING, GLASS -> Numbering.READING_ORDER;
            case COLUMNS -> Numbering.COLUMN_ORDER;
            case SIZE -> Numbering.LARGEST_FIRST;
        };
        if (pieces.isEmpty()) {
            return List.of();
        }
        List<Piece> sorted = new ArrayList<>(Arrays.stream(PieceOrder.of(numbering, faces, labels)).mapToObj(pieces::get).toList());
        if (order == NumberOrder.GLASS) { // a stable sort: within a glass as one reads; what has no glass comes last
            sorted.sort(Comparator.comparing((Piece piece) -> PieceFacts.glassOf(piece).isEmpty())
                    .thenComparing(piece -> PieceFacts.glassOf(piece).map(GlassStock::getName).orElse("")));
        }
        return sorted;
    }

    /** Gives the numbers. */
    public void enter() {
        changed.forEach(Piece::setNumber);
    }

    /**
     * Gives one piece a number by hand; it keeps it when pieces are numbered anew.
     *
     * @param recorded ids of pieces that records name
     * @throws Refusal if the number is taken, was that of a piece that is gone, or the piece is locked or named in records
     */
    public static void byHand(Piece piece, int number, Set<String> recorded) {
        if (piece.getNumber() == number) {
            piece.setNumberedByHand(true);
            return;
        }
        refuseByHand(piece, number, recorded);
        piece.setNumber(number);
        piece.setNumberedByHand(true);
    }

    private static void refuseByHand(Piece piece, int number, Set<String> recorded) {
        String where = "piece " + piece.getNumber();
        if (number < 1 || number > 999_999) {
            throw new Refusal(where, "its number must be from 1 to 999999, not " + number, "give another one");
        }
        if (piece.isLocked()) {
            throw new Refusal(where, "it is locked", "unlock it first");
        }
        if (isIn(recorded, piece)) {
            throw new Refusal(where, "records name it by this number", "leave it; give other pieces other numbers");
        }
        for (Piece other : piece.getPanel().getPieces()) {
            if (other != piece && other.getNumber() == number) {
                throw other.isRetired()
                        ? new Refusal(where, number + " was the number of a piece that is no more, and records or cards may name it", "take another one")
                        : new Refusal(where, number + " is the number of another piece", "give that one another number first, or take a free one");
            }
        }
    }
}
