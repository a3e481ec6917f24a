package saddlebar.nesting;

import java.util.List;

/**
 * A layout on given sheets that has passed its checks.
 *
 * @param placements {@code sheet} is the number of the given sheet
 * @param leftOut    ids of the items that found no room
 * @param use        area of what is placed / area of the sheets that carry something, 0 if nothing is placed
 */
public record StockLaid(List<Placement> placements, List<String> leftOut, double use) {
    public StockLaid {
        placements = List.copyOf(placements);
        leftOut = List.copyOf(leftOut);
    }
}
