package saddlebar.stencil.sheet;

import saddlebar.model.units.Require;

/** A rectangle on a sheet in mm, x to the right and y down from the sheet's top left in the toner view. */
public record RectMm(double xMm, double yMm, double widthMm, double heightMm) {
    public RectMm {
        Require.finite("xMm", xMm);
        Require.finite("yMm", yMm);
        Require.within("widthMm", widthMm, 0, 1e6);
        Require.within("heightMm", heightMm, 0, 1e6);
    }

    public double rightMm() {
        return xMm + widthMm;
    }

    public double bottomMm() {
        return yMm + heightMm;
    }

    /** Whether both share more than an edge. */
    public boolean overlaps(RectMm other) {
        return xMm < other.rightMm() && other.xMm < rightMm() && yMm < other.bottomMm() && other.yMm < bottomMm();
    }

    public boolean contains(RectMm other) {
        return other.xMm >= xMm && other.yMm >= yMm && other.rightMm() <= rightMm() && other.bottomMm() <= bottomMm();
    }

    /** This rectangle with so much more on every side. */
    public RectMm grown(double byMm) {
        return new RectMm(xMm - byMm, yMm - byMm, widthMm + 2 * byMm, heightMm + 2 * byMm);
    }
}
