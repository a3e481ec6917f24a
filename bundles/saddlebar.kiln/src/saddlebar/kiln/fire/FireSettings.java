package saddlebar.kiln.fire;

import saddlebar.model.units.Require;

/**
 * How finely a firing is computed.
 *
 * @param stepS      longest step in s
 * @param glassNodes nodes through the glass, odd
 * @param shelfNodes nodes through the shelf
 * @param mostHours  a firing that is not over by then is cut off
 */
public record FireSettings(double stepS, int glassNodes, int shelfNodes, double mostHours) {
    public static final FireSettings FINE = new FireSettings(5, 9, 7, 400);
    /** For a search over many schedules; what it finds is checked with {@link #FINE}. */
    public static final FireSettings COARSE = new FireSettings(30, 5, 4, 400);

    public FireSettings {
        Require.within("stepS", stepS, 0.01, 60);
        Require.within("glassNodes", glassNodes, 3, 201);
        if (glassNodes % 2 == 0) {
            throw new IllegalArgumentException("glassNodes must be odd but is " + glassNodes);
        }
        Require.within("shelfNodes", shelfNodes, 3, 201);
        Require.within("mostHours", mostHours, 0.1, 2000);
    }
}
