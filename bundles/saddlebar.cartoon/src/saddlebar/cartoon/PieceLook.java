package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.DistanceOp;

import saddlebar.model.problem.Problem;

/** One face looked at closely: its glass, and all that makes it hard to cut. Faces know nothing of each other here, so that all cores help. */
final class PieceLook {
    /** Parts of a glass below this are the arithmetic's, not the gap's. */
    private static final double SPECK_MM2 = 0.01;

    private final CartoonSettings settings;

    /** The glass of a face, its problems, and proposals against them. */
    record Seen(Polygon glass, List<Problem> problems, List<Relief> reliefs) {
    }

    PieceLook(CartoonSettings settings) {
        this.settings = settings;
    }

    /**
     * @param left   what the gap leaves of the face, in one part or several
     * @param within numbers of the pieces that lie wholly in its holes
     */
    Seen at(int number, Polygon face, Boundary boundary, InscribedCircle circle, Geometry left, List<Integer> within) {
        List<Problem> problems = new ArrayList<>();
        Polygon glass = glass(number, left, circle, problems);
        CutLimits limits = settings.limitsOf(number);
        double widthMm = 2 * circle.radiusMm();
        holes(number, face, within, problems);
        if (widthMm < limits.sliverWidthMm() || face.getArea() < limits.sliverAreaMm2()) {
            problems.add(CutlineProblems.sliver(number, circle.xMm(), circle.yMm(), widthMm, face.getArea()));
            return new Seen(glass, problems, List.of()); // its shape does not matter any more
        }
        List<NeedlePoints.Needle> needles = NeedlePoints.of(boundary, limits.needleDeg());
        for (NeedlePoints.Needle needle : needles) {
            boolean hard = needle.angleDeg() < limits.hardNeedleDeg();
            problems.add(CutlineProblems.needlePoint(number, needle.x(), needle.y(), needle.angleDeg(), hard));
        }
        if (widthMm < limits.narrowMm()) {
            problems.add(CutlineProblems.narrowPiece(number, circle.xMm(), circle.yMm(), widthMm));
        } else if (limits.narrowMm() > 0) {
            for (NarrowPlaces.Narrow narrow : NarrowPlaces.of(boundary, limits.narrowMm(), limits.needleDeg(), needles)) {
                problems.add(CutlineProblems.neck(number, narrow.x(), narrow.y(), narrow.widthMm()));
            }
        }
        List<Relief> reliefs = new ArrayList<>();
        insideCurves(number, boundary.rings().get(0), limits, problems, new ReliefCuts(number, face, boundary, limits), reliefs);
        return new Seen(glass, problems, reliefs);
    }

    /** A hole that touches the edge can be reached by a score; where it touches, the glass has no width. */
    private static void holes(int number, Polygon face, List<Integer> within, List<Problem> problems) {
        List<Coordinate> touching = TouchingPoints.of(face);
        touching.forEach(at -> problems.add(CutlineProblems.touchingPoint(number, at.x, at.y)));
        for (int i = 0; i < face.getNumInteriorRing(); i++) {
            Coordinate[] ring = face.getInteriorRingN(i).getCoordinates();
            if (Arrays.stream(ring).noneMatch(touching::contains)) {
                problems.add(CutlineProblems.hole(number, ring[0].x, ring[0].y, within));
                return; // one is enough to redraw the piece
            }
        }
    }

    private static void insideCurves(int number, RingPath outer, CutLimits limits, List<Problem> problems, ReliefCuts cuts, List<Relief> reliefs) {
        if (limits.insideCurve() > 0) {
            for (InsideCurves.Bay bay : InsideCurves.bays(outer, limits.insideCurve(), limits.insideRadiusMm())) {
                boolean hard = limits.isHard(bay.ratio());
                problems.add(CutlineProblems.deepInsideCurve(number, bay.x(), bay.y(), bay.depthMm(), bay.chordMm(), hard));
                reliefs.addAll(cuts.of(bay, hard));
            }
        }
        if (limits.insideRadiusMm() > 0) {
            for (InsideCurves.Tight tight : InsideCurves.tight(outer, limits.insideRadiusMm())) {
                problems.add(CutlineProblems.tightInsideCurve(number, tight.x(), tight.y(), tight.radiusMm()));
            }
        }
    }

    /** What the gap leaves of a face, specks of arithmetic left out. */
    static Geometry left(CartoonSettings settings, Sides sides, SideJoins joins, Polygon face) {
        double outer = settings.edgeAllowanceMm();
        if (settings.join().gapMm() == 0 && outer == 0 && settings.localJoins().isEmpty()) {
            return face;
        }
        Geometry left = GlassInset.of(face, (from, to) -> {
            int side = sides.side(from, to);
            return sides.isInner(side) ? joins.of(side).gapMm() / 2 : outer;
        });
        if (left instanceof Polygon) {
            return left;
        }
        List<Polygon> parts = new ArrayList<>();
        for (int i = 0; i < left.getNumGeometries(); i++) {
            if (left.getGeometryN(i) instanceof Polygon part && part.getArea() > SPECK_MM2) {
                parts.add(part);
            }
        }
        return parts.size() == 1 ? parts.get(0) : CutNet.GEOMETRY.createMultiPolygon(parts.toArray(new Polygon[0]));
    }

    private static Polygon glass(int number, Geometry left, InscribedCircle circle, List<Problem> problems) {
        Polygon largest = null;
        for (int i = 0; i < left.getNumGeometries(); i++) {
            Polygon part = (Polygon) left.getGeometryN(i);
            largest = part.getArea() > SPECK_MM2 && (largest == null || part.getArea() > largest.getArea()) ? part : largest;
        }
        if (largest == null) {
            problems.add(CutlineProblems.gapEatsPiece(number, circle.xMm(), circle.yMm()));
            return CutNet.GEOMETRY.createPolygon();
        }
        if (left.getNumGeometries() > 1) {
            Coordinate at = between(left, largest);
            problems.add(CutlineProblems.gapSplitsPiece(number, at.x, at.y, left.getNumGeometries()));
        }
        return largest;
    }

    /** Middle of the shortest way from the largest part to another: where the gap took the glass away. */
    private static Coordinate between(Geometry parts, Polygon largest) {
        Coordinate[] nearest = null;
        for (int i = 0; i < parts.getNumGeometries(); i++) {
            Geometry part = parts.getGeometryN(i);
            if (part != largest) {
                Coordinate[] way = DistanceOp.nearestPoints(largest, part);
                nearest = nearest == null || way[0].distance(way[1]) < nearest[0].distance(nearest[1]) ? way : nearest;
            }
        }
        return nearest == null
                ? largest.getCoordinate()
                : new Coordinate((nearest[0].x + nearest[1].x) / 2, (nearest[0].y + nearest[1].y) / 2);
    }
}
