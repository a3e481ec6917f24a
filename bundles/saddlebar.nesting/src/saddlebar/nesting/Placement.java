package saddlebar.nesting;

import saddlebar.model.units.Require;

/**
 * Where one copy lies: its outline turned by {@code rotationDeg} about its own (0,0), then moved by {@code xMm}, {@code yMm}.
 *
 * @param id          the item's
 * @param copy        which of its copies, from 0
 * @param sheet       which sheet, from 0; 0 on a strip
 * @param xMm         to the right from the left of the sheet's usable area
 * @param yMm         down from its top
 * @param rotationDeg from x towards y, at least 0 and less than 360
 */
public record Placement(String id, int copy, int sheet, double xMm, double yMm, double rotationDeg) {
    public Placement {
        Require.text("id", id);
        Require.within("copy", copy, 0, NestItem.MOST - 1);
        Require.within("sheet", sheet, 0, Integer.MAX_VALUE);
        Require.finite("xMm", xMm);
        Require.finite("yMm", yMm);
        Require.within("rotationDeg", rotationDeg, 0, Math.nextDown(360.0));
    }
}
