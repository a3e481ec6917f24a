package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.CoverageUnion;
import org.locationtech.jts.operation.polygonize.Polygonizer;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.PlaceMm;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;

/** One making of a cartoon, from lines to checked pieces; see {@link CartoonMaker}. */
final class CartoonRun {
    static final int UNITS = 100;
    /** Below this a shared edge is a touch, not a joint. */
    private static final double JOINT_MM = 0.1;
    /** More doubled lines than this are told in one note: the drawing is made of closed shapes side by side. */
    private static final int MOST_DOUBLED_TOLD = 20;
    private static final int MOST_PINCH_ROUNDS = 2;
    /** A locked piece that shares less with what it was has been changed by the drawing. */
    private static final double SAME_SHAPE = 0.99;

    private final List<DrawnLine> cutline;
    private final CartoonSettings settings;
    private final Work work;
    private final List<Problem> problems = new ArrayList<>();

    CartoonRun(List<DrawnLine> cutline, CartoonSettings settings, Work work) {
        this.cutline = List.copyOf(cutline);
        this.settings = settings;
        this.work = work;
    }

    Cartoon cartoon(List<NumberedFace> before, int firstFree) {
        List<Stroke> strokes = CutlineGuard.strokes(cutline);
        strokes = CarriedEnds.of(strokes, settings.carryOnMm(), settings.shortDangleMm(), work);
        work.advance(10);
        Closed closed = closed(strokes, before);
        work.advance(60);
        List<Polygon> faces = closed.inside;
        List<InscribedCircle> circles = each(faces.size(), i -> InscribedCircle.of(faces.get(i), closed.boundaries.get(i)));
        work.advance(10);
        Numbered numbered = numbers(faces, circles, before, firstFree);
        int[] numbers = numbered.numbers;
        List<List<Integer>> within = within(closed.sides, faces, numbers);
        var look = new PieceLook(settings);
        List<PieceLook.Seen> seen = each(faces.size(),
                i -> look.at(numbers[i], faces.get(i), closed.boundaries.get(i), circles.get(i), closed.left.get(i), within.get(i)));
        work.advance(15);
        seen.forEach(one -> problems.addAll(one.problems()));
        List<TreeSet<String>> codes = IntStream.range(0, faces.size()).mapToObj(i -> new TreeSet<String>()).toList();
        List<Relief> reliefs = seen.stream().flatMap(one -> one.reliefs().stream()).sorted(Comparator.comparingInt(Relief::piece)).toList();
        tellLines(closed, numbers, codes);
        tellParts(closed.sides, faces, circles, numbers);
        Geometry panel = CoverageUnion.union(CutNet.GEOMETRY.buildGeometry(faces)).norm();
        tellHinges(closed.sides, panel, faces.size());
        Euler euler = EulerCount.of(closed.sides, faceCount(closed.net, faces, closed.sides));
        if (!euler.holds()) {
            problems.add(CutlineProblems.netUnproved(euler));
        }
        List<List<Integer>> neighbours = neighbours(closed.sides, faces.size(), numbers);
        List<CartoonPiece> pieces = pieces(faces, circles, numbers, seen, neighbours, codes);
        problems.sort(Problem.WORST_FIRST);
        work.advance(5);
        return new Cartoon(panel, pieces, problems, euler, numbered.revision, reliefs, closed.joins.lengths(closed.sides));
    }

    /** The net closed to faces, those inside the outline with their boundaries and what the gap leaves of them. */
    private record Closed(Faces net, List<CutNet.Doubled> doubled, List<Polygon> inside, List<Polygon> outside, Sides sides,
            SideJoins joins, List<Boundary> boundaries, List<Geometry> left) {
    }

