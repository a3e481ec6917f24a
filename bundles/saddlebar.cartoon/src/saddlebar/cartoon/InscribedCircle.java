package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/**
 * The largest circle inside a polygon. Its centre is the pole of inaccessibility: the best place for a label.
 *
 * <p>Found in two steps. Squares over the polygon are halved, best first, until none can hold a circle larger by more than
 * {@value #COARSE} of the radius (Garcia-Castellanos, D., Lombardo, U., Poles of inaccessibility, Scottish Geogr. J. 123, 2007, with a
 * queue). Then the centre is moved to where no direction enlarges the circle: the distances to the boundary near it are taken as linear,
 * the best point of that linear problem is tried, and kept only if the true distance has grown. The radius told is always the true
 * distance of the centre told; it falls short of the largest by at most {@value #COARSE} of itself, by rounding only where one circle is
 * clearly the largest. Of equally good centres (a long rectangle has a line of them) the centroid is taken if it is one.
 *
 * @param xMm      centre
 * @param yMm      centre
 * @param radiusMm distance from the centre to the boundary
 */
public record InscribedCircle(double xMm, double yMm, double radiusMm) {
    private static final double COARSE = 0.002;
    private static final int MOST_SQUARES = 4000;
    private static final int MOST_MOVES = 24;
    /** First length of a move, as a share of the radius. */
    private static final double FIRST_REACH = 0.05;
    private static final double SETTLED = 1e-10;
    private static final int DIRECTIONS = 12;

    /** Square by centre and half side; clearance of the centre; most that a circle with its centre inside could have. */
    private record Square(double x, double y, double half, double clearance, double most) {
    }

    /** @param polygon any valid polygon with area, holes too; not changed */
    public static InscribedCircle of(Polygon polygon) {
        return of(polygon, new Boundary(polygon));
    }

    static InscribedCircle of(Polygon polygon, Boundary boundary) {
        Coordinate centroid = polygon.getCentroid().getCoordinate();
        Square best = square(boundary, centroid.x, centroid.y, 0);
        if (best.clearance <= 0) {
            Coordinate inside = polygon.getInteriorPoint().getCoordinate();
            best = square(boundary, inside.x, inside.y, 0);
        }
        var open = new PriorityQueue<Square>(Comparator.comparingDouble(Square::most).reversed().thenComparingDouble(Square::y)
                .thenComparingDouble(Square::x));
        double width = boundary.maxX() - boundary.minX();
        double height = boundary.maxY() - boundary.minY();
        double half = Math.max(Math.min(width, height), Math.max(width, height) / 64) / 2;
        for (double x = boundary.minX() + half; x - half < boundary.maxX(); x += 2 * half) {
            for (double y = boundary.minY() + half; y - half < boundary.maxY(); y += 2 * half) {
                open.add(square(boundary, x, y, half));
            }
        }
        best = moved(boundary, best);
        for (int looked = 0; !open.isEmpty() && looked < MOST_SQUARES; looked++) {
            Square next = open.remove();
            if (next.most <= best.clearance * (1 + COARSE)) {
                break;
            }
            if (next.clearance > best.clearance * (1 + COARSE / 4)) {
                best = moved(boundary, next); // at the top of its hill at once: what cannot beat that is never looked at
            }
            double quarter = next.half / 2;
            for (int corner = 0; corner < 4; corner++) {
                Square part = part(boundary, next, (corner & 1) == 0 ? -quarter : quarter, (corner & 2) == 0 ? -quarter : quarter);
                if (part.most > best.clearance * (1 + COARSE)) {
                    open.add(part);
                }
            }
        }
        return new InscribedCircle(best.x, best.y, best.clearance);
    }

    private static Square square(Boundary boundary, double x, double y, double half) {
        double clearance = boundary.clearance(x, y);
        return new Square(x, y, half, clearance, clearance + half * Math.sqrt(2));
    }

    /** A quarter of a square: what is known of the middle of the whole bounds the search, and tells inside from outside if it can. */
    private static Square part(Boundary boundary, Square whole, double dx, double dy) {
        double half = whole.half / 2;
        double shift = half * Math.sqrt(2);
        double x = whole.x + dx;
        double y = whole.y + dy;
        double distance = boundary.nearest(x, y, (Math.abs(whole.clearance) + shift) * (1 + 1e-9)).distance;
        double clearance = whole.clearance > shift || whole.clearance > -shift && boundary.isInside(x, y) ? distance : -distance;
        return new Square(x, y, half, clearance, clearance + shift);
    }

