package saddlebar.ui.kiln;

import saddlebar.model.units.Require;

/**
 * What the bench speaks of; things of the studio by their ids, empty for none.
 *
 * @param firing      name of the recorded firing whose log and load are shown, empty for the load that is being laid
 * @param thicknessMm of the thickest glass
 * @param largestMm   longest side of the largest piece
 */
public record KilnChoice(String scheduleId, String kilnId, String glassId, String paintId, String firing, double thicknessMm, double largestMm) {
    public static final double LEAST_THICKNESS_MM = 0.5;
    public static final double MOST_THICKNESS_MM = 60;
    public static final double LEAST_LARGEST_MM = 5;
    public static final double MOST_LARGEST_MM = 5000;

    public KilnChoice {
        Require.within("thicknessMm", thicknessMm, LEAST_THICKNESS_MM, MOST_THICKNESS_MM);
        Require.within("largestMm", largestMm, LEAST_LARGEST_MM, MOST_LARGEST_MM);
    }

    static final KilnChoice NONE = new KilnChoice("", "", "", "", "", 3, 150);

    KilnChoice withSchedule(String id) {
        return new KilnChoice(id, kilnId, glassId, paintId, firing, thicknessMm, largestMm);
    }

    KilnChoice withKiln(String id) {
        return new KilnChoice(scheduleId, id, glassId, paintId, firing, thicknessMm, largestMm);
    }

    KilnChoice withGlass(String id) {
        return new KilnChoice(scheduleId, kilnId, id, paintId, firing, thicknessMm, largestMm);
    }

    KilnChoice withPaint(String id) {
        return new KilnChoice(scheduleId, kilnId, glassId, id, firing, thicknessMm, largestMm);
    }

    KilnChoice withFiring(String name) {
        return new KilnChoice(scheduleId, kilnId, glassId, paintId, name, thicknessMm, largestMm);
    }

    KilnChoice withThickness(double mm) {
        return new KilnChoice(scheduleId, kilnId, glassId, paintId, firing, mm, largestMm);
    }

    KilnChoice withLargest(double mm) {
        return new KilnChoice(scheduleId, kilnId, glassId, paintId, firing, thicknessMm, mm);
    }
}
