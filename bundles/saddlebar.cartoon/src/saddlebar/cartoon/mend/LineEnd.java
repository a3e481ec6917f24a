package saddlebar.cartoon.mend;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;

import saddlebar.model.art.DrawnLine;

/**
 * One end of an open line.
 *
 * @param line    index of the line
 * @param atStart whether it is the end where the line begins
 * @param path    points of the line, the end first
 */
record LineEnd(int line, boolean atStart, List<Coordinate> path) {
    /** The direction of an end is that of its last so many mm: a hook of the pen at the very end does not count. */
    private static final double LOOK_MM = 2;

    static LineEnd of(int index, DrawnLine line, boolean atStart) {
        List<Coordinate> path = new ArrayList<>(line.points());
        for (int i = 0; i < line.points(); i++) {
            int point = atStart ? i : line.points() - 1 - i;
            path.add(new Coordinate(line.x(point), line.y(point)));
        }
        return new LineEnd(index, atStart, path);
    }

    Coordinate point() {
        return path.get(0);
    }

    /** Unit vector out of the end; null for a line without length. */
    Coordinate direction() {
        Coordinate back = back(LOOK_MM);
        double length = back.distance(point());
        return length < 1e-9 ? null : new Coordinate((point().x - back.x) / length, (point().y - back.y) / length);
    }

    /** The point so many mm back along the line. */
    private Coordinate back(double mm) {
        double left = mm;
        for (int i = 1; i < path.size(); i++) {
            double length = path.get(i).distance(path.get(i - 1));
            if (length >= left) {
                return between(path.get(i - 1), path.get(i), left / length);
            }
            left -= length;
        }
        return path.get(path.size() - 1);
    }

    static Coordinate between(Coordinate a, Coordinate b, double share) {
        return new Coordinate(a.x + share * (b.x - a.x), a.y + share * (b.y - a.y));
    }

    double lengthMm() {
        double length = 0;
        for (int i = 1; i < path.size(); i++) {
            length += path.get(i).distance(path.get(i - 1));
        }
        return length;
    }

    /** Number of a segment of the drawn line, counted from this end. */
    int fromEnd(int segment) {
        return atStart ? segment : path.size() - 2 - segment;
    }

    /** Length along the line from the end to the near side of a segment counted from it. */
    double alongMm(int segmentFromEnd) {
        double along = 0;
        for (int i = 0; i < segmentFromEnd; i++) {
            along += path.get(i).distance(path.get(i + 1));
        }
        return along;
    }

    /** The line with this end carried on to a point. */
    static DrawnLine extended(DrawnLine line, boolean atStart, Coordinate to) {
        double[] xy = line.xy();
        double[] longer = new double[xy.length + 2];
        System.arraycopy(xy, 0, longer, atStart ? 2 : 0, xy.length);
        longer[atStart ? 0 : xy.length] = to.x;
        longer[atStart ? 1 : xy.length + 1] = to.y;
        return new DrawnLine(line.element(), line.line(), longer, false);
    }

    /** The line with this end moved to a point. */
    static DrawnLine moved(DrawnLine line, boolean atStart, Coordinate to) {
        double[] xy = line.xy();
        xy[atStart ? 0 : xy.length - 2] = to.x;
        xy[atStart ? 1 : xy.length - 1] = to.y;
        return new DrawnLine(line.element(), line.line(), xy, line.closed());
    }

    /** The line cut back at this end: its first so many segments from here go, and it begins at a point of the next. */
    DrawnLine cutBack(DrawnLine line, int segmentFromEnd, Coordinate at) {
        List<Coordinate> kept = new ArrayList<>();
        kept.add(at);
        for (int i = segmentFromEnd + 1; i < path.size(); i++) {
            if (i > segmentFromEnd + 1 || path.get(i).distance(at) > 1e-9) {
                kept.add(path.get(i));
            }
        }
        if (kept.size() < 2) {
            return null;
        }
        double[] xy = new double[2 * kept.size()];
        for (int i = 0; i < kept.size(); i++) {
            Coordinate point = kept.get(atStart ? i : kept.size() - 1 - i);
            xy[2 * i] = point.x;
            xy[2 * i + 1] = point.y;
        }
        return new DrawnLine(line.element(), line.line(), xy, false);
    }
}
