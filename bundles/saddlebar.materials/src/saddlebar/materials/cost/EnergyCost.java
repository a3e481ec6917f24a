package saddlebar.materials.cost;

import java.util.List;

import org.osgi.service.component.annotations.Component;

import saddlebar.materials.job.CostJob;
import saddlebar.materials.money.Prices;

/**
 * Energy of the kiln: the mean of measured firings; else the simulation of the schedule that a layer is fired by, where it is given in; else the kiln's power
 * for three hours (studio setting, no source).
 */
@Component(service = CostSource.class)
public final class EnergyCost implements CostSource {
    private static final Spread MEASURED = new Spread(0.9, 1.1);
    private static final Spread SIMULATED = new Spread(0.8, 1.3);
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
        Firings firings = Firings.of(job);
        if (firings.count() == 0) {
            return List.of();
        }
        boolean measured = job.studio().firingMeasured();
        boolean simulated = !measured && firings.areaM2ByOrder().keySet().stream().allMatch(job.hints().firingKwh()::containsKey);
        double kwh = simulated
                ? firings.areaM2ByOrder().keySet().stream().mapToDouble(order -> firings.count(order) * job.hints().firingKwh().get(order)).sum()
                : firings.count() * job.studio().firingKwh();
        return List.of(ReckonedLine.of(key(), "energy of the kiln", "", kwh, "kWh", prices.need("energy", "kWh"), prices.rounding(),
                measured ? MEASURED : simulated ? SIMULATED : GUESSED));
    }
}
