package saddlebar.nesting.outline;

import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/** An outline at one angle, relative to its own (0,0). */
final class Shape {
    final int number;
    final double angleDeg;
    final double minX;
    final double minY;
    final double maxX;
    final double maxY;
    /** Convex parts, each as x0 y0 x1 y1 ... */
    final double[][] parts;

    /** @param turned the outline (or one slightly larger) after turning */
    Shape(int number, double angleDeg, Polygon turned, Envelope exactBox) {
        this.number = number;
        this.angleDeg = angleDeg;
        minX = exactBox.getMinX();
        minY = exactBox.getMinY();
        maxX = exactBox.getMaxX();
        maxY = exactBox.getMaxY();
        List<Coordinate[]> convex = ConvexParts.of(turned);
        parts = new double[convex.size()][];
        for (int p = 0; p < parts.length; p++) {
            Coordinate[] ring = convex.get(p);
            parts[p] = new double[2 * ring.length];
            for (int i = 0; i < ring.length; i++) {
                parts[p][2 * i] = ring[i].x;
                parts[p][2 * i + 1] = ring[i].y;
            }
        }
    }

    double width() {
        return maxX - minX;
    }

    double height() {
        return maxY - minY;
    }
}
