package saddlebar.materials.job;

import java.math.BigDecimal;
import java.util.Optional;

import saddlebar.materials.paint.PaintFlags;
import saddlebar.materials.paint.PaintMixture;
import saddlebar.materials.paint.PowderStock;

/**
 * A paint of the studio.
 *
 * @param pricePerKg       of the powder, in the studio's currency
 * @param mediumPricePerKg in the studio's currency
 */
public record PaintJob(String id, String name, PaintMixture mixture, Optional<BigDecimal> pricePerKg, Optional<BigDecimal> mediumPricePerKg, PaintFlags flags,
        PowderStock stock) {
}
