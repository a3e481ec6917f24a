package saddlebar.materials.cost;

import java.math.BigDecimal;
import java.util.List;

import org.osgi.service.component.annotations.Component;

import saddlebar.materials.job.CostJob;
import saddlebar.materials.money.Prices;
import saddlebar.model.problem.Refusal;

/** Sheets that stencils are printed on. */
@Component(service = CostSource.class)
public final class SheetCost implements CostSource {
    private static final Spread SPREAD = new Spread(1, 1.3);

    @Override
    public String key() {
        return "sheets";
    }

    @Override
    public int order() {
        return 30;
    }

    @Override
    public List<ReckonedLine> reckon(CostJob job, Prices prices, List<ReckonedLine> before) {
        return job.sheets().stream().map(sheet -> {
            BigDecimal price = job.studio().sheetPrices().get(sheet.material() + "/" + sheet.paper());
            if (price == null) {
                throw new Refusal(sheet.material() + " " + sheet.paper(), "it has no price", "put in what a sheet costs");
            }
            return ReckonedLine.of(key(), sheet.material() + " " + sheet.paper(), "", sheet.sheets(), "sheet", prices.ofStudio(price),
                    prices.rounding(), SPREAD);
        }).toList();
    }
}
