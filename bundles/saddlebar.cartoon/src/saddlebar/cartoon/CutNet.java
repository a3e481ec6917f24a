package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

import saddlebar.model.work.Work;

/**
 * The strokes as a plane net: every crossing and touching is a node, every edge runs from node to node, no edge twice. All points lie on
 * the snapping grid; see {@link StrokeNoder}.
 *
 * @param edges   each with the drawn lines it is part of
 * @param doubled stretches drawn more than once, one entry a pair of drawn lines
 */
record CutNet(List<Edge> edges, List<Doubled> doubled) {
    /** Geometry of the whole bundle: plain double coordinates. */
    static final GeometryFactory GEOMETRY = new GeometryFactory();

    /**
     * @param line    from node to node
     * @param sources drawn lines that run here, ascending, each once
     */
    record Edge(LineString line, int[] sources) {
        boolean isOf(int source) {
            return Arrays.binarySearch(sources, source) >= 0;
        }
    }

    /** Two drawn lines, or one line twice, that run along the same edges. */
    record Doubled(int first, int second, double lengthMm, Coordinate at) {
    }

    private record Pair(int first, int second) {
    }

    /**
     * An edge whichever way it runs, known by its lesser end and the point after it: in a noded net no two edges leave a node along the
     * same step.
     */
    private record Key(double x, double y, double nextX, double nextY) {
        static Key of(Coordinate[] points) {
            int last = points.length - 1;
            int order = points[0].compareTo(points[last]);
            if (order == 0) {
                order = points[1].compareTo(points[last - 1]); // a ring: by the lesser of its two ways round
            }
            Coordinate end = points[order <= 0 ? 0 : last];
            Coordinate next = points[order <= 0 ? 1 : last - 1];
            return new Key(end.x, end.y, next.x, next.y);
        }
    }

    static CutNet of(List<Stroke> strokes, double snapMm, Work work) {
        return deduplicated(StrokeNoder.noded(strokes, snapMm, work));
    }

    private static CutNet deduplicated(List<Stroke> parts) {
        Map<Key, Integer> seen = new HashMap<>(2 * parts.size());
        var edges = new ArrayList<Edge>(parts.size());
        Map<Pair, Doubled> doubled = new LinkedHashMap<>();
        for (Stroke part : parts) {
            int source = part.source();
            Integer known = seen.putIfAbsent(Key.of(part.points()), edges.size());
            if (known == null) {
                edges.add(new Edge(GEOMETRY.createLineString(part.points()), new int[] {source}));
                continue;
            }
            Edge edge = edges.get(known);
            Pair pair = new Pair(Math.min(edge.sources[0], source), Math.max(edge.sources[0], source));
            doubled.merge(pair, new Doubled(pair.first, pair.second, edge.line.getLength(), middle(edge.line)),
                    (a, b) -> new Doubled(a.first, a.second, a.lengthMm + b.lengthMm, a.at));
            if (!edge.isOf(source)) {
                int[] more = Arrays.copyOf(edge.sources, edge.sources.length + 1);
                more[more.length - 1] = source;
                Arrays.sort(more);
                edges.set(known, new Edge(edge.line, more));
            }
        }
        return new CutNet(edges, List.copyOf(doubled.values()));
    }

    /** A point of the line near its middle. */
    static Coordinate middle(LineString line) {
        int half = line.getNumPoints() / 2;
        Coordinate before = line.getCoordinateN(half - 1);
        Coordinate after = line.getCoordinateN(half);
        return line.getNumPoints() % 2 == 1 ? after : new Coordinate((before.x + after.x) / 2, (before.y + after.y) / 2);
    }
}
