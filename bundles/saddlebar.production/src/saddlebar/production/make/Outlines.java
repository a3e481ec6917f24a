package saddlebar.production.make;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

import saddlebar.model.art.OutlineMm;

/** Regions in the three forms that the model, the geometry and the raster need. */
public final class Outlines {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private Outlines() {
    }

    public static OutlineMm outline(Polygon polygon) {
        if (polygon.isEmpty()) {
            return OutlineMm.EMPTY;
        }
        List<double[]> rings = new ArrayList<>();
        rings.add(ring(polygon.getExteriorRing()));
        for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
            rings.add(ring(polygon.getInteriorRingN(hole)));
        }
        return OutlineMm.of(rings);
    }

    private static double[] ring(LinearRing ring) {
        CoordinateSequence points = ring.getCoordinateSequence();
        double[] xy = new double[2 * (points.size() - 1)];
        for (int i = 0; i < points.size() - 1; i++) {
            xy[2 * i] = points.getX(i);
            xy[2 * i + 1] = points.getY(i);
        }
        return xy;
    }

    public static Polygon polygon(OutlineMm outline) {
        if (outline.isEmpty()) {
            return GEOMETRY.createPolygon();
        }
        LinearRing[] holes = new LinearRing[outline.rings() - 1];
        for (int hole = 1; hole < outline.rings(); hole++) {
            holes[hole - 1] = linearRing(outline.ring(hole));
        }
        return GEOMETRY.createPolygon(linearRing(outline.ring(0)), holes);
    }

    private static LinearRing linearRing(double[] xy) {
        Coordinate[] points = new Coordinate[xy.length / 2 + 1];
        for (int i = 0; i < xy.length / 2; i++) {
            points[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
        }
        points[xy.length / 2] = points[0].copy();
        return GEOMETRY.createLinearRing(points);
    }

    /** A geometry of polygons as a path on a raster: (mm - origin) * px a mm; holes stay open by the even-odd rule. */
    static Path2D path(Geometry region, double originXMm, double originYMm, double pxPerMm) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        for (int part = 0; part < region.getNumGeometries(); part++) {
            if (region.getGeometryN(part) instanceof Polygon polygon && !polygon.isEmpty()) {
                append(path, polygon.getExteriorRing(), originXMm, originYMm, pxPerMm);
                for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                    append(path, polygon.getInteriorRingN(hole), originXMm, originYMm, pxPerMm);
                }
            }
        }
        return path;
    }

    private static void append(Path2D path, LinearRing ring, double originXMm, double originYMm, double pxPerMm) {
        CoordinateSequence points = ring.getCoordinateSequence();
        for (int i = 0; i < points.size() - 1; i++) {
            double x = (points.getX(i) - originXMm) * pxPerMm;
            double y = (points.getY(i) - originYMm) * pxPerMm;
            if (i == 0) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        path.closePath();
    }
}
