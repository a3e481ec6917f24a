package saddlebar.ui.easel;

/**
 * Names one square of a scene as painted once.
 *
 * @param edition counts up whenever the scene, what is shown of it or the screen's resolution changes
 * @param ptPerMm scale
 * @param column  squares to the right of the artwork's origin; may be negative
 * @param row     squares below it; may be negative
 */
public record TileKey(long edition, double ptPerMm, int column, int row) {
    /** Side of a square in points. */
    public static final int SIDE_PT = 256;

    /** Left edge in mm. */
    public double leftMm() {
        return column * (double) SIDE_PT / ptPerMm;
    }

    /** Upper edge in mm. */
    public double topMm() {
        return row * (double) SIDE_PT / ptPerMm;
    }
}
