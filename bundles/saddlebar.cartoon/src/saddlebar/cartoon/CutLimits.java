package saddlebar.cartoon;

import saddlebar.model.units.Require;

/**
 * What a cutter calls hard. All values are common practice without a published source, and belong to a glass and a hand: set them for
 * yours. They are measured on the cutline as drawn, before the gap comes off. A limit of 0 switches its check off.
 *
 * @param narrowMm         least width between two sides that face each other, mm
 * @param needleDeg        corner of a piece below which it is flagged, degrees
 * @param hardNeedleDeg    corner below which it is not called easy any more, degrees, at most {@code needleDeg}
 * @param insideCurve      depth / chord of an inside curve from which relief cuts are needed
 * @param hardInsideCurve  depth / chord from which only a ring saw or a new drawing helps, at least {@code insideCurve}
 * @param insideRadiusMm   least radius of an inside curve, mm
 * @param sliverWidthMm    widest circle that fits: a piece with less is a sliver, mm
 * @param sliverAreaMm2    a piece with less area is a sliver, mm2
 * @param hingeShare       share of the panel that a straight joint may cross before it folds like a hinge, 0 to 1
 * @param hingeDeviationMm how far from a straight line a joint may run and still fold, mm
 * @param endNearMm        an end this near to another line is told with its distance, since it was probably meant to meet it, mm
 */
public record CutLimits(double narrowMm, double needleDeg, double hardNeedleDeg, double insideCurve, double hardInsideCurve,
        double insideRadiusMm, double sliverWidthMm, double sliverAreaMm2, double hingeShare, double hingeDeviationMm, double endNearMm) {
    private static final CutLimits COMMON_PRACTICE = new CutLimits(5, 30, 20, 0.25, 0.5, 6, 2, 25, 0.8, 3, 5);

    public CutLimits {
        Require.within("narrowMm", narrowMm, 0, 100);
        Require.within("needleDeg", needleDeg, 0, 90);
        Require.within("hardNeedleDeg", hardNeedleDeg, 0, needleDeg);
        Require.within("insideCurve", insideCurve, 0, 100);
        Require.within("hardInsideCurve", hardInsideCurve, insideCurve, 100);
        Require.within("insideRadiusMm", insideRadiusMm, 0, 100);
        Require.within("sliverWidthMm", sliverWidthMm, 0, 100);
        Require.within("sliverAreaMm2", sliverAreaMm2, 0, 10_000);
        Require.within("hingeShare", hingeShare, 0, 1);
        Require.within("hingeDeviationMm", hingeDeviationMm, 0, 50);
        Require.within("endNearMm", endNearMm, 0, 100);
    }

    /** Whether an inside curve is beyond relief cuts; half a flattened circle is no deeper than half. */
    boolean isHard(double ratio) {
        return ratio > hardInsideCurve + 0.001;
    }

    /** 5 mm, 30 and 20 degrees, 0.25 and 0.5, 6 mm, 2 mm, 25 mm2, 80 % within 3 mm, 5 mm. */
    public static CutLimits commonPractice() {
        return COMMON_PRACTICE;
    }

    public CutLimits withNarrow(double mm) {
        return new CutLimits(mm, needleDeg, hardNeedleDeg, insideCurve, hardInsideCurve, insideRadiusMm, sliverWidthMm, sliverAreaMm2,
                hingeShare, hingeDeviationMm, endNearMm);
    }

    public CutLimits withNeedle(double flaggedDeg, double hardDeg) {
        return new CutLimits(narrowMm, flaggedDeg, hardDeg, insideCurve, hardInsideCurve, insideRadiusMm, sliverWidthMm, sliverAreaMm2,
                hingeShare, hingeDeviationMm, endNearMm);
    }

    public CutLimits withInsideCurve(double flaggedRatio, double hardRatio, double radiusMm) {
        return new CutLimits(narrowMm, needleDeg, hardNeedleDeg, flaggedRatio, hardRatio, radiusMm, sliverWidthMm, sliverAreaMm2,
                hingeShare, hingeDeviationMm, endNearMm);
    }

    public CutLimits withSliver(double widthMm, double areaMm2) {
        return new CutLimits(narrowMm, needleDeg, hardNeedleDeg, insideCurve, hardInsideCurve, insideRadiusMm, widthMm, areaMm2,
                hingeShare, hingeDeviationMm, endNearMm);
    }

    public CutLimits withHinge(double share, double deviationMm) {
        return new CutLimits(narrowMm, needleDeg, hardNeedleDeg, insideCurve, hardInsideCurve, insideRadiusMm, sliverWidthMm,
                sliverAreaMm2, share, deviationMm, endNearMm);
    }

    public CutLimits withEndNear(double mm) {
        return new CutLimits(narrowMm, needleDeg, hardNeedleDeg, insideCurve, hardInsideCurve, insideRadiusMm, sliverWidthMm,
                sliverAreaMm2, hingeShare, hingeDeviationMm, mm);
    }
}
