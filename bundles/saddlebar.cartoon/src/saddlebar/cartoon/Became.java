package saddlebar.cartoon;

import saddlebar.model.units.Require;

/**
 * What a piece of the last revision and a piece of the new one have in common.
 *
 * @param before        number then
 * @param now           number now
 * @param shareOfBefore share of the old piece's area that the new one covers, 0 to 1
 * @param shareOfNow    share of the new piece's area that the old one covered, 0 to 1
 */
public record Became(int before, int now, double shareOfBefore, double shareOfNow) {
    /** More than this of the old one lies in the new one, or of the new one in the old: the new piece takes over its records. */
    private static final double MAIN = 0.5;
    /** What rounding may take from a half: a piece cut in two equal parts is cut in two. */
    private static final double ROUNDING = 1e-6;

    public Became {
        Require.within("before", before, 1, 1_000_000);
        Require.within("now", now, 1, 1_000_000);
        Require.within("shareOfBefore", shareOfBefore, 0, 1);
        Require.within("shareOfNow", shareOfNow, 0, 1);
    }

    /** Whether it is the same piece, by its number. */
    public boolean keepsNumber() {
        return before == now;
    }

    /** Whether the new piece is another one that comes from the old: most of the old is in it, or it is most of it from the old. */
    public boolean inherits() {
        return !keepsNumber() && (shareOfBefore > MAIN + ROUNDING || shareOfNow > MAIN + ROUNDING);
    }
}
