package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;

import saddlebar.model.work.Work;

/**
 * Carries ends that stop a hair short on to the line they were meant to meet. An end drawn exactly on a curve misses the straight steps
 * of the flattened curve by up to the flattening tolerance; a file that rounds its numbers misses by its rounding. The end gets one more
 * step to the nearest point of the nearest line; nothing that was drawn moves. An end that already crosses a line just before is left
 * alone: the rest behind the crossing is a short dangle. O(n log n) by a tree over runs of segments.
 */
final class CarriedEnds {
    /** Nearer than this the end lies on the line in the arithmetic of a double. */
    private static final double TOUCHING_MM = 1e-9;

    private final List<Stroke> strokes;
    private final double carryOnMm;
    private final double stubMm;
    private final SegmentRuns runs;

    private CarriedEnds(List<Stroke> strokes, double carryOnMm, double shortDangleMm) {
        this.strokes = strokes;
        this.carryOnMm = carryOnMm;
        this.stubMm = Math.max(shortDangleMm, 4 * carryOnMm);
        this.runs = new SegmentRuns(strokes);
    }

    static List<Stroke> of(List<Stroke> strokes, double carryOnMm, double shortDangleMm, Work work) {
        if (carryOnMm == 0) {
            return strokes;
        }
        var ends = new CarriedEnds(strokes, carryOnMm, shortDangleMm);
        var carried = new ArrayList<Stroke>(strokes.size());
        for (int i = 0; i < strokes.size(); i++) {
            if (i % 256 == 0) {
                work.checkpoint();
            }
            carried.add(strokes.get(i).isOpen() ? ends.carried(i) : strokes.get(i));
        }
        return carried;
    }

    private Stroke carried(int index) {
        Stroke stroke = strokes.get(index);
        Coordinate[] points = stroke.points();
        Coordinate before = foot(index, reversed(points), true);
        Coordinate after = foot(index, points, false);
        if (before == null && after == null) {
            return stroke;
        }
        var longer = new ArrayList<Coordinate>(points.length + 2);
        if (before != null) {
            longer.add(before);
        }
        longer.addAll(Arrays.asList(points));
        if (after != null) {
            longer.add(after);
        }
        return new Stroke(stroke.source(), longer.toArray(new Coordinate[0]));
    }

    /** Where the last point of a path should be carried on to; null if it meets a line already or none is near. */
    private Coordinate foot(int index, Coordinate[] path, boolean reversed) {
        Coordinate end = path[path.length - 1];
        List<Coordinate> stub = stub(path);
        var box = new Envelope();
        stub.forEach(box::expandToInclude);
        box.expandBy(carryOnMm);
        double least = carryOnMm;
        Coordinate foot = null;
        var segment = new LineSegment();
        for (SegmentRuns.Run run : runs.near(box)) {
            Coordinate[] points = strokes.get(run.stroke()).points();
            for (int s = run.from(); s < run.to(); s++) {
                if (run.stroke() == index && isOwnStub(path, reversed ? points.length - 2 - s : s)) {
                    continue;
                }
                segment.setCoordinates(points[s], points[s + 1]);
                Coordinate near = segment.closestPoint(end);
                double distance = near.distance(end);
                if (distance < TOUCHING_MM || crosses(stub, segment)) {
                    return null;
                }
                if (distance < least || distance == least && foot != null && near.compareTo(foot) < 0) {
                    least = distance;
                    foot = near.copy(); // the library hands out an end of the segment itself, which the next step overwrites
                }
            }
        }
        return foot;
    }

    /** Whether the segment of the path lies so near to its end, along the path, that it is the end itself. */
    private boolean isOwnStub(Coordinate[] path, int segment) {
        double along = 0;
        for (int i = path.length - 2; i > segment; i--) {
            along += path[i].distance(path[i + 1]);
            if (along > 2 * stubMm) {
                return false;
            }
        }
        return true;
    }

    private List<Coordinate> stub(Coordinate[] path) {
        var stub = new ArrayList<Coordinate>();
        stub.add(path[path.length - 1]);
        double left = stubMm;
        for (int i = path.length - 1; i > 0 && left > 0; i--) {
            double length = path[i].distance(path[i - 1]);
            stub.add(length <= left ? path[i - 1] : new LineSegment(path[i], path[i - 1]).pointAlong(left / length));
            left -= length;
        }
        return stub;
    }

    private static boolean crosses(List<Coordinate> stub, LineSegment segment) {
        var intersector = new RobustLineIntersector();
        for (int i = 0; i + 1 < stub.size(); i++) {
            intersector.computeIntersection(stub.get(i), stub.get(i + 1), segment.p0, segment.p1);
            if (intersector.hasIntersection()) {
                return true;
            }
        }
        return false;
    }

    private static Coordinate[] reversed(Coordinate[] points) {
        Coordinate[] reversed = new Coordinate[points.length];
        for (int i = 0; i < points.length; i++) {
            reversed[i] = points[points.length - 1 - i];
        }
        return reversed;
    }
}
