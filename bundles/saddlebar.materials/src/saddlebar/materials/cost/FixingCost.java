package saddlebar.materials.cost;

import java.util.ArrayList;
import java.util.List;

import org.osgi.service.component.annotations.Component;

import saddlebar.materials.job.CostJob;
import saddlebar.materials.job.WindowJob;
import saddlebar.materials.money.Prices;

/** Packing of each panel, and fixing of each window where the book has {@code fixing}. */
@Component(service = CostSource.class)
public final class FixingCost implements CostSource {
    private static final Spread SPREAD = new Spread(0.9, 1.5);

    @Override
    public String key() {
        return "fixing";
    }

    @Override
    public int order() {
        return 80;
    }

    @Override
    public List<ReckonedLine> reckon(CostJob job, Prices prices, List<ReckonedLine> before) {
        List<ReckonedLine> lines = new ArrayList<>();
        for (WindowJob window : job.windows()) {
            int panels = window.panels().size() * window.alike();
            if (panels > 0) {
                prices.find("crate").ifPresent(price -> lines.add(ReckonedLine.of(key(), "packing", window.name(), panels, "panel", price, prices.rounding(),
                        Spread.SURE)));
                prices.find("fixing").ifPresent(price -> lines.add(ReckonedLine.of(key(), "fixing on site", window.name(), window.alike(), "window", price,
                        prices.rounding(), SPREAD)));
            }
        }
        return lines;
    }
}
