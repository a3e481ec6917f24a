package saddlebar.stencil.mesh;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Require;
import saddlebar.model.units.Units;

/**
 * How the bands of a laser engine, straight across the sheet at a period that the studio measured, beat with a ruling: the frequency of a band, k/P down
 * the sheet, less one of the ruling, i S1 + j S2 (as {@link MeshBeats} does with a mesh; Amidror, 2009, ch. 2). Only frequencies are told: how strong an
 * engine bands differs from sheet to sheet.
 *
 * @param periodMm of the engine
 * @param beatMm   distance of the slow bands that come of it; infinite where the ruling keeps step with the engine
 * @param k        harmonic of the engine's period
 * @param i        order of the ruling along its angle
 * @param j        and across it
 */
public record EngineBands(double periodMm, double beatMm, int k, int i, int j) {
    private static final int MOST_ORDER = 3;
    private static final int MOST_HARMONIC = 3;
    /** Slower bands than this lie where the eye is good at 1 to 2 m; faster ones are lost in the dots. */
    private static final double SLOW_MM = 2;

    /** The slowest beat of a ruling with one period. */
    public static EngineBands slowest(double periodMm, double lpi, double angleDeg) {
        Require.within("periodMm", periodMm, 0.01, 1000);
        double s = lpi / Units.MM_PER_INCH;
        double cos = s * StrictMath.cos(StrictMath.toRadians(angleDeg));
        double sin = s * StrictMath.sin(StrictMath.toRadians(angleDeg));
        EngineBands best = null;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 1; k <= MOST_HARMONIC; k++) {
            for (int i = -MOST_ORDER; i <= MOST_ORDER; i++) {
                for (int j = -MOST_ORDER; j <= MOST_ORDER; j++) {
                    double f = Math.hypot(i * cos - j * sin, i * sin + j * cos - k / periodMm);
                    if ((i != 0 || j != 0) && f < least - 1e-9) {
                        least = f;
                        best = new EngineBands(periodMm, f < 1e-9 ? Double.POSITIVE_INFINITY : 1 / f, k, i, j);
                    }
                }
            }
        }
        return best;
    }

    /** Whether what comes of it is slow enough to be seen, and slower than the engine's own bands. */
    public boolean slow() {
        return beatMm > SLOW_MM && beatMm > periodMm;
    }

    /** In a sentence, where one of the periods beats slowly with the ruling. */
    public static Optional<Problem> advice(List<Double> periodsMm, double lpi, double angleDeg) {
        return periodsMm.stream().map(period -> slowest(period, lpi, angleDeg)).filter(EngineBands::slow).max((a, b) -> Double.compare(a.beatMm, b.beatMm))
                .map(worst -> Problem.of("engine-bands", Severity.WARNING, "printer", String.format(Locale.ROOT,
                        "The printer's bands, every %s mm, and this ruling make bands %s; turn the ruling by a few degrees, or take another one.",
                        Units.plain(worst.periodMm),
                        worst.beatMm > 1000 ? "that keep step with the dots" : String.format(Locale.ROOT, "every %.1f mm", worst.beatMm))));
    }
}
