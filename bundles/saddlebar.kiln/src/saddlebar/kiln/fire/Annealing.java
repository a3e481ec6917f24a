package saddlebar.kiln.fire;

import saddlebar.kiln.glass.Glass;
import saddlebar.kiln.schedule.HeatCurve;

/**
 * Whether a firing leaves the glass annealed. Two things are asked. It must have stayed for long enough in some stretch of 10 K between its
 * strain point and 15 K above its annealing point, after its peak: 20 minutes and five times Maxwell's time of relaxation there (the 20 minutes
 * are a studio target; tests by ASTM C336 and C598 speak of 15 minutes at the annealing and about 4 hours at the strain point). And the tension that stays
 * must not exceed 0.5 MPa (studio target).
 *
 * @param heated       the glass came to its strain point at all; if not, it is as it was before
 * @param soaked       it stayed long enough
 * @param soakMin      minutes in the best stretch of 10 K
 * @param soakC        middle of that stretch, degC
 * @param neededMin    minutes that it needs there
 * @param residualMpa  largest tension that stays, divided by 0.6 for what structure adds
 */
public record Annealing(boolean heated, boolean soaked, double soakMin, double soakC, double neededMin, double residualMpa) {
    public static final double LEAST_MIN = 20;
    public static final double LIMIT_MPA = 0.5;
    private static final double WINDOW_K = 10;
    private static final double ABOVE_K = 15;
    private static final double RELAXATIONS = 5;

    public boolean annealed() {
        return heated && soaked && residualMpa <= LIMIT_MPA;
    }

    /** Minutes of soak that a temperature asks for. */
    public static double neededMin(Glass glass, double degC) {
        return Math.max(LEAST_MIN, RELAXATIONS * glass.relaxationS(degC) / 60);
    }

    static Annealing of(Glass glass, HeatCurve core, double residualMpa) {
        double strain = glass.viscosity().strainC();
        double top = glass.viscosity().annealingC() + ABOVE_K;
        boolean heated = core.peakC() >= strain;
        double fromS = core.peakC() > top ? core.peakS() : core.startS();
        double best = -1;
        Annealing found = new Annealing(heated, false, 0, glass.viscosity().annealingC(), LEAST_MIN, residualMpa);
        for (double low = strain; low + WINDOW_K <= top; low += 1) {
            double minutes = core.minutesWithin(low, low + WINDOW_K, fromS);
            double needed = neededMin(glass, low + WINDOW_K / 2);
            if (minutes / needed > best) {
                best = minutes / needed;
                found = new Annealing(heated, minutes >= needed, minutes, low + WINDOW_K / 2, needed, residualMpa);
            }
        }
        return found;
    }
}
