package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.polygonize.Polygonizer;

import saddlebar.model.work.Work;

/**
 * The closed regions of a net, and what of the net closes nothing. Faces narrower on average than a hair (2 x area / perimeter; for a
 * strip that is its width) are not glass but the space between two drawings of one line: the edges to the neighbour that shares most are
 * taken out, and the rest is closed anew, at most {@value #MOST_ROUNDS} times.
 *
 * @param faces    no two overlap; vertices shared to the bit
 * @param edges    what is left of the net after mending, dangling edges too
 * @param dangles  edges of which one end leads nowhere
 * @param bridges  edges with the same face on both sides
 * @param lost     rings that do not bound a face (cannot come from a noded net; told rather than assumed)
 * @param hairs    the faces that were hairs
 */
record Faces(List<Polygon> faces, List<CutNet.Edge> edges, List<CutNet.Edge> dangles, List<CutNet.Edge> bridges, List<LineString> lost,
        List<Hair> hairs) {
    private static final int MOST_ROUNDS = 4;

    /** A face that was no glass: a point on its edge, and its length, half its perimeter. */
    record Hair(Coordinate at, double lengthMm) {
    }

    static Faces of(CutNet net, double hairMm, Work work) {
        List<CutNet.Edge> edges = net.edges();
        var hairs = new ArrayList<Hair>();
        for (int round = 0;; round++) {
            work.checkpoint();
            Faces found = closed(edges, hairs);
            if (hairMm == 0 || round == MOST_ROUNDS) {
                return found;
            }
            List<CutNet.Edge> kept = withoutHairs(found, hairMm);
            if (kept.size() == edges.size()) {
                return found;
            }
            edges = kept;
        }
    }

    @SuppressWarnings("unchecked") // the library's collections are raw
    private static Faces closed(List<CutNet.Edge> edges, List<Hair> hairs) {
        var polygonizer = new Polygonizer();
        for (CutNet.Edge edge : edges) {
            polygonizer.add(edge.line());
        }
        var faces = new ArrayList<Polygon>(polygonizer.getPolygons());
        var lost = new ArrayList<LineString>(polygonizer.getInvalidRingLines());
        // the library walks hash sets: without an order of our own, rings would start elsewhere on every run
        faces.forEach(Polygon::normalize);
        faces.sort(null);
        lost.sort(null);
        return new Faces(faces, edges, among(edges, polygonizer.getDangles()), among(edges, polygonizer.getCutEdges()), lost, hairs);
    }

    /** The edges that the lines belong to, in the order of the net. */
    private static List<CutNet.Edge> among(List<CutNet.Edge> edges, Collection<LineString> lines) {
        Set<LineString> wanted = Collections.newSetFromMap(new IdentityHashMap<>());
        wanted.addAll(lines);
        return edges.stream().filter(edge -> wanted.contains(edge.line())).toList();
    }

    private static List<CutNet.Edge> withoutHairs(Faces found, double hairMm) {
        List<Polygon> faces = found.faces;
        boolean[] isHair = new boolean[faces.size()];
        boolean any = false;
        for (int i = 0; i < faces.size(); i++) {
            isHair[i] = 2 * faces.get(i).getArea() < hairMm * faces.get(i).getLength();
            any |= isHair[i];
        }
        if (!any) {
            return found.edges;
        }
        var sides = new Sides(faces);
        int[] taker = takers(found.edges, sides, isHair);
        for (int i = 0; i < taker.length; i++) {
            if (taker[i] != Sides.OUTSIDE) {
                found.hairs.add(new Hair(CutNet.middle(faces.get(i).getExteriorRing()), faces.get(i).getLength() / 2));
            }
        }
        return found.edges.stream().filter(edge -> {
            int side = sides.side(edge.line().getCoordinateN(0), edge.line().getCoordinateN(1));
            return side < 0 || !sides.isInner(side) || taker[sides.first(side)] != sides.second(side)
                    && taker[sides.second(side)] != sides.first(side);
        }).toList();
    }

    /** For each hair the neighbour that takes it in: the one with the longest shared edge, a piece rather than another hair. */
    private static int[] takers(List<CutNet.Edge> edges, Sides sides, boolean[] isHair) {
        List<Map<Integer, Double>> shared = new ArrayList<>();
        for (boolean hair : isHair) {
            shared.add(hair ? new HashMap<>() : Map.of());
        }
        for (CutNet.Edge edge : edges) {
            int side = sides.side(edge.line().getCoordinateN(0), edge.line().getCoordinateN(1));
            if (side >= 0 && sides.isInner(side)) {
                for (int face : new int[] {sides.first(side), sides.second(side)}) {
                    if (isHair[face]) {
                        shared.get(face).merge(sides.beyond(side, face), edge.line().getLength(), Double::sum);
                    }
                }
            }
        }
        int[] taker = new int[isHair.length];
        Arrays.fill(taker, Sides.OUTSIDE);
        for (int face = 0; face < isHair.length; face++) {
            double most = 0;
            for (var entry : new TreeMap<>(shared.get(face)).entrySet()) { // ascending, so that ties fall the same way on every run
                double weight = isHair[entry.getKey()] ? entry.getValue() / 1e6 : entry.getValue();
                if (weight > most) {
                    most = weight;
                    taker[face] = entry.getKey();
                }
            }
        }
        return taker;
    }
}
