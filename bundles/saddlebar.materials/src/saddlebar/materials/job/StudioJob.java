package saddlebar.materials.job;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the studio works with. Prices in its own currency.
 *
 * @param sheetPrices    by material and paper, such as {@code fused film/letter}
 * @param shelfM2        of the kiln that fires it, all shelves
 * @param kiln           its name
 * @param firingKwh      of one firing
 * @param firingMeasured the mean of recorded firings; else a guess from the kiln's power
 */
public record StudioJob(String currency, List<PaintJob> paints, Map<String, BigDecimal> sheetPrices, double shelfM2, String kiln, double firingKwh,
        boolean firingMeasured, Bar bar) {
    /** The bar that reinforces. */
    public record Bar(String name, boolean round, Optional<BigDecimal> pricePerM, Optional<Double> soldLengthMm) {
    }

    public StudioJob {
        paints = List.copyOf(paints);
        sheetPrices = Map.copyOf(sheetPrices);
    }

    public Optional<PaintJob> paint(String id) {
        return paints.stream().filter(paint -> paint.id().equals(id)).findFirst();
    }
}
