package saddlebar.materials.metal;

import saddlebar.model.units.Require;

/**
 * The revised NIOSH lifting equation (Waters, Putz-Anderson, Garg, Applications Manual, DHHS (NIOSH) 94-110, rev. 2021), with the multipliers for
 * frequency and grip given. It covers one person; it is advice, not a proof of safety.
 *
 * @param horizontalCm hands from the ankles, 25 to 63; nearer counts as 25
 * @param verticalCm   hands above the floor, 0 to 175
 * @param travelCm     how far it is lifted, 25 to 175; less counts as 25
 * @param twistDeg     0 to 135
 * @param frequency    FM, 0 to 1; 1 for at most one lift in five minutes within an hour
 * @param grip         CM, 0.9 to 1; 0.95 for a panel's edge
 */
public record LiftingLimit(double horizontalCm, double verticalCm, double travelCm, double twistDeg, double frequency, double grip) {
    /** A panel held upright before the body. */
    public static final LiftingLimit PANEL = new LiftingLimit(40, 40, 80, 0, 1, 0.95);
    /** All that two people lift together, over one person's limit: a studio setting without a source, since the equation does not cover teams. */
    public static final double TWO_PEOPLE = 1.33;
    private static final double LOAD_KG = 23;

    public LiftingLimit {
        Require.within("horizontalCm", horizontalCm, 0, 63.5);
        Require.within("verticalCm", verticalCm, 0, 175);
        Require.within("travelCm", travelCm, 0, 175);
        Require.within("twistDeg", twistDeg, 0, 135);
        Require.within("frequency", frequency, 0, 1);
        Require.within("grip", grip, 0.9, 1);
    }

    public double recommendedKg() {
        double hm = 25 / Math.max(25, horizontalCm);
        double vm = 1 - 0.003 * Math.abs(verticalCm - 75);
        double dm = 0.82 + 4.5 / Math.max(25, travelCm);
        return LOAD_KG * hm * vm * dm * (1 - 0.0032 * twistDeg) * frequency * grip;
    }

    /** Mass over the limit; 1 or less is for most healthy people. */
    public double index(double massKg) {
        return massKg / recommendedKg();
    }

    /** Who should carry it. */
    public String handling(double massKg) {
        if (index(massKg) <= 1) {
            return "One person may lift it; carry it upright, never flat.";
        }
        return index(massKg) <= TWO_PEOPLE
                ? "Two people; carry it upright (the limit for two is a studio setting, no source)."
                : "Use a lifting aid; not by hand alone.";
    }
}
