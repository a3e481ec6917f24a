package saddlebar.production.light;

import java.util.Objects;

import saddlebar.cartoon.mend.Mend;
import saddlebar.model.problem.PlaceMm;
import saddlebar.model.problem.Problem;

/**
 * A proposed mend of a window's cutline.
 *
 * @param windowName the window
 * @param panelId    the panel's lasting id
 * @param mend       as proposed, in mm of the artwork's page
 * @param at         its place in the window
 */
public record PlacedMend(String windowName, String panelId, Mend mend, PlaceMm at) {
    /** A problem of its code that lies no further from it is answered by it: an end and the middle of a gap are half a gap apart. */
    private static final double NEAR_MM = 6;

    public PlacedMend {
        Objects.requireNonNull(windowName, "windowName");
        Objects.requireNonNull(panelId, "panelId");
        Objects.requireNonNull(mend, "mend");
        Objects.requireNonNull(at, "at");
    }

    /** Whether it would mend what a problem of a window tells. */
    public boolean answers(String ofWindow, Problem problem) {
        return ofWindow.equals(windowName) && problem.code().equals(mend.kind().problemCode())
                && problem.at().filter(place -> distance(place) <= NEAR_MM).isPresent();
    }

    /** In mm of the window. */
    public double distance(PlaceMm place) {
        return Math.hypot(place.xMm() - at.xMm(), place.yMm() - at.yMm());
    }
}
