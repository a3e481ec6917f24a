package saddlebar.cartoon;

import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * A join that holds in a part of the panel, in place of the panel's own: along some of the drawn lines, or between pieces.
 *
 * @param join     what lies there
 * @param fromLine index of the first line of the cutline that is joined so
 * @param toLine   index after the last one; equal to {@code fromLine} where pieces are named
 * @param first    number of a piece, 0 where lines are named
 * @param second   number of its neighbour; 0 for all joints of {@code first}
 */
public record LocalJoin(Join join, int fromLine, int toLine, int first, int second) {
    public LocalJoin {
        Objects.requireNonNull(join, "join");
        Require.within("fromLine", fromLine, 0, Integer.MAX_VALUE);
        Require.within("toLine", toLine, fromLine, Integer.MAX_VALUE);
        Require.within("first", first, 0, 1_000_000);
        Require.within("second", second, 0, 1_000_000);
    }

    public static LocalJoin alongLines(Join join, int fromLine, int toLine) {
        return new LocalJoin(join, fromLine, toLine, 0, 0);
    }

    /** @param second 0 for all joints of {@code first} */
    public static LocalJoin ofPieces(Join join, int first, int second) {
        return new LocalJoin(join, 0, 0, (int) Require.within("first", first, 1, 1_000_000), second);
    }

    boolean namesPieces() {
        return first > 0;
    }

    boolean joins(int one, int other) {
        return one == first && (second == 0 || other == second) || other == first && (second == 0 || one == second);
    }

    boolean isOfLine(int line) {
        return line >= fromLine && line < toLine;
    }
}
