package saddlebar.cartoon.mend;

import java.util.List;
import java.util.Objects;

import saddlebar.model.art.DrawnLine;

/**
 * What a mend makes of one drawn line.
 *
 * @param index  of the line in the cutline that the proposal was made for
 * @param before the line as drawn
 * @param after  what stands in its place; empty if it is taken out
 */
public record LineChange(int index, DrawnLine before, List<DrawnLine> after) {
    public LineChange {
        Objects.requireNonNull(before, "before");
        after = List.copyOf(after);
    }
}
