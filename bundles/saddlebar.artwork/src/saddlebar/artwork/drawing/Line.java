package saddlebar.artwork.drawing;

import java.awt.BasicStroke;
import java.util.Objects;

/**
 * How an outline is stroked.
 *
 * @param pen        width, caps, joins, mitre limit and dashes, in units of the shape
 * @param tint       what it is painted with
 * @param fixedWidth whether the width is in page units of {@code penMm} mm, whatever the shape's own scale
 * @param penMm      mm of the page per unit of the pen where the width is fixed; else without meaning
 */
public record Line(BasicStroke pen, Tint tint, boolean fixedWidth, double penMm) {
    public Line {
        Objects.requireNonNull(pen, "pen");
        Objects.requireNonNull(tint, "tint");
    }

    public static Line of(BasicStroke pen, Tint tint) {
        return new Line(pen, tint, false, 1);
    }
}
