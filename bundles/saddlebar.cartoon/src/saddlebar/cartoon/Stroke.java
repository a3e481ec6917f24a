package saddlebar.cartoon;

import org.locationtech.jts.geom.Coordinate;

/**
 * A drawn line ready for noding.
 *
 * @param source index of the drawn line it came from
 * @param points at least two, no point twice in a row; the first repeated at the end if the line is closed
 */
record Stroke(int source, Coordinate[] points) {
    boolean isOpen() {
        return !points[0].equals2D(points[points.length - 1]);
    }
}
