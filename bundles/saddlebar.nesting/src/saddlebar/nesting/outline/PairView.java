package saddlebar.nesting.outline;

/** A {@link PairTable} for two shapes that lie to each other as the table's do, but turned by quarters together or with their parts exchanged. */
final class PairView {
    private final PairTable table;
    // from the place asked for to the table's: x' = xx x + xy y, y' = yx x + yy y; all 0, 1 or -1
    private final double xx;
    private final double xy;
    private final double yx;
    private final double yy;

    PairView(PairTable table) {
        this(table, 1, 0, 0, 1);
    }

    private PairView(PairTable table, double xx, double xy, double yx, double yy) {
        this.table = table;
        this.xx = xx;
        this.xy = xy;
        this.yx = yx;
        this.yy = yy;
    }

    /** For the place of the first relative to the second. */
    PairView exchanged() {
        return new PairView(table, -xx, -xy, -yx, -yy);
    }

    /** For both shapes turned by so many quarters from x towards y. */
    PairView turned(int quarters) {
        PairView view = this;
        for (int k = 0; k < quarters; k++) { // back by a quarter, then as before: (x, y) -> (y, -x)
            view = new PairView(table, -view.xy, view.xx, -view.yy, view.yx);
        }
        return view;
    }

    /** See {@link PairTable#overlaps}. */
    boolean overlaps(double x, double y) {
        return table.overlaps(xx * x + xy * y, yx * x + yy * y);
    }

    /** See {@link PairTable#depth}. */
    double depth(double x, double y) {
        return table.depth(xx * x + xy * y, yx * x + yy * y);
    }
}
