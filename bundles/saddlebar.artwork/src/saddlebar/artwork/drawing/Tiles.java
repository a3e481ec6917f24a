package saddlebar.artwork.drawing;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;

/**
 * A drawing repeated side by side.
 *
 * @param content  what one tile shows, mm of the page, for the tile that stands at {@code tile}
 * @param tile     place and size of the first tile in tile units
 * @param tileToMm from tile units to mm of the page
 * @param overflow whether what reaches over a tile's edge is seen
 * @param opacity  0 to 1
 */
public record Tiles(Group content, Rectangle2D tile, AffineTransform tileToMm, boolean overflow, double opacity) implements Tint {
    /** Half covered gray would be a guess; a pattern has no colour of its own. */
    @Override
    public int meanArgb() {
        return 0x00808080;
    }
}
