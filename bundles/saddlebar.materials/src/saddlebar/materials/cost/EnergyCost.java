package saddlebar.materials.cost;

import java.util.List;

import org.osgi.service.component.annotations.Component;

import saddlebar.materials.job.CostJob;
import saddlebar.materials.money.Prices;

/** Energy of the kiln: the mean of measured firings, else the kiln's power for three hours (studio setting, no source). */
@Component(service = CostSource.class)
public final class EnergyCost implements CostSource {
    private static final Spread MEASURED = new Spread(0.9, 1.1);
    private static final Spread GUESSED = new Spread(0.6, 1.8);

    @Override
    public String key() {
        return "energy";
    }

    @Override
    public int order() {
        return 60;
    }

    @Override
    public List<ReckonedLine> reckon(CostJob job, Prices prices, List<ReckonedLine> before) {
        int firings = Firings.of(job).count();
        if (firings == 0) {
            return List.of();
        }
        return List.of(ReckonedLine.of(key(), "energy of the kiln", "", firings * job.studio().firingKwh(), "kWh",
                prices.need("energy", "kWh"), prices.rounding(), job.studio().firingMeasured() ? MEASURED : GUESSED));
    }
}
