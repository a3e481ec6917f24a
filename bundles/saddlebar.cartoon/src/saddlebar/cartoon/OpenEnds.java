package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.index.strtree.STRtree;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.Problem;

/**
 * Ends of lines that lead nowhere, and lines that divide nothing. An end's stub runs from the free end to the first place where lines
 * meet. Short stubs were cut off without a word; of the others it is told whether the line ran past a crossing, stopped short of the next
 * line, or just ends, and in which piece.
 */
final class OpenEnds {
    private final List<DrawnLine> cutline;
    private final Map<Coordinate, List<CutNet.Edge>> atNode = new HashMap<>();
    private final STRtree tree = new STRtree();
    private final double shortMm;
    private final double nearMm;

    /**
     * A line's end inside the panel, for asking in which piece it lies.
     *
     * @param fromJoint whether the stub hangs on a joint, so that a cut along it would end in the glass
     */
    record FreeEnd(Coordinate end, boolean fromJoint, Problem problem) {
    }

    private record Stub(Set<CutNet.Edge> edges, Coordinate root, double lengthMm) {
    }

    OpenEnds(List<DrawnLine> cutline, List<CutNet.Edge> edges, double shortMm, double nearMm) {
        this.cutline = cutline;
        this.shortMm = shortMm;
        this.nearMm = nearMm;
        for (CutNet.Edge edge : edges) {
            LineString line = edge.line();
            atNode.computeIfAbsent(line.getCoordinateN(0), node -> new ArrayList<>(4)).add(edge);
            atNode.computeIfAbsent(line.getCoordinateN(line.getNumPoints() - 1), node -> new ArrayList<>(4)).add(edge);
            tree.insert(line.getEnvelopeInternal(), edge);
        }
    }

    /** Free ends longer than what is cut off, in the order of the drawing. */
    List<FreeEnd> freeEnds(List<CutNet.Edge> dangles) {
        List<FreeEnd> ends = new ArrayList<>();
        Set<Coordinate> told = new HashSet<>();
        for (CutNet.Edge edge : dangles) {
            for (Coordinate end : List.of(first(edge), last(edge))) {
                if (atNode.get(end).size() == 1 && told.add(end)) {
                    tell(end, edge, told, ends);
                }
            }
        }
        return ends;
    }

    private void tell(Coordinate end, CutNet.Edge edge, Set<Coordinate> told, List<FreeEnd> ends) {
        Stub stub = stub(end, edge);
        if (stub.lengthMm < shortMm || edge.sources()[0] == Pinches.LINK) {
            return;
        }
        String where = CutlineProblems.where(cutline.get(edge.sources()[0]));
        Double distance = distanceAhead(end, stub);
        if (stub.root == null) {
            Coordinate other = otherEnd(end, stub);
            told.add(other);
            ends.add(new FreeEnd(end, false, distance == null
                    ? CutlineProblems.looseLine(where, end.x, end.y, stub.lengthMm)
                    : CutlineProblems.openEnd(where, end.x, end.y, distance)));
        } else if (stub.lengthMm <= nearMm && goesOnBeyond(stub, edge)) {
            ends.add(new FreeEnd(end, false, CutlineProblems.crossingEnd(where, end.x, end.y, stub.lengthMm)));
        } else {
            ends.add(new FreeEnd(end, true, CutlineProblems.openEnd(where, end.x, end.y, distance)));
        }
    }

    /** From a free end along the line to where lines meet; no root if it ends freely again. */
    private Stub stub(Coordinate end, CutNet.Edge start) {
        Set<CutNet.Edge> edges = new HashSet<>();
        Coordinate node = end;
        CutNet.Edge edge = start;
        double length = 0;
        while (true) {
            edges.add(edge);
            length += edge.line().getLength();
            node = first(edge).equals2D(node) ? last(edge) : first(edge);
            List<CutNet.Edge> here = atNode.get(node);
            if (here.size() != 2) {
                return new Stub(edges, here.size() == 1 ? null : node, length);
            }
            edge = here.get(0) == edge ? here.get(1) : here.get(0);
            if (edges.contains(edge)) {
                return new Stub(edges, node, length);
            }
        }
    }

    private Coordinate otherEnd(Coordinate end, Stub stub) {
        return stub.edges.stream().flatMap(edge -> List.of(first(edge), last(edge)).stream())
                .filter(node -> atNode.get(node).size() == 1 && !node.equals2D(end)).findFirst().orElse(end);
    }

    /** Whether the drawn line of the stub runs on at the far side of its root. */
    private boolean goesOnBeyond(Stub stub, CutNet.Edge edge) {
        return atNode.get(stub.root).stream().filter(other -> !stub.edges.contains(other))
                .anyMatch(other -> Arrays.stream(edge.sources()).anyMatch(other::isOf));
    }

    /** Distance to the nearest line that is not the stub itself, if it is near and not just the line that the stub hangs on. */
    private Double distanceAhead(Coordinate end, Stub stub) {
        double within = Math.min(nearMm, stub.lengthMm / 2);
        double least = Double.MAX_VALUE;
        var box = new Envelope(end);
        box.expandBy(within);
        for (Object item : tree.query(box)) {
            CutNet.Edge edge = (CutNet.Edge) item;
            if (!stub.edges.contains(edge)) {
                Coordinate[] points = edge.line().getCoordinates();
                for (int i = 0; i + 1 < points.length; i++) {
                    least = Math.min(least, RingPath.distanceToChord(points[i].x, points[i].y, points[i + 1].x, points[i + 1].y,
                            end.x, end.y));
                }
            }
        }
        return least <= within ? least : null;
    }

    /** Edges with one face on both sides: one problem a drawn line, at its longest such edge. */
    List<Problem> dividingNothing(List<CutNet.Edge> bridges) {
        Map<Integer, CutNet.Edge> longest = new TreeMap<>();
        for (CutNet.Edge edge : bridges) {
            if (edge.sources()[0] != Pinches.LINK) {
                longest.merge(edge.sources()[0], edge, (a, b) -> b.line().getLength() > a.line().getLength() ? b : a);
            }
        }
        List<Problem> problems = new ArrayList<>();
        longest.forEach((source, edge) -> {
            Coordinate at = CutNet.middle(edge.line());
            problems.add(CutlineProblems.dividesNothing(CutlineProblems.where(cutline.get(source)), at.x, at.y));
        });
        return problems;
    }

    private static Coordinate first(CutNet.Edge edge) {
        return edge.line().getCoordinateN(0);
    }

    private static Coordinate last(CutNet.Edge edge) {
        return edge.line().getCoordinateN(edge.line().getNumPoints() - 1);
    }
}