    private Closed closed(List<Stroke> drawn, List<NumberedFace> before) {
        List<Stroke> strokes = drawn;
        for (int round = 0;; round++) {
            Closed closed = closedOnce(CutNet.of(strokes, settings.snapMm(), work), before);
            List<Stroke> links = new ArrayList<>();
            for (int i = 0; i < closed.left.size(); i++) {
                links.addAll(Pinches.links(closed.boundaries.get(i), closed.left.get(i), settings.hairMm()));
            }
            if (links.isEmpty() || round == MOST_PINCH_ROUNDS) {
                for (Polygon face : closed.outside) {
                    Coordinate at = face.getInteriorPoint().getCoordinate();
                    problems.add(CutlineProblems.pieceOutside(at.x, at.y, face.getArea()));
                }
                return closed;
            }
            strokes = new ArrayList<>(strokes);
            strokes.addAll(links);
        }
    }

    private Closed closedOnce(CutNet net, List<NumberedFace> before) {
        Faces found = Faces.of(net, settings.hairMm(), work);
        if (found.faces().isEmpty()) {
            throw nothingCloses(found);
        }
        List<Polygon> inside = new ArrayList<>();
        List<Polygon> outside = new ArrayList<>();
        sortOut(net, found.faces(), inside, outside);
        var sides = new Sides(inside);
        List<Boundary> boundaries = each(inside.size(), i -> new Boundary(inside.get(i)));
        SideJoins joins = SideJoins.of(settings, found.edges(), sides, keptNumbers(inside, before));
        List<Geometry> left = each(inside.size(), i -> PieceLook.left(settings, sides, joins, inside.get(i)));
        return new Closed(found, net.doubled(), inside, outside, sides, joins, boundaries, left);
    }

    /** Numbers that faces keep, where a join between pieces is asked for by number; a new piece cannot be named yet. */
    private int[] keptNumbers(List<Polygon> faces, List<NumberedFace> before) {
        boolean named = settings.localJoins().stream().anyMatch(LocalJoin::namesPieces);
        return named ? KeptNumbers.of(before, faces, 1).numbers().stream().mapToInt(Integer::intValue).toArray() : new int[faces.size()];
    }

    /** The same for every piece, on all cores; the list is in the order of the pieces. */
    private <T> List<T> each(int count, IntFunction<T> what) {
        IntStream all = IntStream.range(0, count);
        return (count < 32 ? all : all.parallel()).mapToObj(i -> {
            work.checkpoint();
            return what.apply(i);
        }).toList();
    }

    private Refusal nothingCloses(Faces closed) {
        Coordinate end = closed.dangles().isEmpty()
                ? closed.edges().get(0).line().getCoordinateN(0)
                : closed.dangles().get(0).line().getCoordinateN(0);
        return new Refusal("cutline", "none of its " + cutline.size() + " lines closes a piece",
                "join the ends of the lines so that they enclose glass; the first loose line starts at " + Math.round(end.x) + ", "
                        + Math.round(end.y) + " mm");
    }

    // ---- which faces

    private void sortOut(CutNet net, List<Polygon> faces, List<Polygon> inside, List<Polygon> outside) {
        if (settings.outlineElement().isEmpty()) {
            inside.addAll(faces);
            return;
        }
        var locator = new IndexedPointInAreaLocator(outline(net, settings.outlineElement().get()));
        for (Polygon face : faces) {
            boolean isOutside = locator.locate(face.getInteriorPoint().getCoordinate()) == Location.EXTERIOR;
            (isOutside ? outside : inside).add(face);
        }
        if (inside.isEmpty()) {
            throw new Refusal("element " + settings.outlineElement().get(), "the panel's outline holds no piece",
                    "name the outline that lies around the cutline");
        }
    }

