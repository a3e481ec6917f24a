package saddlebar.stencil.tone;

import saddlebar.model.units.Require;

/**
 * One step of a printed wedge as an instrument, or a photograph, gives it.
 *
 * @param nominal coverage that was screened, 0 to 1
 * @param density D = -log10 T, against air or against bare glass; the same for all steps
 */
public record MeasuredStep(double nominal, double density) {
    public MeasuredStep {
        Require.within("nominal", nominal, 0, 1);
        Require.finite("density", density);
    }

    /** @param transmittance above 0 */
    public static MeasuredStep ofTransmittance(double nominal, double transmittance) {
        return new MeasuredStep(nominal, TintDensity.density(transmittance));
    }
}
