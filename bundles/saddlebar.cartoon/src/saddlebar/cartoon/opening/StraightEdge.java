package saddlebar.cartoon.opening;

import java.util.List;
import java.util.Objects;

import saddlebar.model.problem.PlaceMm;

/**
 * A straight stretch.
 *
 * @param start where it begins
 * @param end   where it ends
 */
public record StraightEdge(PlaceMm start, PlaceMm end) implements Edge {
    public StraightEdge {
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(end, "end");
    }

    static StraightEdge of(double x1, double y1, double x2, double y2) {
        return new StraightEdge(new PlaceMm(x1, y1), new PlaceMm(x2, y2));
    }

    @Override
    public double lengthMm() {
        return StrictMath.hypot(end.xMm() - start.xMm(), end.yMm() - start.yMm());
    }

    @Override
    public double sweptMm2() {
        return (start.xMm() * end.yMm() - end.xMm() * start.yMm()) / 2;
    }

    @Override
    public List<PlaceMm> points(double toleranceMm) {
        return List.of(start);
    }

    @Override
    public Edge mirrored(double atMm) {
        return of(2 * atMm - end.xMm(), end.yMm(), 2 * atMm - start.xMm(), start.yMm());
    }
}
