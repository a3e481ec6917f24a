package saddlebar.production.make;

import org.locationtech.jts.geom.Envelope;

import saddlebar.model.units.Require;
import saddlebar.model.units.Units;

/**
 * A rectangle of device px on the artwork's page.
 *
 * @param leftPx   px from the page's left edge, may be negative
 * @param topPx    px from its top edge, may be negative
 * @param widthPx  at least 1
 * @param heightPx at least 1
 * @param dpi      px an inch
 */
public record RasterPlace(int leftPx, int topPx, int widthPx, int heightPx, double dpi) {
    public RasterPlace {
        Require.within("widthPx", widthPx, 1, 200_000);
        Require.within("heightPx", heightPx, 1, 10_000_000);
        Require.within("dpi", dpi, 1, 100_000);
    }

    /** The whole px that hold a box. */
    static RasterPlace around(Envelope boxMm, double dpi) {
        double pxPerMm = dpi / Units.MM_PER_INCH;
        int left = (int) Math.floor(boxMm.getMinX() * pxPerMm);
        int top = (int) Math.floor(boxMm.getMinY() * pxPerMm);
        int right = (int) Math.ceil(boxMm.getMaxX() * pxPerMm);
        int bottom = (int) Math.ceil(boxMm.getMaxY() * pxPerMm);
        return new RasterPlace(left, top, Math.max(1, right - left), Math.max(1, bottom - top), dpi);
    }

    double pxPerMm() {
        return dpi / Units.MM_PER_INCH;
    }

    public double originXMm() {
        return Units.mmOfPx(leftPx, dpi);
    }

    public double originYMm() {
        return Units.mmOfPx(topPx, dpi);
    }

    public double widthMm() {
        return Units.mmOfPx(widthPx, dpi);
    }

    public double heightMm() {
        return Units.mmOfPx(heightPx, dpi);
    }
}
