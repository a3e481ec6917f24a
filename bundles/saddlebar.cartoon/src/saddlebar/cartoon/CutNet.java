package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;

/**
 * The strokes as a plane net: every crossing and touching is a node, every edge runs from node to node, no edge twice. Noded by snap
 * rounding (J. Hobby, Practical segment intersection with finite precision output, Comput. Geom. 13, 1999; the variant of the JTS
 * library): all points land on the snapping grid, and no rounding makes a new crossing.
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

    static CutNet of(List<Stroke> strokes, double snapMm) {
        var strings = new ArrayList<NodedSegmentString>(strokes.size());
        for (Stroke stroke : strokes) {
            strings.add(new NodedSegmentString(stroke.points(), stroke.source()));
        }
        var noder = new SnapRoundingNoder(new PrecisionModel(1 / snapMm));
        noder.computeNodes(strings);
        return deduplicated(noder.getNodedSubstrings());
    }

    private static CutNet deduplicated(Collection<?> substrings) {
        Map<Key, Integer> seen = new HashMap<>(2 * substrings.size());
        var edges = new ArrayList<Edge>(substrings.size());
        Map<Pair, Doubled> doubled = new LinkedHashMap<>();
        for (Object item : substrings) {
            SegmentString part = (SegmentString) item;
            int source = (Integer) part.getData();
            Integer known = seen.putIfAbsent(Key.of(part.getCoordinates()), edges.size());
            if (known == null) {
                edges.add(new Edge(GEOMETRY.createLineString(part.getCoordinates()), new int[] {source}));
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