    private Geometry outline(CutNet net, String element) {
        boolean[] isOutline = new boolean[cutline.size()];
        boolean any = false;
        for (int source = 0; source < isOutline.length; source++) {
            isOutline[source] = cutline.get(source).element().equals(element);
            any |= isOutline[source];
        }
        if (!any) {
            throw new Refusal("element " + element, "the cutline has no such element to be the panel's outline",
                    "name one of its elements by its id, or leave the outline to the outer edge of the pieces");
        }
        var polygonizer = new Polygonizer();
        for (CutNet.Edge edge : net.edges()) {
            if (Arrays.stream(edge.sources()).anyMatch(source -> source >= 0 && isOutline[source])) {
                polygonizer.add(edge.line());
            }
        }
        List<Polygon> enclosed = new ArrayList<>();
        for (Object polygon : polygonizer.getPolygons()) {
            enclosed.add((Polygon) polygon);
        }
        if (enclosed.isEmpty()) {
            throw new Refusal("element " + element, "the panel's outline does not close", "join its ends");
        }
        return CoverageUnion.union(CutNet.GEOMETRY.buildGeometry(enclosed));
    }

    /** Faces of the net that the sides make, the outer one too: regions left out may be enclosed by pieces. */
    private static int faceCount(Faces closed, List<Polygon> faces, Sides sides) {
        if (faces.size() == closed.faces().size()) {
            return faces.size() + 1;
        }
        var polygonizer = new Polygonizer();
        for (CutNet.Edge edge : closed.edges()) {
            if (sides.side(edge.line().getCoordinateN(0), edge.line().getCoordinateN(1)) >= 0) {
                polygonizer.add(edge.line());
            }
        }
        return polygonizer.getPolygons().size() + 1;
    }

    // ---- numbers

    /** The number of each face, and what a revision changed. */
    private record Numbered(int[] numbers, Optional<Revision> revision) {
    }

    private Numbered numbers(List<Polygon> faces, List<InscribedCircle> circles, List<NumberedFace> before, int firstFree) {
        int[] order = PieceOrder.of(settings.numbering(), faces, circles.stream().map(circle -> new PlaceMm(circle.xMm(), circle.yMm())).toList());
        int[] numbers = new int[faces.size()];
        if (before.isEmpty()) {
            for (int rank = 0; rank < order.length; rank++) {
                numbers[order[rank]] = firstFree + rank;
            }
            return new Numbered(numbers, Optional.empty());
        }
        List<Polygon> inOrder = Arrays.stream(order).mapToObj(faces::get).toList();
        KeptNumbers kept = KeptNumbers.of(before, inOrder, firstFree);
        Map<Integer, InscribedCircle> at = new HashMap<>();
        for (int rank = 0; rank < order.length; rank++) {
            numbers[order[rank]] = kept.numbers().get(rank);
            at.put(numbers[order[rank]], circles.get(order[rank]));
        }
        tellRevision(kept, before, at);
        return new Numbered(numbers, Optional.of(kept.revision()));
    }

    private void tellRevision(KeptNumbers kept, List<NumberedFace> before, Map<Integer, InscribedCircle> at) {
        Map<Integer, NumberedFace> old = new HashMap<>();
        before.forEach(piece -> old.put(piece.number(), piece));
        if (!kept.shift().equals(DrawingShift.NONE)) {
            problems.add(CutlineProblems.drawingMoved(kept.shift().xMm(), kept.shift().yMm()));
        }
        kept.split().forEach((number, into) -> {
            Coordinate place = placeNow(kept, old.get(number));
            String shares = String.join(", ", into.stream().map(now -> shareOf(kept, number, now)).toList());
            problems.add(CutlineProblems.split(number, place.x, place.y, named(into), shares));
        });
        kept.merged().forEach((number, olds) -> problems.add(CutlineProblems.merged(number, at.get(number).xMm(), at.get(number).yMm(),
                olds.toString().replaceAll("[\\[\\]]", ""))));
        kept.moved().forEach(number -> problems.add(CutlineProblems.moved(number, at.get(number).xMm(), at.get(number).yMm())));
        for (int number : kept.gone()) {
            Coordinate place = placeNow(kept, old.get(number));
            problems.add(CutlineProblems.gone(number, place.x, place.y));
        }
        for (Became one : kept.became()) {
            if (one.keepsNumber() && old.get(one.before()).locked() && Math.min(one.shareOfBefore(), one.shareOfNow()) < SAME_SHAPE) {
                problems.add(CutlineProblems.lockedChanged(one.now(), at.get(one.now()).xMm(), at.get(one.now()).yMm(), one.shareOfBefore()));
            }
        }
    }

