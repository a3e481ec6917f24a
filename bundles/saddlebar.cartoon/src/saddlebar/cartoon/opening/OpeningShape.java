package saddlebar.cartoon.opening;

import java.util.ArrayList;
import java.util.List;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.PlaceMm;
import saddlebar.model.units.Require;

/**
 * The outline of an opening as lines and arcs; see {@link ArchedOpenings} and {@link RoundOpenings} for the usual ones.
 *
 * @param name        in the words of the trade, such as {@code lancet}
 * @param edges       closed: each begins within 1e-6 mm of where the one before it ends
 * @param springingMm y of the springing line where the head of an arch begins; 0 if the shape has none
 */
public record OpeningShape(String name, List<Edge> edges, double springingMm) {
    private static final double JOINED_MM = 1e-6;

    public OpeningShape {
        Require.text("name", name);
        edges = List.copyOf(edges);
        Require.within("edges", edges.size(), 1, 10_000);
        Require.finite("springingMm", springingMm);
        for (int i = 0; i < edges.size(); i++) {
            PlaceMm end = edges.get(i).end();
            PlaceMm next = edges.get((i + 1) % edges.size()).start();
            if (!(StrictMath.hypot(end.xMm() - next.xMm(), end.yMm() - next.yMm()) <= JOINED_MM)) {
                throw new IllegalArgumentException("edge " + i + " of " + name + " ends at " + end + " but the next begins at " + next);
            }
        }
    }

    public double areaMm2() {
        return Math.abs(edges.stream().mapToDouble(Edge::sweptMm2).sum());
    }

    public double perimeterMm() {
        return edges.stream().mapToDouble(Edge::lengthMm).sum();
    }

    /** Closed line in straight steps, none further from the true edge than the tolerance. */
    public DrawnLine line(double toleranceMm) {
        List<PlaceMm> points = new ArrayList<>();
        edges.forEach(edge -> points.addAll(edge.points(toleranceMm)));
        return new DrawnLine(name, 0, points.stream().flatMapToDouble(p -> java.util.stream.DoubleStream.of(p.xMm(), p.yMm())).toArray(), true);
    }
}
