package saddlebar.ui.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.StockSheet;
import saddlebar.model.commission.Studio;
import saddlebar.production.stock.LaidGlass;

/** What the part shows, without widgets: sheets at hand, and sheets with pieces laid on them. */
final class StockShelf {
    private StockShelf() {
    }

    /** A row: a sheet at hand, one that pieces are laid on, or one to buy. */
    record Row(String glass, String name, double widthMm, double heightMm, boolean offcut, int flaws, Optional<StockSheet> sheet, Optional<LaidGlass> laid) {
        int pieces() {
            return laid.map(found -> found.pieces().size()).orElse(0);
        }
    }

    static List<Row> rows(Studio studio, List<LaidGlass> laid) {
        List<Row> rows = new ArrayList<>();
        for (GlassStock glass : studio.getGlass()) {
            for (StockSheet sheet : glass.getSheets()) {
                if (!sheet.isUsedUp()) {
                    rows.add(new Row(glass.getName(), sheet.getName(), sheet.getWidthMm(), sheet.getHeightMm(), sheet.isOffcut(), sheet.getFlaws().size(),
                            Optional.of(sheet),
                            laid.stream().filter(found -> !found.toBuy() && found.sheet().name().equals(sheet.getName())).findFirst()));
                }
            }
        }
        laid.stream().filter(LaidGlass::toBuy)
                .forEach(found -> rows.add(new Row(found.glass(), found.sheet().name(), found.sheet().widthMm(), found.sheet().heightMm(), false, 0,
                        Optional.empty(), Optional.of(found))));
        rows.sort(Comparator.comparing(Row::glass).thenComparing(row -> row.sheet().isEmpty()).thenComparing(Row::name));
        return rows;
    }
}
