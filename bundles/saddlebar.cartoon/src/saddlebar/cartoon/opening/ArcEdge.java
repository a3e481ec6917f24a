package saddlebar.cartoon.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import saddlebar.model.problem.PlaceMm;
import saddlebar.model.units.Require;

/**
 * A stretch of a circle.
 *
 * @param centre   of the circle
 * @param radiusMm above 0
 * @param fromDeg  direction from the centre to the start, turning x towards y
 * @param sweepDeg how far it turns, -360 to 360; positive goes over the top from left to right
 */
public record ArcEdge(PlaceMm centre, double radiusMm, double fromDeg, double sweepDeg) implements Edge {
    public ArcEdge {
        Objects.requireNonNull(centre, "centre");
        Require.within("radiusMm", radiusMm, Double.MIN_VALUE, 1e7);
        Require.finite("fromDeg", fromDeg);
        Require.within("sweepDeg", sweepDeg, -360, 360);
    }

    /** From one direction to another, in degrees; the turn is the difference. */
    static ArcEdge of(double xMm, double yMm, double radiusMm, double fromDeg, double toDeg) {
        return new ArcEdge(new PlaceMm(xMm, yMm), radiusMm, fromDeg, toDeg - fromDeg);
    }

    @Override
    public PlaceMm start() {
        return at(fromDeg);
    }

    @Override
    public PlaceMm end() {
        return at(fromDeg + sweepDeg);
    }

    private PlaceMm at(double deg) {
        double rad = StrictMath.toRadians(deg);
        return new PlaceMm(centre.xMm() + radiusMm * StrictMath.cos(rad), centre.yMm() + radiusMm * StrictMath.sin(rad));
    }

    @Override
    public double lengthMm() {
        return radiusMm * StrictMath.toRadians(Math.abs(sweepDeg));
    }

    @Override
    public double sweptMm2() {
        PlaceMm start = start();
        PlaceMm end = end();
        return (centre.xMm() * (end.yMm() - start.yMm()) - centre.yMm() * (end.xMm() - start.xMm())
                + radiusMm * radiusMm * StrictMath.toRadians(sweepDeg)) / 2;
    }

    /** Chords whose middle is the tolerance inside the circle: a full turn has pi / acos(1 - tolerance / radius) of them. */
    @Override
    public List<PlaceMm> points(double toleranceMm) {
        Require.within("toleranceMm", toleranceMm, 1e-6, 1e6);
        double share = Math.max(-1, 1 - toleranceMm / radiusMm);
        double most = 2 * StrictMath.toDegrees(StrictMath.acos(share));
        int steps = (int) Math.max(1, Math.ceil(Math.abs(sweepDeg) / Math.min(most, 90) - 1e-9));
        List<PlaceMm> points = new ArrayList<>(steps);
        for (int step = 0; step < steps; step++) {
            points.add(at(fromDeg + sweepDeg * step / steps));
        }
        return points;
    }

    @Override
    public Edge mirrored(double atMm) {
        return new ArcEdge(new PlaceMm(2 * atMm - centre.xMm(), centre.yMm()), radiusMm, 180 - fromDeg - sweepDeg, sweepDeg);
    }
}