    private static String shareOf(KeptNumbers kept, int before, int now) {
        return kept.became().stream().filter(one -> one.before() == before && one.now() == now)
                .map(one -> Math.round(100 * one.shareOfBefore()) + " %").findFirst().orElse("");
    }

    private static Coordinate placeNow(KeptNumbers kept, NumberedFace old) {
        return kept.shift().moved(old.face()).getInteriorPoint().getCoordinate();
    }

    private static String named(List<Integer> pieces) {
        return String.join(", ", pieces.stream().map(CutlineProblems::piece).toList());
    }

    // ---- what lines do wrong

    private void tellLines(Closed closed, int[] numbers, List<TreeSet<String>> codes) {
        var places = new PiecePlaces(closed.boundaries);
        var ends = new OpenEnds(cutline, closed.net.edges(), settings.shortDangleMm(), settings.limits().endNearMm());
        for (OpenEnds.FreeEnd end : ends.freeEnds(closed.net.dangles())) {
            problems.add(end.problem());
            int piece = places.pieceAt(end.end().x, end.end().y);
            if (piece >= 0) {
                codes.get(piece).add(end.problem().code());
                if (end.fromJoint() && codes.get(piece).add(CutlineProblems.CUT_ENDS_INSIDE)) {
                    problems.add(CutlineProblems.cutEndsInside(numbers[piece], end.end().x, end.end().y));
                }
            }
        }
        for (Problem bridge : ends.dividingNothing(closed.net.bridges())) {
            problems.add(bridge);
            PlaceMm at = bridge.at().orElseThrow();
            int piece = places.pieceAt(at.xMm(), at.yMm());
            if (piece >= 0) {
                codes.get(piece).add(bridge.code());
            }
        }
        closed.net.lost().forEach(ring -> problems.add(CutlineProblems.lostRing(ring.getCoordinateN(0).x, ring.getCoordinateN(0).y)));
        tellDoubled(closed);
    }

    private void tellDoubled(Closed closed) {
        List<Problem> doubled = new ArrayList<>();
        for (CutNet.Doubled one : closed.doubled) {
            if (one.first() != Pinches.LINK && one.lengthMm() > settings.shortDangleMm()) {
                String where = CutlineProblems.where(cutline.get(one.second()));
                doubled.add(CutlineProblems.doubledLine(where, one.at().x, one.at().y, one.lengthMm()));
            }
        }
        for (Faces.Hair hair : closed.net.hairs()) {
            if (hair.lengthMm() > settings.shortDangleMm()) { // a smaller one is a crossing of several lines that do not quite meet
                doubled.add(CutlineProblems.hair(hair.at().x, hair.at().y));
            }
        }
        if (doubled.size() <= MOST_DOUBLED_TOLD) {
            problems.addAll(doubled);
        } else {
            PlaceMm first = doubled.get(0).at().orElseThrow();
            problems.add(CutlineProblems.manyDoubled(doubled.size(), first.xMm(), first.yMm()));
        }
    }

    /** For each face the numbers of the pieces that lie wholly within it: those that have it alone all round their outer edge. */
    private static List<List<Integer>> within(Sides sides, List<Polygon> faces, int[] numbers) {
        List<List<Integer>> within = IntStream.range(0, faces.size()).<List<Integer>>mapToObj(i -> new ArrayList<>()).toList();
        for (int face = 0; face < faces.size(); face++) {
            Coordinate[] ring = faces.get(face).getExteriorRing().getCoordinates();
            int around = sides.beyond(sides.side(ring[0], ring[1]), face);
            for (int i = 2; i < ring.length && around != Sides.OUTSIDE; i++) {
                around = sides.beyond(sides.side(ring[i - 1], ring[i]), face) == around ? around : Sides.OUTSIDE;
            }
            if (around != Sides.OUTSIDE) {
                within.get(around).add(numbers[face]);
            }
        }
        within.forEach(Collections::sort);
        return within;
    }

