package saddlebar.materials.cost;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

import org.osgi.service.component.annotations.Component;

import saddlebar.materials.job.CostJob;
import saddlebar.materials.job.LayerJob;
import saddlebar.materials.job.PanelJob;
import saddlebar.materials.job.WindowJob;
import saddlebar.materials.money.Learning;
import saddlebar.materials.money.Prices;
import saddlebar.materials.paint.PaintRules;

/**
 * Work by tasks. Minutes come from the book where it has {@code minutes-cut} and so on, else from studio settings without a source; windows alike go faster
 * by the learning rate (0.9, or {@code learning-rate} of the book). Screens are made once, however many windows are alike.
 */
@Component(service = CostSource.class)
public final class LabourCost implements CostSource {
    private static final Spread SPREAD = new Spread(0.8, 1.5);
    private static final int MINUTES_AN_HOUR = 60;
    private static final double PIECES_A_SHELF = 30;

    @Override
    public String key() {
        return "labour";
    }

    @Override
    public int order() {
        return 70;
    }

    @Override
    public List<ReckonedLine> reckon(CostJob job, Prices prices, List<ReckonedLine> before) {
        BigDecimal hour = prices.need("labour", "hour");
        Learning learning = new Learning(prices.number("learning-rate", BigDecimal.valueOf(Learning.CRAFT.rate()), "0.5", "1").doubleValue());
        List<ReckonedLine> lines = new ArrayList<>();
        for (WindowJob window : job.windows()) {
            double alike = learning.sum(window.alike());
            int pieces = window.panels().stream().mapToInt(panel -> panel.pieces().size()).sum();
            double foiled = metres(window, false);
            double leaded = metres(window, true);
            List<LayerJob> layers = window.panels().stream().flatMap(panel -> panel.layers().stream()).toList();
            int foiledPieces = window.panels().stream().filter(panel -> !panel.leaded()).mapToInt(panel -> panel.pieces().size()).sum();
            add(lines, prices, hour, window, "cut glass", pieces * minutes(prices, "cut", 6) * alike);
            add(lines, prices, hour, window, "foil", foiledPieces * minutes(prices, "foil", 4) * alike);
            add(lines, prices, hour, window, "solder", foiled * minutes(prices, "solder", 30) * alike);
            add(lines, prices, hour, window, "lead up and cement", leaded * minutes(prices, "lead", 40) * alike);
            add(lines, prices, hour, window, "fuse and reclaim screens",
                    layers.stream().mapToInt(LayerJob::screens).sum() * (minutes(prices, "fuse", 25) + minutes(prices, "reclaim", 6)));
            add(lines, prices, hour, window, "print", layers.stream().mapToInt(LayerJob::pulls).sum() * minutes(prices, "pull", 2) * alike);
            add(lines, prices, hour, window, "paint by hand",
                    window.panels().stream().mapToDouble(LabourCost::handPaintedM2).sum() * minutes(prices, "hand-m2", 600) * alike);
            long firings = layers.stream().map(LayerJob::firingOrder).distinct().count();
            add(lines, prices, hour, window, "load and unload the kiln",
                    firings * Math.ceil(pieces / PIECES_A_SHELF) * minutes(prices, "shelf", 40) * alike);
        }
        int bowls = PaintList.of(job, PaintRules.USUAL).rows().stream().mapToInt(row -> row.need().batches()).sum();
        if (bowls > 0) {
            lines.add(line(prices, hour, "", "mix paint", bowls * minutes(prices, "mix", 15)));
        }
        return lines;
    }

    private static double metres(WindowJob window, boolean leaded) {
        return window.panels().stream().filter(panel -> panel.leaded() == leaded).mapToDouble(panel -> (panel.innerMm() + panel.edgeMm()) / 1000).sum();
    }

    private static double handPaintedM2(PanelJob panel) {
        return panel.layers().stream().filter(LayerJob::byHand).flatMap(layer -> layer.prints().stream()).mapToDouble(print -> print.areaM2()).sum();
    }

    private static double minutes(Prices prices, String task, double usual) {
        return prices.number("minutes-" + task).map(BigDecimal::doubleValue).orElse(usual);
    }

    private void add(List<ReckonedLine> lines, Prices prices, BigDecimal hour, WindowJob window, String what, double minutes) {
        if (minutes > 0) {
            lines.add(line(prices, hour, window.name(), what, minutes));
        }
    }

    private ReckonedLine line(Prices prices, BigDecimal hour, String window, String what, double minutes) {
        return ReckonedLine.of(key(), what, window, minutes / MINUTES_AN_HOUR, "hour", hour, prices.rounding(), SPREAD);
    }
}
