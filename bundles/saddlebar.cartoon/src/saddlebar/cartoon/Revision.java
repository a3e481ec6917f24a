package saddlebar.cartoon;

import java.util.List;

import saddlebar.model.units.Require;

/**
 * What became of the pieces of the last revision.
 *
 * @param shiftXMm how far the drawing as a whole was moved on its page, to the right; 0 if it was not
 * @param shiftYMm the same, down
 * @param kept     numbers that stayed, ascending; those of {@code moved} too
 * @param became   pieces old and new that share a tenth of either or more, by old and new number
 * @param moved    numbers of pieces that keep their shape and lie elsewhere, ascending
 * @param gone     old numbers that no new piece keeps, ascending
 * @param fresh    new numbers, ascending
 */
public record Revision(double shiftXMm, double shiftYMm, List<Integer> kept, List<Became> became, List<Integer> moved, List<Integer> gone,
        List<Integer> fresh) {
    public Revision {
        Require.finite("shiftXMm", shiftXMm);
        Require.finite("shiftYMm", shiftYMm);
        kept = List.copyOf(kept);
        became = List.copyOf(became);
        moved = List.copyOf(moved);
        gone = List.copyOf(gone);
        fresh = List.copyOf(fresh);
    }

    /** Those of {@link #became} that are not simply the same piece again: what was divided, merged or moved over to a neighbour. */
    public List<Became> changes() {
        return became.stream().filter(one -> !one.keepsNumber() || became.stream().anyMatch(other -> other != one
                && (other.before() == one.before() || other.now() == one.now()))).toList();
    }
}
