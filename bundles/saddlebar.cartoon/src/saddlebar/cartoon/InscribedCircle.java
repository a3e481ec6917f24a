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
    private static final int MOST_MOVES = 12;
    private static final int DIRECTIONS = 24;

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
        for (int looked = 0; !open.isEmpty() && looked < MOST_SQUARES; looked++) {
            Square next = open.remove();
            if (next.clearance > best.clearance * (1 + COARSE / 4)) {
                best = next;
            }
            if (next.most <= best.clearance * (1 + COARSE)) {
                break;
            }
            double quarter = next.half / 2;
            for (int corner = 0; corner < 4; corner++) {
                open.add(square(boundary, next.x + ((corner & 1) == 0 ? -quarter : quarter),
                        next.y + ((corner & 2) == 0 ? -quarter : quarter), quarter));
            }
        }
        return moved(boundary, best);
    }

    private static Square square(Boundary boundary, double x, double y, double half) {
        double clearance = boundary.clearance(x, y);
        return new Square(x, y, half, clearance, clearance + half * Math.sqrt(2));
    }

    private static InscribedCircle moved(Boundary boundary, Square start) {
        double x = start.x;
        double y = start.y;
        double radius = start.clearance;
        double reach = Math.max(1e-6, 4 * COARSE * radius);
        for (int move = 0; move < MOST_MOVES && reach > 1e-12 * radius; move++) {
            double[] step = bestStep(nearInEachDirection(boundary, x, y, radius, reach), reach);
            double clearance = boundary.clearance(x + step[0], y + step[1]);
            if (clearance > radius) {
                boolean settled = clearance < radius * (1 + 1e-13);
                x += step[0];
                y += step[1];
                radius = clearance;
                if (settled) {
                    break;
                }
            } else {
                reach /= 4;
            }
        }
        return new InscribedCircle(x, y, radius);
    }

    /** Distance and inward direction {d, nx, ny} of the boundary near the circle: of all in one direction only the nearest. */
    private static List<double[]> nearInEachDirection(Boundary boundary, double x, double y, double radius, double reach) {
        double[][] nearest = new double[DIRECTIONS][];
        for (double[] foot : boundary.feet(x, y, radius + 3 * reach)) {
            double nx = (x - foot[1]) / foot[0];
            double ny = (y - foot[2]) / foot[0];
            int direction = (int) Math.floor((Math.atan2(ny, nx) / (2 * Math.PI) + 1) * DIRECTIONS) % DIRECTIONS;
            if (nearest[direction] == null || foot[0] < nearest[direction][0]) {
                nearest[direction] = new double[] { foot[0], nx, ny };
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

    /** The step within reach after which the least of the linear distances is largest: where two or three of them are equal. */
    private static double[] bestStep(List<double[]> near, double reach) {
        double[] best = new double[2];
        double most = least(near, 0, 0);
        double[] step = new double[2];
        for (int i = 0; i < near.size(); i++) {
            for (int j = i + 1; j < near.size(); j++) {
                if (balanced(near.get(i), near.get(j), step, reach) && least(near, step[0], step[1]) > most) {
                    most = least(near, step[0], step[1]);
                    best = step.clone();
                }
                for (int k = j + 1; k < near.size(); k++) {
                    if (balanced(near.get(i), near.get(j), near.get(k), step, reach) && least(near, step[0], step[1]) > most) {
                        most = least(near, step[0], step[1]);
                        best = step.clone();
                    }
                }
            }
        }
        return best;
    }

    private static double least(List<double[]> near, double stepX, double stepY) {
        double least = Double.MAX_VALUE;
        for (double[] one : near) {
            least = Math.min(least, one[0] + one[1] * stepX + one[2] * stepY);
        }
        return least;
    }

    /** The shortest step that makes two distances equal. */
    private static boolean balanced(double[] a, double[] b, double[] step, double reach) {
        double dx = a[1] - b[1];
        double dy = a[2] - b[2];
        double square = dx * dx + dy * dy;
        if (square < 1e-9) {
            return false;
        }
        step[0] = (b[0] - a[0]) * dx / square;
        step[1] = (b[0] - a[0]) * dy / square;
        return Math.abs(step[0]) <= reach && Math.abs(step[1]) <= reach;
    }

    /** The step that makes three distances equal. */
    private static boolean balanced(double[] a, double[] b, double[] c, double[] step, double reach) {
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
        return Math.abs(step[0]) <= reach && Math.abs(step[1]) <= reach;
    }
}
