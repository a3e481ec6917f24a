package saddlebar.materials.cost;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import saddlebar.materials.job.CostJob;
import saddlebar.materials.job.PanelJob;
import saddlebar.materials.job.PieceJob;
import saddlebar.materials.job.SheetJob;
import saddlebar.materials.job.WindowJob;
import saddlebar.materials.metal.FoilNeed;
import saddlebar.materials.money.Prices;

/** What must be bought for a commission: what it needs, less what is on hand, in the pieces in which it is sold. */
public record ShoppingList(List<Row> rows) {
    private static final double USUAL_YIELD = 0.6;

    /**
     * One thing.
     *
     * @param kind   glass, paint, foil, came, bar, solder, sheet
     * @param need   in {@code unit}
     * @param onHand in {@code unit}; 0 where the studio does not count it
     * @param buy    what is missing, in {@code unit}
     * @param packs  in words, such as {@code 2 rolls}; empty where it is sold by measure
     */
    public record Row(String kind, String what, double need, String unit, double onHand, double buy, String packs) {
    }

    public static ShoppingList of(CostJob job, Prices prices, PaintList paints, PanelList panels) {
        List<Row> rows = new ArrayList<>();
        glass(job, prices, rows);
        for (PaintList.Row row : paints.rows()) {
            rows.add(new Row("paint", row.paint().name() + (row.paint().flags().gold() ? " (holds gold)" : ""), row.need().powderG(), "g",
                    row.paint().stock().onHandG(), row.buyG(), ""));
        }
        panels.foilMetresByWidth().forEach((name, metres) -> {
            double roll = job.windows().stream().flatMap(window -> window.panels().stream()).map(PanelJob::joints).filter(metal -> metal.name().equals(name))
                    .findFirst().flatMap(PanelJob.Metal::soldLengthMm).orElse(FoilNeed.ROLL_M * 1000) / 1000;
            rows.add(new Row("foil", name, metres, "m", 0, metres, packs((int) Math.ceil(metres / roll - 1e-9), "roll")));
        });
        for (PanelList.Cuts cuts : panels.cuts()) {
            double metres = cuts.plan().stocks() * cuts.plan().stockHmm() / 1e5;
            boolean bar = cuts.stock().equals(job.studio().bar().name());
            rows.add(new Row(bar ? "bar" : "came", cuts.stock(), metres, "m", 0, metres, packs(cuts.plan().stocks(), "length")));
        }
        Map<String, Double> solder = new TreeMap<>();
        for (WindowJob window : job.windows()) {
            window.panels().stream().filter(panel -> !panel.pieces().isEmpty())
                    .forEach(panel -> solder.merge(panel.solder().name(), panel.solderG() * window.alike(), Double::sum));
        }
        solder.forEach((name, grams) -> rows.add(new Row("solder", name, grams, "g", 0, grams, "")));
        for (SheetJob sheet : job.sheets()) {
            rows.add(new Row("sheet", sheet.material() + " " + sheet.paper(), sheet.sheets(), "sheet", 0, sheet.sheets(), ""));
        }
        return new ShoppingList(List.copyOf(rows));
    }

    private static void glass(CostJob job, Prices prices, List<Row> rows) {
        double usual = prices.number("yield-glass", BigDecimal.valueOf(USUAL_YIELD), "0.05", "1").doubleValue();
        Map<String, Double> needs = new TreeMap<>();
        for (WindowJob window : job.windows()) {
            for (PanelJob panel : window.panels()) {
                for (PieceJob piece : panel.pieces()) {
                    if (!piece.glass().isEmpty()) {
                        needs.merge(piece.glass(), piece.netAreaMm2() / 1e6 * window.alike(), Double::sum);
                    }
                }
            }
        }
        needs.forEach((glass, netM2) -> {
            double need = netM2 / job.hints().glassYield().getOrDefault(glass, usual);
            double onHand = job.site().glassOnM2().getOrDefault(glass, 0.0);
            rows.add(new Row("glass", glass, need, "m2", onHand, Math.max(0, need - onHand), ""));
        });
    }

    private static String packs(int count, String word) {
        return count + " " + word + (count == 1 ? "" : "s");
    }
}
