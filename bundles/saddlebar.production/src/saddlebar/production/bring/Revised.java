package saddlebar.production.bring;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import saddlebar.cartoon.Became;
import saddlebar.cartoon.Revision;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;

/**
 * What a revision made of the pieces, in numbers and ids.
 *
 * @param shiftXMm how far the drawing as a whole was moved to the right; the numbers went with it
 * @param shiftYMm the same, down
 * @param kept     how many pieces keep their number
 * @param became   pieces that were divided, merged, or gave a tenth or more to a neighbour
 * @param moved    numbers of pieces that lie elsewhere
 * @param gone     old numbers that are no more
 * @param fresh    new numbers
 */
public record Revised(double shiftXMm, double shiftYMm, int kept, List<Row> became, List<Integer> moved, List<Integer> gone, List<Integer> fresh) {
    public Revised {
        became = List.copyOf(became);
        moved = List.copyOf(moved);
        gone = List.copyOf(gone);
        fresh = List.copyOf(fresh);
    }

    /**
     * What an old piece and a new one share.
     *
     * @param takesOver whether the new piece, under another number, takes over the old one's records
     */
    public record Row(int before, int now, double shareOfBefore, double shareOfNow, boolean takesOver, String beforeId, String nowId) {
        Map<String, Object> setting() {
            Map<String, Object> all = new LinkedHashMap<>();
            all.put("before", before);
            all.put("now", now);
            all.put("beforeId", beforeId);
            all.put("nowId", nowId);
            all.put("shareOfBefore", shareOfBefore);
            all.put("shareOfNow", shareOfNow);
            all.put("takesOver", takesOver);
            return all;
        }
    }

    /** Called when the revision's pieces stand in the model. */
    static Revised of(Revision revision, Panel panel) {
        List<Row> rows = revision.changes().stream().map(one -> row(one, panel)).toList();
        return new Revised(revision.shiftXMm(), revision.shiftYMm(), revision.kept().size(), rows, revision.moved(), revision.gone(), revision.fresh());
    }

    private static Row row(Became one, Panel panel) {
        return new Row(one.before(), one.now(), one.shareOfBefore(), one.shareOfNow(), one.inherits(), id(panel, one.before()), id(panel, one.now()));
    }

    private static String id(Panel panel, int number) {
        return panel.getPieces().stream().filter(piece -> piece.getNumber() == number).map(Piece::getId).filter(Objects::nonNull).findFirst().orElse("");
    }

    /** Whether anything but numbers that stay is to be told. */
    public boolean changedAny() {
        return !became.isEmpty() || !moved.isEmpty() || !gone.isEmpty() || !fresh.isEmpty() || shiftXMm != 0 || shiftYMm != 0;
    }
}
