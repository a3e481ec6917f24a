package saddlebar.materials.cost;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

import org.osgi.service.component.annotations.Component;

import saddlebar.materials.job.CostJob;
import saddlebar.materials.job.PanelJob;
import saddlebar.materials.job.PieceJob;
import saddlebar.materials.job.WindowJob;
import saddlebar.materials.money.Prices;
import saddlebar.model.problem.Refusal;

/** Glass by the area of its pieces over the yield of its sheets: as laid out, where that is given in; else 0.6 where the book has no {@code yield-glass} (studio setting, no source). */
@Component(service = CostSource.class)
public final class GlassCost implements CostSource {
    private static final BigDecimal YIELD = new BigDecimal("0.6");
    private static final Spread LAID = new Spread(0.95, 1.15);
    private static final Spread SPREAD = new Spread(0.85, 1.4);

    @Override
    public String key() {
        return "glass";
    }

    @Override
    public int order() {
        return 10;
    }

    @Override
    public List<ReckonedLine> reckon(CostJob job, Prices prices, List<ReckonedLine> before) {
        double yield = prices.number("yield-glass", YIELD, "0.05", "1").doubleValue();
        List<ReckonedLine> lines = new ArrayList<>();
        for (WindowJob window : job.windows()) {
            TreeMap<String, List<PieceJob>> byGlass = new TreeMap<>();
            for (PanelJob panel : window.panels()) {
                panel.pieces().stream().filter(piece -> !piece.glass().isEmpty())
                        .forEach(piece -> byGlass.computeIfAbsent(piece.glass(), glass -> new ArrayList<>()).add(piece));
            }
            byGlass.forEach((glass, pieces) -> {
                double areaM2 = pieces.stream().mapToDouble(PieceJob::netAreaMm2).sum() / 1e6 * window.alike() / job.hints().glassYield().getOrDefault(glass, yield);
                BigDecimal price = prices.ofStudio(pieces.get(0).pricePerM2().orElseThrow(() -> new Refusal("glass " + glass, "it has no price",
                        "put in what a m2 costs")));
                lines.add(ReckonedLine.of(key(), glass, window.name(), areaM2, "m2", price, prices.rounding(),
                        job.hints().glassYield().containsKey(glass) ? LAID : SPREAD));
            });
        }
        return lines;
    }
}
