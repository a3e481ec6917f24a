package saddlebar.materials.cost;

import java.util.ArrayList;
import java.util.List;

import org.osgi.service.component.annotations.Component;

import saddlebar.materials.job.CostJob;
import saddlebar.materials.job.LayerJob;
import saddlebar.materials.job.WindowJob;
import saddlebar.materials.money.Prices;

/** Cleaner for each screen, and the wear of mesh and blade by the pull where the book has {@code mesh-wear}. */
@Component(service = CostSource.class)
public final class ScreenCost implements CostSource {
    @Override
    public String key() {
        return "screens";
    }

    @Override
    public int order() {
        return 40;
    }

    @Override
    public List<ReckonedLine> reckon(CostJob job, Prices prices, List<ReckonedLine> before) {
        List<ReckonedLine> lines = new ArrayList<>();
        for (WindowJob window : job.windows()) {
            List<LayerJob> layers = window.panels().stream().flatMap(panel -> panel.layers().stream()).toList();
            int screens = layers.stream().mapToInt(LayerJob::screens).sum();
            int pulls = layers.stream().mapToInt(LayerJob::pulls).sum() * window.alike();
            if (screens > 0) {
                lines.add(ReckonedLine.of(key(), "cleaner", window.name(), screens, "screen", prices.need("reclaim", "screen"), prices.rounding(),
                        Spread.SURE));
                prices.find("mesh-wear").ifPresent(wear -> lines.add(ReckonedLine.of(key(), "wear of mesh and blade", window.name(), pulls, "pull", wear,
                        prices.rounding(), Spread.SURE)));
            }
        }
        return lines;
    }
}
