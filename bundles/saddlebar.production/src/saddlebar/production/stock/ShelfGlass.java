package saddlebar.production.stock;

import java.util.Comparator;
import java.util.List;

import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.StockSheet;
import saddlebar.model.units.Require;

/**
 * A kind of glass and what of it is at hand.
 *
 * @param grained       has a direction that pieces must keep
 * @param boughtWidthMm of a sheet as it is bought, 0 if unknown
 * @param sheets        not used up; off-cuts first, small before large
 */
public record ShelfGlass(String name, boolean grained, double boughtWidthMm, double boughtHeightMm, List<ShelfSheet> sheets) {
    public ShelfGlass {
        Require.text("name", name);
        sheets = sheets.stream().sorted(Comparator.comparing((ShelfSheet sheet) -> !sheet.offcut()).thenComparingDouble(ShelfSheet::areaMm2)
                .thenComparing(ShelfSheet::name)).toList();
    }

    public static ShelfGlass of(GlassStock glass) {
        return new ShelfGlass(glass.getName(), glass.isGrained(), glass.getSheetWidthMm(), glass.getSheetHeightMm(),
                glass.getSheets().stream().filter(sheet -> !sheet.isUsedUp()).map((StockSheet sheet) -> ShelfSheet.of(sheet)).toList());
    }
}
