package saddlebar.nesting;

import java.util.List;

/**
 * A layout that has passed {@link LayoutCheck}.
 *
 * @param placements one a copy, in the order of the items and their copies
 * @param sheets     how many sheets are used; 1 on a strip
 * @param lengthMm   on a strip its length along x; on sheets how far the last one is used along x
 * @param use        area of the items / (strip height * length), on sheets / area of all sheets used; 0 to 1
 * @param valid      always true for what a search returns
 * @param method     the way that found it, in a few words
 * @param areas      usable area of each sheet used; on a strip one area of its height and length
 */
public record Nested(List<Placement> placements, int sheets, double lengthMm, double use, boolean valid, String method,
        List<SheetArea> areas) {
    public Nested {
        placements = List.copyOf(placements);
        areas = List.copyOf(areas);
    }

    /** How many copies do not lie as drawn. */
    public long turned() {
        return placements.stream().filter(p -> p.rotationDeg() != 0).count();
    }
}
