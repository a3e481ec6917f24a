package saddlebar.stencil.tone;

import java.util.List;

import saddlebar.model.units.Require;

/**
 * One step of a printed wedge.
 *
 * @param nominal   coverage that was screened, 0 to 1
 * @param effective coverage that the print shows ({@link TintDensity#effective}); measuring may put it a little outside 0 to 1
 */
public record WedgeReading(double nominal, double effective) {
    /** The steps that a wedge is printed with. */
    public static final List<Double> STEPS = List.of(0.0, 0.02, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.98, 1.0);

    public WedgeReading {
        Require.within("nominal", nominal, 0, 1);
        Require.finite("effective", effective);
    }
}
