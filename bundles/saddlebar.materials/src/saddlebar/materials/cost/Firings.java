package saddlebar.materials.cost;

import java.util.SortedMap;
import java.util.TreeMap;

import saddlebar.materials.job.CostJob;
import saddlebar.materials.job.LayerJob;
import saddlebar.materials.job.PanelJob;
import saddlebar.materials.job.PieceJob;
import saddlebar.materials.job.WindowJob;

/** How often the kiln runs: layers of one firing order share a firing, and the shelf is filled to so much. */
record Firings(SortedMap<Integer, Double> areaM2ByOrder, double shelfM2) {
    /** Share of a shelf that pieces cover (studio setting, no source). */
    private static final double SHELF_FILL = 0.6;

    static Firings of(CostJob job) {
        SortedMap<Integer, Double> areas = new TreeMap<>();
        for (WindowJob window : job.windows()) {
            for (PanelJob panel : window.panels()) {
                double area = panel.pieces().stream().mapToDouble(PieceJob::netAreaMm2).sum() / 1e6 * window.alike();
                panel.layers().stream().map(LayerJob::firingOrder).distinct().forEach(order -> areas.merge(order, area, Double::sum));
            }
        }
        return new Firings(areas, job.studio().shelfM2());
    }

    int count() {
        if (shelfM2 <= 0) {
            return areaM2ByOrder.size();
        }
        return areaM2ByOrder.keySet().stream().mapToInt(this::count).sum();
    }

    /** Firings of one order. */
    int count(int order) {
        return shelfM2 <= 0 ? 1 : (int) Math.ceil(areaM2ByOrder.get(order) / (SHELF_FILL * shelfM2) - 1e-9);
    }
}
