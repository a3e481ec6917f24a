package saddlebar.production.light;

import saddlebar.model.units.Require;

/** An upright rectangle in mm, x to the right and y down, as artwork pages are measured. */
public record RectMm(double leftMm, double topMm, double widthMm, double heightMm) {
    public RectMm {
        Require.finite("leftMm", leftMm);
        Require.finite("topMm", topMm);
        Require.within("widthMm", widthMm, 0, Double.MAX_VALUE);
        Require.within("heightMm", heightMm, 0, Double.MAX_VALUE);
    }

    public double rightMm() {
        return leftMm + widthMm;
    }

    public double bottomMm() {
        return topMm + heightMm;
    }

    public double centreXMm() {
        return leftMm + widthMm / 2;
    }

    public double centreYMm() {
        return topMm + heightMm / 2;
    }

    public boolean touches(RectMm other) {
        return leftMm <= other.rightMm() && other.leftMm <= rightMm() && topMm <= other.bottomMm() && other.topMm <= bottomMm();
    }

    public boolean holds(double xMm, double yMm) {
        return xMm >= leftMm && xMm <= rightMm() && yMm >= topMm && yMm <= bottomMm();
    }

    /** The same rectangle with so much more on every side. */
    public RectMm grownBy(double mm) {
        return new RectMm(leftMm - mm, topMm - mm, Math.max(0, widthMm + 2 * mm), Math.max(0, heightMm + 2 * mm));
    }

    /** The smallest rectangle that holds both. */
    public RectMm with(RectMm other) {
        double left = Math.min(leftMm, other.leftMm);
        double top = Math.min(topMm, other.topMm);
        return new RectMm(left, top, Math.max(rightMm(), other.rightMm()) - left, Math.max(bottomMm(), other.bottomMm()) - top);
    }
}
