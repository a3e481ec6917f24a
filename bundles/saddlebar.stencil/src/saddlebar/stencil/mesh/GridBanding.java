package saddlebar.stencil.mesh;

import saddlebar.model.units.Require;
import saddlebar.model.units.Units;

/**
 * How cells come out where a ruling is forced on the device grid at 0 degrees cell by cell: with dpi/lpi = P/q in lowest terms, q cells share
 * P px and differ in width; the pattern repeats every P px and shows as bands. Exact cells, as {@code am} lays them, do not band so; a ruling
 * of dpi over a whole number never does.
 *
 * @param px    P, px after which the pattern repeats
 * @param cells q, cells in them; 1 if all are alike
 * @param dpi   device px an inch
 */
public record GridBanding(int px, int cells, double dpi) {
    /** Rulings are typed with few decimals: 42.857 means 1200/28. */
    private static final double NEAR = 5e-5;
    private static final int MOST_CELLS = 1000;

    public GridBanding {
        Require.within("px", px, 1, Integer.MAX_VALUE);
        Require.within("cells", cells, 1, MOST_CELLS);
    }

    /** The fraction of fewest cells that is as good as equal to dpi/lpi. */
    public static GridBanding of(double dpi, double lpi) {
        Require.within("dpi", dpi, 1, 1e5);
        Require.within("lpi", lpi, dpi / 1e5, dpi);
        double side = dpi / lpi;
        int cells = 1;
        while (cells < MOST_CELLS && Math.abs(Math.rint(cells * side) / (cells * side) - 1) > NEAR / cells) {
            cells++;
        }
        return new GridBanding((int) Math.rint(cells * side), cells, dpi);
    }

    /** Whether all cells are alike, so that nothing bands. */
    public boolean even() {
        return cells == 1;
    }

    /** Distance from band to band in mm; a cell's width if {@link #even}. */
    public double periodMm() {
        return Units.mmOfPx(px, dpi);
    }
}
