package saddlebar.cartoon.opening;

/**
 * How far apart saddle bars may be, by where a window hangs. Figures of trade texts, which differ between studios; no standard.
 */
public enum BarRule {
    /** In the outer wall, where wind presses: 300 to 450 mm. */
    EXTERIOR(450),
    /** In a door, which slams: at most 450 mm. */
    DOOR(450),
    /** Elsewhere: at most 600 mm. */
    INTERIOR(600);

    /** Stands wherever bars or panel sizes are told. */
    public static final String CAUTION = "Bars and panel sizes here are a studio's rule of thumb, not a structural design. "
            + "Wind load, safety glazing, openings over doors, low, "
            + "overhead or large, and all fixing to the building are for the local code and a licensed professional.";

    private final double mostMm;

    BarRule(double mostMm) {
        this.mostMm = mostMm;
    }

    /** Widest distance between bars, and from a bar to sill or crown. */
    public double mostMm() {
        return mostMm;
    }
}
