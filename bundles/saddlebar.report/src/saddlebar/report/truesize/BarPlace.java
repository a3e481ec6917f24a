package saddlebar.report.truesize;

import java.util.List;

import saddlebar.model.units.Require;

/**
 * One level bar across a panel.
 *
 * @param yMm    its middle, in mm of the panel
 * @param fromMm x where it meets the panel's edge
 * @param toMm   x where it leaves it, more than {@code fromMm}
 * @param tiesMm x of each place where it is tied or soldered to a joint
 */
public record BarPlace(double yMm, double fromMm, double toMm, List<Double> tiesMm) {
    public BarPlace {
        Require.within("yMm", yMm, -1e6, 1e6);
        Require.within("fromMm", fromMm, -1e6, 1e6);
        Require.within("toMm", toMm, Math.nextUp(fromMm), 1e6);
        tiesMm = List.copyOf(tiesMm);
    }

    /** Clear length between the panel's edges, without what is let into the frame. */
    public double clearMm() {
        return toMm - fromMm;
    }
}
