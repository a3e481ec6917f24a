package saddlebar.materials.cost;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.osgi.service.component.annotations.Component;

import saddlebar.materials.job.CostJob;
import saddlebar.materials.job.PieceJob;
import saddlebar.materials.job.WindowJob;
import saddlebar.materials.money.Prices;
import saddlebar.model.problem.Refusal;

/** Glass by the area of its pieces over the yield of a sheet: as laid on glass, else 0.6 where the book has no {@code yield-glass} (studio setting, no source). */
@Component(service = CostSource.class)
public final class GlassCost implements CostSource {
    private static final String KEY = "glass";
    private static final BigDecimal YIELD = new BigDecimal("0.6");
    private static final Spread SPREAD = new Spread(0.85, 1.4);

    @Override
    public String key() {
        return KEY;
    }

    @Override
    public int order() {
        return 10;
    }

    @Override
    public List<ReckonedLine> reckon(CostJob job, Prices prices, List<ReckonedLine> before) {
        List<ReckonedLine> lines = new ArrayList<>();
        for (WindowJob window : job.windows()) {
            lines.addAll(of(window.name(), window.alike(), window.panels().stream().flatMap(panel -> panel.pieces().stream()).toList(), prices,
                    job.yields()));
        }
        return lines;
    }

    /**
     * The glass of one window, a line a glass; pieces without glass are left out.
     *
     * @param alike  openings that get the same window
     * @param yields share of a sheet that becomes pieces, by glass, where pieces were laid on it
     * @throws Refusal if a glass has no price
     */
    public static List<ReckonedLine> of(String window, int alike, List<PieceJob> pieces, Prices prices, Map<String, Double> yields) {
        double yield = prices.number("yield-glass", YIELD, "0.05", "1").doubleValue();
        TreeMap<String, List<PieceJob>> byGlass = new TreeMap<>();
        pieces.stream().filter(piece -> !piece.glass().isEmpty())
                .forEach(piece -> byGlass.computeIfAbsent(piece.glass(), glass -> new ArrayList<>()).add(piece));
        List<ReckonedLine> lines = new ArrayList<>();
        byGlass.forEach((glass, same) -> {
            double areaM2 = same.stream().mapToDouble(PieceJob::netAreaMm2).sum() / 1e6 * alike / yields.getOrDefault(glass, yield);
            BigDecimal price = prices.ofStudio(same.get(0).pricePerM2().orElseThrow(() -> new Refusal("glass " + glass, "it has no price",
                    "put in what a m2 costs")));
            lines.add(ReckonedLine.of(KEY, glass, window, areaM2, "m2", price, prices.rounding(), SPREAD));
        });
        return lines;
    }
}
