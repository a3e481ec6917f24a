package saddlebar.ui.easel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class TileGridTest {
    @Property
    void squaresCoverTheViewOnce(@ForAll @DoubleRange(min = -5000, max = 5000) double left,
            @ForAll @DoubleRange(min = 0.05, max = 200) double ptPerMm, @ForAll @IntRange(min = 1, max = 3000) int width) {
        TileGrid grid = TileGrid.of(new Viewport(left, 0, ptPerMm, width, 10), 1);
        List<Integer> lefts = grid.inView().stream().filter(tile -> tile.row() == 0).map(grid::xPt).sorted().toList();
        assertTrue(lefts.get(0) <= 0 && lefts.get(0) > -TileKey.SIDE_PT);
        for (int i = 1; i < lefts.size(); i++) {
            assertEquals(TileKey.SIDE_PT, lefts.get(i) - lefts.get(i - 1));
        }
        int end = lefts.get(lefts.size() - 1) + TileKey.SIDE_PT;
        assertTrue(end >= width && end < width + TileKey.SIDE_PT);
    }

    @Test
    void aSquareStandsWhereItsPlaceIs() {
        Viewport view = new Viewport(100, 50, 4, 800, 600);
        TileGrid grid = TileGrid.of(view, 1);
        for (TileKey tile : grid.inView()) {
            assertEquals(view.xPt(tile.leftMm()), grid.xPt(tile), 0.5);
            assertEquals(view.yPt(tile.topMm()), grid.yPt(tile), 0.5);
        }
    }

    @Test
    void theMiddleComesFirst() {
        List<TileKey> tiles = TileGrid.of(new Viewport(0, 0, 1, 1280, 1280), 1).inView();
        assertEquals(25, tiles.size());
        assertEquals(new TileKey(1, 1, 2, 2), tiles.get(0));
    }
}
