package saddlebar.artwork.drawing;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** What a clip leaves of lines and areas. Belongs to one thread. */
final class Clip {
    private static final GeometryFactory MM = new GeometryFactory();
    /** Clips are flattened as finely as cutlines at their finest default. */
    private static final double FLATNESS_MM = 0.01;

    private final Geometry inside;
    private final PreparedGeometry prepared;

    private Clip(Geometry inside) {
        this.inside = inside;
        this.prepared = PreparedGeometryFactory.prepare(inside);
    }

    static Clip of(Shape clipMm) {
        return new Clip(polygons(CurveSteps.of(new Area(clipMm), new AffineTransform(), FLATNESS_MM)));
    }

    /** What lies in both. */
    Clip and(Clip other) {
        return new Clip(OverlayNGRobust.overlay(inside, other.inside, OverlayNG.INTERSECTION));
    }

    /** What is left of a line: itself, pieces of it, or nothing. */
    List<CurveSteps.Part> lines(CurveSteps.Part part) {
        LineString line = MM.createLineString(coordinates(part.xy(), part.closed()));
        if (!inside.getEnvelopeInternal().intersects(line.getEnvelopeInternal())) {
            return List.of();
        }
        if (prepared.covers(line)) {
            return List.of(part);
        }
        List<CurveSteps.Part> left = new ArrayList<>();
        Geometry cut = OverlayNGRobust.overlay(inside, line, OverlayNG.INTERSECTION);
        for (int i = 0; i < cut.getNumGeometries(); i++) {
            if (cut.getGeometryN(i) instanceof LineString piece && piece.getNumPoints() >= 2) {
                left.add(part(piece));
            }
        }
        return left;
    }

    /** What is left of an area given by its rings, even-odd or not; null if the clip does not touch it. */
    List<CurveSteps.Part> area(Shape shapeMm, List<CurveSteps.Part> rings) {
        Envelope all = new Envelope();
        for (CurveSteps.Part ring : rings) {
            for (int i = 0; i < ring.xy().length; i += 2) {
                all.expandToInclude(ring.xy()[i], ring.xy()[i + 1]);
            }
        }
        if (!inside.getEnvelopeInternal().intersects(all)) {
            return List.of();
        }
        if (prepared.covers(MM.toGeometry(all))) {
            return null;
        }
        Geometry own = polygons(CurveSteps.of(new Area(shapeMm), new AffineTransform(), FLATNESS_MM));
        List<CurveSteps.Part> left = new ArrayList<>();
        Geometry cut = OverlayNGRobust.overlay(inside, own, OverlayNG.INTERSECTION);
        for (int i = 0; i < cut.getNumGeometries(); i++) {
            if (cut.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                left.add(part(polygon.getExteriorRing()));
                for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                    left.add(part(polygon.getInteriorRingN(hole)));
                }
            }
        }
        return left;
    }

    /** Rings that do not cross: what an odd number of them goes round. */
    private static Geometry polygons(List<CurveSteps.Part> rings) {
        Geometry all = MM.createPolygon();
        for (CurveSteps.Part ring : rings) {
            if (ring.xy().length >= 6) {
                Geometry one = MM.createPolygon(coordinates(ring.xy(), true));
                if (!one.isValid()) {
                    one = one.buffer(0); // a step of the flattening may cross its neighbour by less than the flatness
                }
                all = all.isEmpty() ? one : OverlayNGRobust.overlay(all, one, OverlayNG.SYMDIFFERENCE);
            }
        }
        return all;
    }

    private static Coordinate[] coordinates(double[] xy, boolean closed) {
        int n = xy.length / 2;
        Coordinate[] points = new Coordinate[closed ? n + 1 : n];
        for (int i = 0; i < n; i++) {
            points[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
        }
        if (closed) {
            points[n] = points[0].copy();
        }
        return points;
    }

    private static CurveSteps.Part part(LineString line) {
        boolean ring = line instanceof LinearRing || line.isClosed() && line.getNumPoints() > 3;
        int n = line.getNumPoints() - (ring ? 1 : 0);
        double[] xy = new double[2 * n];
        for (int i = 0; i < n; i++) {
            xy[2 * i] = line.getCoordinateN(i).x;
            xy[2 * i + 1] = line.getCoordinateN(i).y;
        }
        return new CurveSteps.Part(xy, ring);
    }
}
