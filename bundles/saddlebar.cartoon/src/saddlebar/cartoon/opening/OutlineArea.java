package saddlebar.cartoon.opening;

import java.util.Locale;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.Refusal;

/** An outline as an area: grown, shrunk, cut by level lines. */
final class OutlineArea {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    /** A corner grows to its mitre; one sharper than 39 degrees, such as the tip of an ogee, is cut off at three times the distance. */
    private static final double MITRE_LIMIT = 3;

    private OutlineArea() {
    }

    /** @throws Refusal if the line is not closed or crosses itself */
    static Polygon of(DrawnLine line) {
        if (!line.closed() || line.points() < 3) {
            throw new Refusal(line.element(), "the outline does not close", "join its last point to its first");
        }
        Coordinate[] points = new Coordinate[line.points() + 1];
        for (int i = 0; i < line.points(); i++) {
            points[i] = new Coordinate(line.x(i), line.y(i));
        }
        points[line.points()] = points[0].copy();
        Polygon polygon = GEOMETRY.createPolygon(points);
        if (!polygon.isValid() || !(polygon.getArea() > 0)) {
            throw new Refusal(line.element(), "the outline crosses or touches itself", "draw or measure it as one simple closed line");
        }
        return polygon;
    }

    /** Grown by so many mm square to its edge, corners mitred; shrunk where negative. */
    static DrawnLine offset(DrawnLine line, double mm, String name) {
        Polygon polygon = of(line);
        if (mm == 0) {
            return new DrawnLine(name, line.line(), line.xy(), true);
        }
        var how = new BufferParameters(16, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, MITRE_LIMIT);
        how.setSimplifyFactor(0.0005); // of the distance: the library's own 0.01 would move an edge by 0.1 mm where 10 come off
        Geometry grown = BufferOp.bufferOp(polygon, mm, how);
        if (!(grown instanceof Polygon one) || one.isEmpty()) {
            throw new Refusal(line.element(), String.format(Locale.ROOT, "%.1f mm taken off all round leave nothing whole of it", -mm),
                    "take less off, or see whether the opening is measured in mm");
        }
        Coordinate[] points = one.getExteriorRing().getCoordinates();
        double[] xy = new double[2 * (points.length - 1)];
        for (int i = 0; i + 1 < points.length; i++) {
            xy[2 * i] = points[i].x;
            xy[2 * i + 1] = points[i].y;
        }
        return new DrawnLine(name, line.line(), xy, true);
    }

    /** The part of an area between two heights. */
    static Geometry between(Polygon area, double topMm, double bottomMm) {
        var box = area.getEnvelopeInternal();
        return area.intersection(rectangle(box.getMinX() - 1, topMm, box.getMaxX() + 1, bottomMm));
    }

    /** The part of a level line within an area. */
    static Geometry level(Polygon area, double yMm) {
        var box = area.getEnvelopeInternal();
        return area.intersection(GEOMETRY.createLineString(new Coordinate[] {new Coordinate(box.getMinX() - 1, yMm), new Coordinate(box.getMaxX() + 1,
                yMm)}));
    }

    private static Polygon rectangle(double left, double top, double right, double bottom) {
        return GEOMETRY.createPolygon(new Coordinate[] {new Coordinate(left, top), new Coordinate(right, top), new Coordinate(right, bottom),
                new Coordinate(left, bottom), new Coordinate(left, top)});
    }
}
