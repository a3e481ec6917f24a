package saddlebar.model.problem;

import saddlebar.model.units.Require;

/** A place in the artwork in mm, x to the right and y down from the top left of the artwork's page. */
public record PlaceMm(double xMm, double yMm) {
    public PlaceMm {
        Require.finite("xMm", xMm);
        Require.finite("yMm", yMm);
    }
}
