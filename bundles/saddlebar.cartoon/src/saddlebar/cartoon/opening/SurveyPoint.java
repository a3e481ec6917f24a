package saddlebar.cartoon.opening;

import saddlebar.model.units.Require;

/**
 * One measured point on the edge of an opening.
 *
 * @param xMm    to the right
 * @param yMm    down
 * @param corner whether the edge turns sharply here, as at a springing point or an apex
 */
public record SurveyPoint(double xMm, double yMm, boolean corner) {
    public SurveyPoint {
        Require.within("xMm", xMm, -1e6, 1e6);
        Require.within("yMm", yMm, -1e6, 1e6);
    }

    public static SurveyPoint smooth(double xMm, double yMm) {
        return new SurveyPoint(xMm, yMm, false);
    }

    public static SurveyPoint corner(double xMm, double yMm) {
        return new SurveyPoint(xMm, yMm, true);
    }

    double distanceMm(SurveyPoint other) {
        return StrictMath.hypot(other.xMm - xMm, other.yMm - yMm);
    }
}
