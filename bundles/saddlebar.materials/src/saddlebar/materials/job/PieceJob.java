package saddlebar.materials.job;

import java.math.BigDecimal;
import java.util.Optional;

import saddlebar.model.units.Require;

/**
 * A piece to cut.
 *
 * @param glass      name of its glass, empty if none was chosen
 * @param pricePerM2 of that glass, in the studio's currency; empty if its table has none
 */
public record PieceJob(int number, String glass, Optional<BigDecimal> pricePerM2, double netAreaMm2, double perimeterMm, double thicknessMm,
        double densityKgPerM3) {
    public PieceJob {
        Require.within("netAreaMm2", netAreaMm2, 0, 1e9);
        Require.within("perimeterMm", perimeterMm, 0, 1e9);
        Require.within("thicknessMm", thicknessMm, 0.1, 100);
        Require.within("densityKgPerM3", densityKgPerM3, 500, 10_000);
    }
}
