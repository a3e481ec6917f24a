package saddlebar.ui.easel;

import saddlebar.production.light.RectMm;
import saddlebar.model.units.Require;
import saddlebar.model.units.Units;

/**
 * Which part of the scene a rectangle of the screen shows, and how large: {@code xPt = (xMm - leftMm) * ptPerMm}. A point (pt) here is the
 * toolkit's unit of length, one pixel of a screen at 100 %. Immutable: every move gives a new viewport.
 *
 * @param leftMm   x of the left edge of the view in mm
 * @param topMm    y of its top edge in mm
 * @param ptPerMm  points a mm, {@value #LEAST_PT_PER_MM} to {@value #MOST_PT_PER_MM}
 * @param widthPt  width of the view in points, at least 1
 * @param heightPt height of the view in points, at least 1
 */
public record Viewport(double leftMm, double topMm, double ptPerMm, int widthPt, int heightPt) {
    /** Ten metres of window fit on a small screen. */
    public static final double LEAST_PT_PER_MM = 0.05;
    /** The dot of a fine stencil, 1/1200 inch, is then some four points wide. */
    public static final double MOST_PT_PER_MM = 200;
    /** One notch of the wheel or one press of the plus key. */
    public static final double STEP = Math.pow(2, 0.25);
    /** So much of the scene stays in view however far one pans, in points. */
    static final int KEPT_IN_SIGHT_PT = 48;

    public Viewport {
        Require.finite("leftMm", leftMm);
        Require.finite("topMm", topMm);
        Require.within("ptPerMm", ptPerMm, LEAST_PT_PER_MM, MOST_PT_PER_MM);
        Require.within("widthPt", widthPt, 1, Integer.MAX_VALUE);
        Require.within("heightPt", heightPt, 1, Integer.MAX_VALUE);
    }

    /** The whole of {@code area} in the middle of a view of this size, as large as it goes with so much left free on each side. */
    public static Viewport fitting(RectMm area, int widthPt, int heightPt, int freePt) {
        double acrossPt = Math.max(1, widthPt - 2.0 * freePt);
        double downPt = Math.max(1, heightPt - 2.0 * freePt);
        double scale = withinLimits(Math.min(acrossPt / Math.max(area.widthMm(), 1e-6), downPt / Math.max(area.heightMm(), 1e-6)));
        return centred(area.centreXMm(), area.centreYMm(), scale, widthPt, heightPt);
    }

    /** Points a mm at which glass on the screen is as large as glass on the bench. */
    public static double trueSizePtPerMm(double screenDpi) {
        return Require.within("screenDpi", screenDpi, 20, 2000) / Units.MM_PER_INCH;
    }

    private static Viewport centred(double xMm, double yMm, double ptPerMm, int widthPt, int heightPt) {
        return new Viewport(xMm - widthPt / 2.0 / ptPerMm, yMm - heightPt / 2.0 / ptPerMm, ptPerMm, widthPt, heightPt);
    }

    private static double withinLimits(double ptPerMm) {
        return Math.max(LEAST_PT_PER_MM, Math.min(MOST_PT_PER_MM, ptPerMm));
    }

    public double xPt(double xMm) {
        return (xMm - leftMm) * ptPerMm;
    }

    public double yPt(double yMm) {
        return (yMm - topMm) * ptPerMm;
    }

    public double xMm(double xPt) {
        return leftMm + xPt / ptPerMm;
    }

    public double yMm(double yPt) {
        return topMm + yPt / ptPerMm;
    }

    public RectMm visible() {
        return new RectMm(leftMm, topMm, widthPt / ptPerMm, heightPt / ptPerMm);
    }

    /** Larger or smaller by a factor, while the place under the pointer stays under the pointer. */
    public Viewport zoomedAt(double xPt, double yPt, double factor) {
        return scaledAt(xPt, yPt, ptPerMm * factor);
    }

    /** At another scale, kept within the limits, while the place under the pointer stays under the pointer. */
    public Viewport scaledAt(double xPt, double yPt, double newPtPerMm) {
        double scale = withinLimits(newPtPerMm);
        return new Viewport(xMm(xPt) - xPt / scale, yMm(yPt) - yPt / scale, scale, widthPt, heightPt);
    }

    /** Another scale about the middle of the view. */
    public Viewport scaled(double newPtPerMm) {
        return scaledAt(widthPt / 2.0, heightPt / 2.0, newPtPerMm);
    }

    /** The scene moved by so many points with the hand that drags it: right and down are positive. */
    public Viewport draggedBy(double xPt, double yPt) {
        return new Viewport(leftMm - xPt / ptPerMm, topMm - yPt / ptPerMm, ptPerMm, widthPt, heightPt);
    }

    /** The same scale with a place in the middle. */
    public Viewport centredOn(double xMm, double yMm) {
        return centred(xMm, yMm, ptPerMm, widthPt, heightPt);
    }

    /** Moved no more than needed so that {@code area} is in view; an area too large for the view is put in its middle. */
    public Viewport showing(RectMm area, int freePt) {
        double free = freePt / ptPerMm;
        RectMm seen = visible();
        double left = shift(area.leftMm() - free, area.rightMm() + free, seen.leftMm(), seen.rightMm());
        double top = shift(area.topMm() - free, area.bottomMm() + free, seen.topMm(), seen.bottomMm());
        return new Viewport(leftMm + left, topMm + top, ptPerMm, widthPt, heightPt);
    }

    private static double shift(double from, double to, double seenFrom, double seenTo) {
        if (to - from > seenTo - seenFrom) {
            return (from + to) / 2 - (seenFrom + seenTo) / 2;
        }
        return from < seenFrom ? from - seenFrom : Math.max(0, to - seenTo);
    }

    /** A view of another size with the same place in the middle at the same scale. */
    public Viewport resized(int newWidthPt, int newHeightPt) {
        RectMm seen = visible();
        return centred(seen.centreXMm(), seen.centreYMm(), ptPerMm, newWidthPt, newHeightPt);
    }

    /** Moved back so that the scene cannot be lost out of sight. */
    public Viewport keeping(RectMm scene) {
        double keptMm = KEPT_IN_SIGHT_PT / ptPerMm;
        double left = between(leftMm, scene.leftMm() + keptMm - widthPt / ptPerMm, scene.rightMm() - keptMm);
        double top = between(topMm, scene.topMm() + keptMm - heightPt / ptPerMm, scene.bottomMm() - keptMm);
        return left == leftMm && top == topMm ? this : new Viewport(left, top, ptPerMm, widthPt, heightPt);
    }

    private static double between(double value, double least, double most) {
        return least > most ? (least + most) / 2 : Math.max(least, Math.min(most, value));
    }
}
