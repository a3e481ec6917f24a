package saddlebar.materials.cost;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

import org.osgi.service.component.annotations.Component;

import saddlebar.materials.job.CostJob;
import saddlebar.materials.money.Prices;
import saddlebar.materials.paint.PaintRules;
import saddlebar.model.problem.Refusal;

/** Powder and medium by mass, waste included; what holds gold stands apart under a key of its own. */
@Component(service = CostSource.class)
public final class PaintCost implements CostSource {
    /** Key of gold-bearing powders. */
    static final String GOLD = "paint-gold";
    private static final Spread SPREAD = new Spread(0.8, 1.6);

    @Override
    public String key() {
        return "paint";
    }

    @Override
    public int order() {
        return 20;
    }

    @Override
    public List<ReckonedLine> reckon(CostJob job, Prices prices, List<ReckonedLine> before) {
        List<ReckonedLine> lines = new ArrayList<>();
        for (PaintList.Row row : PaintList.of(job, PaintRules.USUAL).rows()) {
            String name = row.paint().name();
            BigDecimal powder = row.paint().pricePerKg().orElseThrow(() -> new Refusal("paint " + name, "it has no price", "put in what a kg costs"));
            lines.add(ReckonedLine.of(row.paint().flags().gold() ? GOLD : key(), name + " powder", "", row.need().powderG(), "g",
                    prices.ofStudio(powder).scaleByPowerOfTen(-3), prices.rounding(), SPREAD));
            row.paint().mediumPricePerKg().ifPresent(medium -> lines.add(ReckonedLine.of(key(), "medium for " + name, "", row.need().mediumG(), "g",
                    prices.ofStudio(medium).scaleByPowerOfTen(-3), prices.rounding(), SPREAD)));
        }
        return lines;
    }
}
