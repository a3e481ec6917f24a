package saddlebar.materials.cost;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import saddlebar.materials.job.CostJob;
import saddlebar.materials.job.LayerJob;
import saddlebar.materials.job.PaintJob;
import saddlebar.materials.job.PanelJob;
import saddlebar.materials.job.WindowJob;
import saddlebar.materials.paint.PaintNeed;
import saddlebar.materials.paint.PaintRules;
import saddlebar.materials.paint.PowderStock;
import saddlebar.materials.paint.PrintedArea;

/** What each paint of a commission needs, what is on the shelf, and what to buy. */
public record PaintList(List<Row> rows) {
    /** @param plan bowls by lots, and what must be bought */
    public record Row(PaintJob paint, PaintNeed need, PowderStock.Plan plan) {
        /** Buying is rounded up to whole steps of 10 g. */
        public double buyG() {
            return Math.ceil(plan.buyG() / 10 - 1e-9) * 10;
        }
    }

    public static PaintList of(CostJob job, PaintRules rules) {
        Map<String, List<PrintedArea>> prints = new TreeMap<>();
        for (WindowJob window : job.windows()) {
            for (PanelJob panel : window.panels()) {
                for (LayerJob layer : panel.layers()) {
                    layer.prints().forEach(print -> prints.computeIfAbsent(layer.paintId(), paint -> new ArrayList<>())
                            .add(new PrintedArea(print.areaM2(), print.coverage(), print.prints() * window.alike(), print.meshVolumeCm3PerM2())));
                }
            }
        }
        List<Row> rows = new ArrayList<>();
        for (PaintJob paint : job.studio().paints()) {
            PaintNeed need = PaintNeed.of(prints.getOrDefault(paint.id(), List.of()), paint.mixture(), rules);
            if (need.batches() > 0) {
                rows.add(new Row(paint, need, paint.stock().plan(need.batches(), need.powderG() / need.batches())));
            }
        }
        return new PaintList(rows);
    }
}
