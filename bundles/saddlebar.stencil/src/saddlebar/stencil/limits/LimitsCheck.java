package saddlebar.stencil.limits;

import java.util.ArrayList;
import java.util.List;

import saddlebar.model.problem.PlaceMm;
import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Require;
import saddlebar.model.units.Units;

/**
 * Counts on screened bits, row by row, what mesh and paint may not hold: openings narrower than the finest opening, bridges narrower than the
 * finest bridge. Lengths are rounded up to whole px. No bit is changed. Outside the picture lies stencil, not paint. A bridge holds by its
 * sides: stencil that touches by a corner alone is no bridge and cannot be lost. About 2 x 3 x diameter rows of memory.
 *
 * <p>A paint neck between two wide openings is not counted unless it is longer than the diameter: the paint flows together there.
 */
public final class LimitsCheck {
    private static final double MOST_MM = 5;

    private final int widthPx;
    private final int heightPx;
    private final double dpi;
    private final int wordsPerRow;
    private final NarrowPlaces openings;
    private final NarrowPlaces bridges;
    private long paintPx;
    private int rows;

    /**
     * @param openMm   finest opening that prints, 0 (not asked) to 5 mm
     * @param bridgeMm finest bridge that holds, likewise
     */
    public LimitsCheck(int widthPx, int heightPx, double dpi, double openMm, double bridgeMm) {
        this.widthPx = Require.within("widthPx", widthPx, 1, 1 << 20);
        this.heightPx = Require.within("heightPx", heightPx, 1, 1 << 20);
        this.dpi = dpi;
        this.wordsPerRow = (widthPx + 63) >> 6;
        this.openings = new NarrowPlaces(widthPx, heightPx, disc("open-mm", openMm), false, false);
        this.bridges = new NarrowPlaces(widthPx, heightPx, disc("bridge-mm", bridgeMm), true, true);
    }

    private Disc disc(String option, double mm) {
        if (!(mm >= 0 && mm <= MOST_MM)) {
            throw new Refusal(option, Units.plain(mm) + " is out of range", "take 0 to " + Units.plain(MOST_MM) + " mm");
        }
        return Disc.ofDiameter(mm * dpi / Units.MM_PER_INCH);
    }

    /** Takes the next rows: 1 where paint prints. */
    public void add(long[] bits, int moreRows) {
        for (int row = 0; row < moreRows; row++) {
            int from = row * wordsPerRow;
            openings.add(bits, from, 0);
            bridges.add(bits, from, -1);
            for (int i = 0; i < wordsPerRow; i++) {
                paintPx += Long.bitCount(bits[from + i]);
            }
        }
        rows += moreRows;
    }

    /** Ends the picture. Called once, after its last row. */
    public LimitsFound finish() {
        if (rows != heightPx) {
            throw new IllegalStateException("limits were asked after " + rows + " of " + heightPx + " rows");
        }
        openings.finish();
        bridges.finish();
        return new LimitsFound((long) widthPx * heightPx, paintPx, openings.count(), bridges.count(), bridges.wholeParts(), mm(openings.places()),
                mm(bridges.places()));
    }

    private List<PlaceMm> mm(List<int[]> places) {
        List<PlaceMm> result = new ArrayList<>();
        for (int[] place : places) {
            result.add(new PlaceMm(Units.mmOfPx(place[0] + 0.5, dpi), Units.mmOfPx(place[1] + 0.5, dpi)));
        }
        return result;
    }
}
