package saddlebar.materials.cost;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import saddlebar.materials.job.CostJob;
import saddlebar.materials.job.PanelJob;
import saddlebar.materials.job.WindowJob;
import saddlebar.materials.metal.CutOrder;
import saddlebar.materials.metal.CuttingPlan;
import saddlebar.materials.metal.CuttingStock;
import saddlebar.materials.metal.FoilNeed;
import saddlebar.materials.metal.LiftingLimit;
import saddlebar.materials.metal.PanelWeight;
import saddlebar.materials.metal.Reinforcement;
import saddlebar.model.work.Work;

/**
 * What each panel weighs and how it is handled and held, and how metal is cut for all.
 *
 * @param foilMetresByWidth by the name of the foil, waste included
 */
public record PanelList(List<Row> rows, Map<String, Double> foilMetresByWidth, List<Cuts> cuts) {
    /** Length in which came and bar are taken to be sold where their table does not say, and what a cut takes (studio settings, no source). */
    private static final double STOCK_MM = 2000;
    private static final double KERF_MM = 2;

    /** @param liftingIndex of one panel lifted by one person */
    public record Row(String panel, int alike, PanelWeight weight, double liftingIndex, String handling, Reinforcement bars) {
    }

    /** Stock lengths of one came or bar. */
    public record Cuts(String stock, CuttingPlan plan) {
    }

    public static PanelList of(CostJob job, Work work) {
        List<Row> rows = new ArrayList<>();
        Map<String, Double> foil = new LinkedHashMap<>();
        Map<String, List<CutOrder>> orders = new LinkedHashMap<>();
        Map<String, Double> stocks = new LinkedHashMap<>();
        for (WindowJob window : job.windows()) {
            for (PanelJob panel : window.panels()) {
                if (panel.pieces().isEmpty()) {
                    continue;
                }
                Reinforcement bars = Reinforcement.of(panel.widthMm(), panel.heightMm(), window.barRule());
                double mass = panel.weight().totalKg();
                rows.add(new Row(panel.name(), window.alike(), panel.weight(), LiftingLimit.PANEL.index(mass), LiftingLimit.PANEL.handling(mass), bars));
                double barStock = job.studio().bar().soldLengthMm().orElse(STOCK_MM);
                double cameStock = panel.joints().soldLengthMm().orElse(STOCK_MM);
                bars.heightsMm().forEach(height -> order(orders, stocks, job.studio().bar().name(), barStock, bars.barMm(), window.alike()));
                if (panel.leaded()) {
                    panel.jointsMm().forEach(joint -> order(orders, stocks, panel.joints().name(), cameStock, joint, window.alike()));
                    panel.frameMm().forEach(side -> order(orders, stocks, panel.joints().name(), cameStock, side, window.alike()));
                } else {
                    foil.merge(panel.joints().name(), FoilNeed.of(panel.perimetersMm()).totalM() * window.alike(), Double::sum);
                }
            }
        }
        List<Cuts> cuts = new ArrayList<>();
        orders.forEach((stock, pieces) -> cuts.add(new Cuts(stock, new CuttingStock(stocks.get(stock), KERF_MM, work).plan(pieces))));
        return new PanelList(rows, foil, cuts);
    }

    /** Longer than a stock length is joined at a crossing: whole lengths and a rest. */
    private static void order(Map<String, List<CutOrder>> orders, Map<String, Double> stocks, String stock, double stockMm, double lengthMm, int count) {
        stocks.putIfAbsent(stock, stockMm);
        List<CutOrder> list = orders.computeIfAbsent(stock, name -> new ArrayList<>());
        int whole = (int) Math.floor(lengthMm / stockMm);
        if (whole > 0) {
            list.add(CutOrder.ofMm(stockMm, whole * count));
        }
        if (lengthMm - whole * stockMm > 0.01) {
            list.add(CutOrder.ofMm(lengthMm - whole * stockMm, count));
        }
    }
}
