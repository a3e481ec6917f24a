package saddlebar.ui.easel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Cuts the endless plane of one scale into squares. Squares lie on whole points, so the view is shown from the nearest whole point: at most half
 * a point beside where {@link Viewport} puts it.
 *
 * @param leftPt first point of the plane that is in view, counted from the artwork's origin
 * @param topPt  the same downwards
 */
public record TileGrid(long edition, double ptPerMm, long leftPt, long topPt, int widthPt, int heightPt) {

    public static TileGrid of(Viewport view, long edition) {
        return new TileGrid(edition, view.ptPerMm(), Math.round(view.leftMm() * view.ptPerMm()), Math.round(view.topMm() * view.ptPerMm()),
                view.widthPt(), view.heightPt());
    }

    /** The squares in view, those about the middle first: there the eye is. */
    public List<TileKey> inView() {
        List<TileKey> tiles = new ArrayList<>();
        for (int row = tileOf(topPt); row <= tileOf(topPt + heightPt - 1); row++) {
            for (int column = tileOf(leftPt); column <= tileOf(leftPt + widthPt - 1); column++) {
                tiles.add(new TileKey(edition, ptPerMm, column, row));
            }
        }
        tiles.sort(Comparator.comparingDouble(tile -> Math.hypot(xPt(tile) + TileKey.SIDE_PT / 2.0 - widthPt / 2.0,
                yPt(tile) + TileKey.SIDE_PT / 2.0 - heightPt / 2.0)));
        return tiles;
    }

    /** Where in the view a square's left edge lies, in points. */
    public int xPt(TileKey tile) {
        return (int) ((long) tile.column() * TileKey.SIDE_PT - leftPt);
    }

    /** Where in the view a square's upper edge lies, in points. */
    public int yPt(TileKey tile) {
        return (int) ((long) tile.row() * TileKey.SIDE_PT - topPt);
    }

    private static int tileOf(long pt) {
        return (int) Math.floorDiv(pt, (long) TileKey.SIDE_PT);
    }
}
