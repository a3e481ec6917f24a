package saddlebar.materials.cost;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

import org.osgi.service.component.annotations.Component;

import saddlebar.materials.job.CostJob;
import saddlebar.materials.money.Prices;

/** The way to the site and back: {@code travel-km} a km, and {@code minutes-travel-km} of work on the road where the book has it. */
@Component(service = CostSource.class)
public final class TravelCost implements CostSource {
    private static final Spread SPREAD = new Spread(1, 1.5);
    private static final double MINUTES_AN_HOUR = 60;

    @Override
    public String key() {
        return "travel";
    }

    @Override
    public int order() {
        return 85;
    }

    @Override
    public List<ReckonedLine> reckon(CostJob job, Prices prices, List<ReckonedLine> before) {
        List<ReckonedLine> lines = new ArrayList<>();
        double km = job.site().roadKm();
        if (km > 0) {
            lines.add(ReckonedLine.of(key(), "to the site and back", "", km, "km", prices.need("travel-km", "km"), prices.rounding(), SPREAD));
            double minutes = prices.number("minutes-travel-km", BigDecimal.ZERO, "0", "60").doubleValue();
            if (minutes > 0) {
                lines.add(ReckonedLine.of(key(), "time on the road", "", km * minutes / MINUTES_AN_HOUR, "hour", prices.need("labour", "hour"),
                        prices.rounding(), SPREAD));
            }
        }
        return lines;
    }
}
