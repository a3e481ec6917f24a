package saddlebar.kiln.schedule;

import saddlebar.model.units.Require;

/**
 * One step of a firing: to a target at a rate, then hold.
 *
 * @param name      what it is for
 * @param rateKPerH without a sign, the target gives the direction; 0 is as fast as the kiln goes
 * @param targetC   20 to 1400
 * @param soakMin   minutes held at the target
 */
public record Segment(String name, double rateKPerH, double targetC, double soakMin) {
    public static final double MOST_RATE = 20_000;
    public static final double LEAST_C = 20;
    public static final double MOST_C = 1400;
    public static final double MOST_SOAK_MIN = 6000;

    public Segment {
        java.util.Objects.requireNonNull(name, "name");
        Require.within("rateKPerH", rateKPerH, 0, MOST_RATE);
        Require.within("targetC", targetC, LEAST_C, MOST_C);
        Require.within("soakMin", soakMin, 0, MOST_SOAK_MIN);
    }

    public boolean fullRate() {
        return rateKPerH == 0;
    }

    public Segment withRate(double kPerH) {
        return new Segment(name, kPerH, targetC, soakMin);
    }

    public Segment withSoak(double minutes) {
        return new Segment(name, rateKPerH, targetC, minutes);
    }

    public Segment withTarget(double degC) {
        return new Segment(name, rateKPerH, degC, soakMin);
    }
}
