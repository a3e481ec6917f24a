package saddlebar.artwork;

import java.util.Objects;

import saddlebar.model.art.GrayCoding;
import saddlebar.model.units.Require;
import saddlebar.model.units.Units;

/**
 * A window of device pixels laid over the artwork's page.
 *
 * @param originXMm x of the left edge of the first pixel, mm of the page; may lie outside it
 * @param originYMm y of its upper edge
 * @param widthPx   1 to 200000
 * @param heightPx  1 to 10 million
 * @param dpi       pixels an inch, 1 to 100000
 * @param coding    what the gray bytes shall mean
 */
public record RasterRequest(double originXMm, double originYMm, int widthPx, int heightPx, double dpi, GrayCoding coding) {
    public RasterRequest {
        Require.within("originXMm", originXMm, -1e7, 1e7);
        Require.within("originYMm", originYMm, -1e7, 1e7);
        Require.within("widthPx", widthPx, 1, 200_000);
        Require.within("heightPx", heightPx, 1, 10_000_000);
        Require.within("dpi", dpi, 1, 100_000);
        Objects.requireNonNull(coding, "coding");
    }

    /** The whole page: px = round(mm * dpi / 25.4), at least 1. */
    public static RasterRequest ofPage(Artwork artwork, double dpi, GrayCoding coding) {
        return new RasterRequest(0, 0, Math.max(1, Units.pxOfMm(artwork.widthMm(), dpi)), Math.max(1, Units.pxOfMm(artwork.heightMm(), dpi)),
                dpi, coding);
    }
}
