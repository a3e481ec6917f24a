package saddlebar.nesting;

import java.util.List;

import org.locationtech.jts.geom.Polygon;

import saddlebar.model.units.Require;

/**
 * One given sheet, with places on it that must stay clear: flaws, and what a shaped off-cut lacks of its rectangle.
 *
 * @param area    its rectangle
 * @param blocked in mm of the sheet; only the outer ring of each counts
 * @param price   what taking it is held to cost, by area: 1 for a whole sheet, less for what should go first, 0.01 to 100
 */
public record StockArea(SheetArea area, List<Polygon> blocked, double price) {
    public StockArea {
        blocked = blocked.stream().map(polygon -> (Polygon) polygon.copy()).toList();
        Require.within("price", price, 0.01, 100);
    }
}
