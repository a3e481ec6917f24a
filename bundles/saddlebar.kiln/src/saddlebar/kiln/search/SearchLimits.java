package saddlebar.kiln.search;

import java.util.Optional;

import saddlebar.kiln.advice.Advisor;
import saddlebar.kiln.fire.Annealing;
import saddlebar.kiln.fire.Load;
import saddlebar.kiln.paint.PaintFlux;
import saddlebar.model.units.Require;

/**
 * What a schedule must keep to.
 *
 * @param tensionMpa   largest tension at any time
 * @param coreLagK     largest difference through the glass
 * @param heatingKPerH steepest ramp below the strain point plus 20 K
 * @param residualMpa  largest tension that stays
 * @param workShare    how far the heat work may lie from the wanted, as a share
 * @param paint        whose flux counts; without one the glass itself
 */
public record SearchLimits(double tensionMpa, double coreLagK, double heatingKPerH, double residualMpa, double workShare, Optional<PaintFlux> paint) {
    public SearchLimits {
        Require.within("tensionMpa", tensionMpa, 0.01, 100);
        Require.within("coreLagK", coreLagK, 0.01, 500);
        Require.within("heatingKPerH", heatingKPerH, 5, 20_000);
        Require.within("residualMpa", residualMpa, 0.001, 100);
        Require.within("workShare", workShare, 0.001, 0.5);
    }

    /** Studio rules: 7 MPa, 10 K, common practice for the pieces' size and thickness, 0.5 MPa, 5 %. */
    public static SearchLimits usual(Load load, Optional<PaintFlux> paint) {
        return new SearchLimits(Advisor.WORKING_MPA, 10, load.practiceRateKPerH(), Annealing.LIMIT_MPA, 0.05, paint);
    }

    public SearchLimits withTensionMpa(double mpa) {
        return new SearchLimits(mpa, coreLagK, heatingKPerH, residualMpa, workShare, paint);
    }

    public SearchLimits withCoreLagK(double kelvin) {
        return new SearchLimits(tensionMpa, kelvin, heatingKPerH, residualMpa, workShare, paint);
    }

    public SearchLimits withHeatingKPerH(double rate) {
        return new SearchLimits(tensionMpa, coreLagK, rate, residualMpa, workShare, paint);
    }

    public SearchLimits withResidualMpa(double mpa) {
        return new SearchLimits(tensionMpa, coreLagK, heatingKPerH, mpa, workShare, paint);
    }
}