    private void tellHinges(Sides sides, Geometry panel, int faces) {
        CutLimits limits = settings.limits();
        if (limits.hingeShare() > 0 && faces > 1) {
            for (Hinges.Hinge hinge : Hinges.of(sides, panel, limits.hingeShare(), limits.hingeDeviationMm(), work)) {
                problems.add(CutlineProblems.hinge(hinge.x(), hinge.y(), hinge.lengthMm(), hinge.share()));
            }
        }
    }

    /** Parts of the panel that no joint ties to its largest part: told at their largest piece. */
    private void tellParts(Sides sides, List<Polygon> faces, List<InscribedCircle> circles, int[] numbers) {
        int[] parent = IntStream.range(0, faces.size()).toArray();
        for (int side = 0; side < sides.sideCount(); side++) {
            if (sides.isInner(side)) {
                parent[root(parent, sides.first(side))] = root(parent, sides.second(side));
            }
        }
        double[] area = new double[faces.size()];
        int[] largest = new int[faces.size()];
        Arrays.fill(largest, -1);
        for (int face = 0; face < faces.size(); face++) {
            int part = root(parent, face);
            area[part] += faces.get(face).getArea();
            if (largest[part] < 0 || faces.get(face).getArea() > faces.get(largest[part]).getArea()) {
                largest[part] = face;
            }
        }
        int main = IntStream.range(0, area.length).boxed().max(Comparator.comparingDouble(part -> area[part])).orElseThrow();
        for (int part = 0; part < area.length; part++) {
            if (part != main && parent[part] == part) {
                InscribedCircle at = circles.get(largest[part]);
                problems.add(CutlineProblems.panelApart(numbers[largest[part]], at.xMm(), at.yMm()));
            }
        }
    }

    private static int root(int[] parent, int face) {
        int at = face;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }

    // ---- pieces

    private static List<List<Integer>> neighbours(Sides sides, int faces, int[] numbers) {
        List<Map<Integer, Double>> shared = IntStream.range(0, faces).<Map<Integer, Double>>mapToObj(i -> new HashMap<>()).toList();
        for (int side = 0; side < sides.sideCount(); side++) {
            if (sides.isInner(side)) {
                shared.get(sides.first(side)).merge(sides.second(side), sides.length(side), Double::sum);
                shared.get(sides.second(side)).merge(sides.first(side), sides.length(side), Double::sum);
            }
        }
        return shared.stream().map(with -> with.entrySet().stream().filter(entry -> entry.getValue() > JOINT_MM)
                .map(entry -> numbers[entry.getKey()]).sorted().toList()).toList();
    }

    private List<CartoonPiece> pieces(List<Polygon> faces, List<InscribedCircle> circles, int[] numbers, List<PieceLook.Seen> seen,
            List<List<Integer>> neighbours, List<TreeSet<String>> codes) {
        Map<String, TreeSet<String>> byWhere = new HashMap<>();
        for (int i = 0; i < faces.size(); i++) {
            byWhere.put(CutlineProblems.piece(numbers[i]), codes.get(i));
        }
        for (Problem problem : problems) {
            TreeSet<String> piece = byWhere.get(problem.where());
            if (piece != null) {
                piece.add(problem.code());
            }
        }
        List<CartoonPiece> pieces = new ArrayList<>();
        for (int i = 0; i < faces.size(); i++) {
            Polygon face = faces.get(i);
            Polygon glass = seen.get(i).glass();
            InscribedCircle circle = circles.get(i);
            pieces.add(new CartoonPiece(numbers[i], face, glass, face.getArea(), glass.getArea(), face.getLength(),
                    new PlaceMm(circle.xMm(), circle.yMm()), circle.radiusMm(), neighbours.get(i), List.copyOf(codes.get(i))));
        }
        pieces.sort(Comparator.comparingInt(CartoonPiece::number));
        return pieces;
    }
}
