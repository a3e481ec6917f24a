package saddlebar.cartoon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.densify.Densifier;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.locationtech.jts.triangulate.VoronoiDiagramBuilder;

/** The narrowest place of shapes whose figure is elementary geometry, and against the library's Voronoi diagram of the edge. */
class NarrowestWidthTest {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private static Polygon polygon(double... xy) {
        Coordinate[] points = new Coordinate[xy.length / 2 + 1];
        for (int i = 0; i < xy.length / 2; i++) {
            points[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
        }
        points[xy.length / 2] = points[0].copy();
        return GEOMETRY.createPolygon(points);
    }

    @Test
    void rectangleIsAsWideAsItsShortSide() {
        assertEquals(12, NarrowestWidth.of(polygon(0, 0, 90, 0, 90, 12, 0, 12)).widthMm(), 1e-3);
    }

    /** The waist between two semicircular bites of radius r, centres d apart, is d - 2 r wide. */
    @Property(tries = 60)
    void waistBetweenTwoBites(@ForAll @DoubleRange(min = 8, max = 20) double radius, @ForAll @DoubleRange(min = 0.5, max = 12) double waist,
            @ForAll @DoubleRange(min = 0, max = 90) double turnDeg) {
        double height = 2 * radius + waist;
        List<Double> xy = new ArrayList<>();
        add(xy, -60, 0);
        arc(xy, 0, 0, radius, 180, 0);
        add(xy, 60, 0);
        add(xy, 60, height);
        arc(xy, 0, height, radius, 0, -180);
        add(xy, -60, height);
        Polygon shape = polygon(xy.stream().mapToDouble(Double::doubleValue).toArray());
        Polygon turned = (Polygon) AffineTransformation.rotationInstance(Math.toRadians(turnDeg)).transform(shape);
        NarrowestWidth found = NarrowestWidth.of(turned);
        assertEquals(waist, found.widthMm(), 0.01);
        Coordinate at = AffineTransformation.rotationInstance(Math.toRadians(-turnDeg)).transform(new Coordinate(found.at().xMm(), found.at().yMm()),
                new Coordinate());
        assertEquals(0, at.x, 0.3);
        assertEquals(height / 2, at.y, 0.3);
    }

    private static void add(List<Double> xy, double x, double y) {
        xy.add(x);
        xy.add(y);
    }

    /** From one angle to another, upwards in y where the sine is positive. */
    private static void arc(List<Double> xy, double cx, double cy, double radius, double fromDeg, double toDeg) {
        int steps = 180;
        for (int i = 0; i <= steps; i++) {
            double angle = Math.toRadians(fromDeg + (toDeg - fromDeg) * i / steps);
            add(xy, cx + radius * Math.cos(angle), cy + radius * Math.sin(angle));
        }
    }

    /** Arms of an L: the narrower one. */
    @Test
    void narrowerArmOfAnAngle() {
        assertEquals(9, NarrowestWidth.of(polygon(0, 0, 80, 0, 80, 9, 20, 9, 20, 70, 0, 70)).widthMm(), 1e-3);
    }

    /** Two notches that point at each other: the distance of their points. */
    @Test
    void pointsOfTwoNotches() {
        Polygon shape = polygon(0, 0, 40, 0, 50, 18, 60, 0, 100, 0, 100, 50, 63, 50, 53, 22, 43, 50, 0, 50);
        assertEquals(Math.hypot(3, 4), NarrowestWidth.of(shape).widthMm(), 1e-3);
    }

    @Test
    void ringIsAsWideAsItsBand() {
        Polygon outer = (Polygon) GEOMETRY.createPoint(new Coordinate(0, 0)).buffer(40, 64);
        Polygon hole = (Polygon) GEOMETRY.createPoint(new Coordinate(6, 0)).buffer(20, 64);
        Polygon ring = (Polygon) outer.difference(hole);
        assertEquals(40 - 20 - 6, NarrowestWidth.of(ring).widthMm(), 0.02);
    }

