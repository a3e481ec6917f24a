package saddlebar.production.plan;

import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * Whether two outlines are the same but for their place, within what a cutter could ever tell: {@value #TOLERANCE_MM} mm (our own limit,
 * no source). A mirrored piece is not the same: its paint would be mirrored too. Nor is a turned one, although it could be laid turned under the
 * screen: its dots would then stand at another angle than its neighbours', and a mark on the bed would have to say by how much to turn it.
 */
final class SameOutline {
    static final double TOLERANCE_MM = 0.05;

    private SameOutline() {
    }

    static boolean shifted(Polygon one, Polygon other) {
        Envelope a = one.getEnvelopeInternal();
        Envelope b = other.getEnvelopeInternal();
        if (Math.abs(a.getWidth() - b.getWidth()) > TOLERANCE_MM || Math.abs(a.getHeight() - b.getHeight()) > TOLERANCE_MM
                || Math.abs(one.getArea() - other.getArea()) > TOLERANCE_MM * one.getLength()
                || one.getNumInteriorRing() != other.getNumInteriorRing()) {
            return false;
        }
        Polygon moved = (Polygon) AffineTransformation.translationInstance(a.getMinX() - b.getMinX(), a.getMinY() - b.getMinY()).transform(other);
        DiscreteHausdorffDistance distance = new DiscreteHausdorffDistance(one.getBoundary(), moved.getBoundary());
        distance.setDensifyFraction(0.5);
        return distance.distance() <= TOLERANCE_MM;
    }
}
