package saddlebar.stencil.sheet;

import java.util.Objects;

import saddlebar.model.units.Require;
import saddlebar.model.units.Units;
import saddlebar.stencil.process.Face;

/**
 * A stencil on a sheet, in the toner view.
 *
 * @param id           the stencil's identifier, for messages
 * @param label        number shown beside it, a few letters
 * @param xMm          left side of its place, as turned
 * @param yMm          upper side of its place, as turned
 * @param quarterTurns 0 to 3 quarter turns of x towards y (clockwise as seen); one that is turned is held whole in memory at 1 bit while its
 *                     rows pass
 * @param widthPx      of the bits, before the turn
 * @param heightPx     of the bits, before the turn
 * @param face         face of the glass that it paints
 * @param mirrored     whether left and right of the bits are exchanged already; the mark beside the stencil shows it
 * @param bits         1 = toner, processed
 */
public record PlacedStencil(String id, String label, double xMm, double yMm, int quarterTurns, int widthPx, int heightPx, Face face, boolean mirrored,
        BitSource bits) {
    public PlacedStencil {
        Require.text("id", id);
        Require.text("label", label);
        Require.finite("xMm", xMm);
        Require.finite("yMm", yMm);
        Require.within("quarterTurns", quarterTurns, 0, 3);
        Require.within("widthPx", widthPx, 1, 1 << 20);
        Require.within("heightPx", heightPx, 1, 1 << 20);
        Objects.requireNonNull(face, "face");
        Objects.requireNonNull(bits, "bits");
    }

    public int placedWidthPx() {
        return quarterTurns % 2 == 0 ? widthPx : heightPx;
    }

    public int placedHeightPx() {
        return quarterTurns % 2 == 0 ? heightPx : widthPx;
    }

    /** Its place on the sheet. */
    public RectMm placeMm(double dpi) {
        return new RectMm(xMm, yMm, Units.mmOfPx(placedWidthPx(), dpi), Units.mmOfPx(placedHeightPx(), dpi));
    }
}