    /** A tapering wedge has no neck: its tip is a needle point, told as such. */
    @Test
    void wedgeIsAsWideAsItsCircle() {
        Polygon wedge = polygon(0, 0, 100, -20, 100, 20); // 22.6 degrees
        assertEquals(2 * InscribedCircle.of(wedge).radiusMm(), NarrowestWidth.of(wedge).widthMm(), 1e-6);
    }

    /**
     * Outside reference: edges of the library's Voronoi diagram of the densified edge follow the medial axis. No point of them that touches two sides which face
     * each other is at a narrower place than we found, and one is at as narrow a one.
     */
    @Property(tries = 25)
    void noVoronoiVertexIsNarrower(@ForAll @DoubleRange(min = -12, max = 12) double dx, @ForAll @DoubleRange(min = 3, max = 20) double waist) {
        Polygon shape = polygon(0, 0, 40, 0, 50, 20, 60, 0, 100, 0, 100, 40 + waist, 60 + dx, 40 + waist, 50 + dx, 20 + waist, 40 + dx, 40 + waist, 0,
                40 + waist);
        double found = NarrowestWidth.of(shape).widthMm();
        Coordinate[] ring = shape.getExteriorRing().getCoordinates();
        double apart = GEOMETRY.createLineString(Arrays.copyOfRange(ring, 1, 4)).distance(GEOMETRY.createLineString(Arrays.copyOfRange(ring, 6, 9)));
        assertEquals(Math.min(apart, 2 * InscribedCircle.of(shape).radiusMm()), found, 0.01, "distance of the two notches by the library");
        Geometry edge = Densifier.densify(shape.getBoundary(), 0.5);
        var builder = new VoronoiDiagramBuilder();
        builder.setSites(edge);
        PreparedGeometry prepared = PreparedGeometryFactory.prepare(shape);
        double least = Double.MAX_VALUE;
        for (Object cell : builder.getSubdivision().getVoronoiCellPolygons(GEOMETRY)) {
            Coordinate[] corners = ((Polygon) cell).getExteriorRing().getCoordinates();
            for (int i = 1; i < corners.length; i++) {
                if (corners[i].distance(corners[i - 1]) < 200) { // longer ones lead out of the piece
                    for (double share = 0; share < 1; share += Math.min(1, 0.4 / (0.01 + corners[i].distance(corners[i - 1])))) {
                        Coordinate vertex = new LineSegment(corners[i - 1], corners[i]).pointAlong(share);
                        Point centre = GEOMETRY.createPoint(vertex);
                        if (prepared.contains(centre) && touchesFacingSides(shape, vertex)) {
                            least = Math.min(least, 2 * DistanceOp.distance(centre, shape.getBoundary()));
                        }
                    }
                }
            }
        }
        assertTrue(least >= found - 0.1, least + " by the library, " + found + " by us");
        assertTrue(least <= found + 0.3, least + " by the library, " + found + " by us");
    }

    private static boolean touchesFacingSides(Polygon shape, Coordinate centre) {
        Coordinate[] ring = shape.getExteriorRing().getCoordinates();
        double radius = DistanceOp.distance(GEOMETRY.createPoint(centre), shape.getBoundary());
        List<Coordinate> feet = new ArrayList<>();
        for (int i = 1; i < ring.length; i++) {
            Coordinate foot = new LineSegment(ring[i - 1], ring[i]).closestPoint(centre);
            if (foot.distance(centre) < radius * 1.01 + 0.02) {
                feet.add(foot);
            }
        }
        for (Coordinate a : feet) {
            for (Coordinate b : feet) {
                double cosine = ((a.x - centre.x) * (b.x - centre.x) + (a.y - centre.y) * (b.y - centre.y)) / (radius * radius);
                if (cosine < -Math.cos(Math.toRadians(30))) {
                    return true;
                }
            }
        }
        return false;
    }
}