    private static Square moved(Boundary boundary, Square start) {
        double x = start.x;
        double y = start.y;
        double radius = start.clearance;
        double reach = FIRST_REACH * radius;
        for (int move = 0; move < MOST_MOVES; move++) {
            double[] step = bestStep(nearInEachDirection(boundary, x, y, radius, reach), reach);
            if (step[2] <= radius * (1 + SETTLED)) {
                break; // no direction enlarges it
            }
            double clearance = boundary.clearance(x + step[0], y + step[1]);
            if (clearance > radius) {
                x += step[0];
                y += step[1];
                radius = clearance;
            } else {
                reach /= 4;
            }
        }
        return new Square(x, y, 0, radius, radius);
    }

    /** Distance and inward direction {d, nx, ny} of the boundary near the circle: of all in one direction only the nearest. */
    private static List<double[]> nearInEachDirection(Boundary boundary, double x, double y, double radius, double reach) {
        double[][] nearest = new double[DIRECTIONS][];
        for (double[] foot : boundary.feet(x, y, radius + 2 * reach)) {
            double nx = (x - foot[1]) / foot[0];
            double ny = (y - foot[2]) / foot[0];
            int direction = (int) Math.floor((Math.atan2(ny, nx) / (2 * Math.PI) + 1) * DIRECTIONS) % DIRECTIONS;
            if (nearest[direction] == null || foot[0] < nearest[direction][0]) {
                nearest[direction] = new double[] {foot[0], nx, ny};
            }
        }
        var near = new ArrayList<double[]>();
        for (double[] one : nearest) {
            if (one != null) {
                near.add(one);
            }
        }
        return near;
    }

    /**
     * The step after which the least of the linear distances is largest: where two or three of them are equal. Steps that lead too far are
     * shortened to the reach.
     *
     * @return step in x and y, and the least distance expected after it
     */
    private static double[] bestStep(List<double[]> near, double reach) {
        double[] best = {0, 0, least(near, 0, 0)};
        double[] step = new double[2];
        for (int i = 0; i < near.size(); i++) {
            for (int j = i + 1; j < near.size(); j++) {
                if (balanced(near.get(i), near.get(j), step)) {
                    take(near, step, reach, best);
                }
                for (int k = j + 1; k < near.size(); k++) {
                    if (balanced(near.get(i), near.get(j), near.get(k), step)) {
                        take(near, step, reach, best);
                    }
                }
            }
        }
        return best;
    }

    private static void take(List<double[]> near, double[] step, double reach, double[] best) {
        double far = Math.hypot(step[0], step[1]);
        double share = far > reach ? reach / far : 1;
        double least = least(near, share * step[0], share * step[1]);
        if (least > best[2]) {
            best[0] = share * step[0];
            best[1] = share * step[1];
            best[2] = least;
        }
    }

    private static double least(List<double[]> near, double stepX, double stepY) {
        double least = Double.MAX_VALUE;
        for (double[] one : near) {
            least = Math.min(least, one[0] + one[1] * stepX + one[2] * stepY);
        }
        return least;
    }

    /** The shortest step that makes two distances equal. */
    private static boolean balanced(double[] a, double[] b, double[] step) {
        double dx = a[1] - b[1];
        double dy = a[2] - b[2];
        double square = dx * dx + dy * dy;
        if (square < 1e-9) {
            return false;
        }
        step[0] = (b[0] - a[0]) * dx / square;
        step[1] = (b[0] - a[0]) * dy / square;
        return true;
    }

    /** The step that makes three distances equal. */
    private static boolean balanced(double[] a, double[] b, double[] c, double[] step) {
        double ax = a[1] - c[1];
        double ay = a[2] - c[2];
        double bx = b[1] - c[1];
        double by = b[2] - c[2];
        double determinant = ax * by - ay * bx;
        if (Math.abs(determinant) < 1e-9) {
            return false;
        }
        double p = c[0] - a[0];
        double q = c[0] - b[0];
        step[0] = (p * by - q * ay) / determinant;
        step[1] = (ax * q - bx * p) / determinant;
        return true;
    }
}
