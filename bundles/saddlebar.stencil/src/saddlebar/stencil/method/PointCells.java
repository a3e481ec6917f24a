package saddlebar.stencil.method;

import java.util.Arrays;

/**
 * Points on the unit square whose edges join, kept by square cells so that only what is near is looked at. The distances are those that looking at every
 * point would give, to the last bit.
 */
final class PointCells {
    private final double[] x;
    private final double[] y;
    private final int cells;
    /** The point that came last into each cell, and the one that came before each point; -1 for none. */
    private final int[] lastIn;
    private final int[] before;

    /** No points yet; {@code x} and {@code y} are kept and read for those that are added. */
    PointCells(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        this.cells = Math.max(1, (int) Math.sqrt(x.length));
        this.lastIn = new int[cells * cells];
        this.before = new int[x.length];
        Arrays.fill(lastIn, -1);
    }

    static PointCells all(double[] x, double[] y) {
        PointCells points = new PointCells(x, y);
        for (int i = 0; i < x.length; i++) {
            points.add(i);
        }
        return points;
    }

    void add(int point) {
        int cell = cell(y[point]) * cells + cell(x[point]);
        before[point] = lastIn[cell];
        lastIn[cell] = point;
    }

    private int cell(double value) {
        return Math.min(cells - 1, (int) (value * cells));
    }

    private int wrapped(int cell) {
        return cell < 0 ? cell + cells : cell >= cells ? cell - cells : cell;
    }

    static double around(double difference) {
        return difference - Math.rint(difference);
    }

    /** Squared distance across the joined edges. */
    static double squared(double dx, double dy) {
        double ax = around(dx);
        double ay = around(dy);
        return ax * ax + ay * ay;
    }

    /** Squared distance from a place to the nearest point; {@code atMost} if none is nearer. */
    double nearestSquared(double px, double py, double atMost) {
        int column = cell(px);
        int row = cell(py);
        double best = atMost;
        for (int ring = 0; ring <= cells / 2; ring++) {
            double reach = (ring - 1.0) / cells;
            if (reach > 0 && reach * reach > best) {
                break;
            }
            for (int dy = -ring; dy <= ring; dy++) {
                int cellRow = wrapped(row + dy) * cells;
                for (int dx = -ring; dx <= ring; dx += Math.abs(dy) == ring ? 1 : Math.max(1, 2 * ring)) {
                    for (int point = lastIn[cellRow + wrapped(column + dx)]; point >= 0; point = before[point]) {
                        best = Math.min(best, squared(x[point] - px, y[point] - py));
                    }
                }
            }
        }
        return best;
    }

    /**
     * Points that lie within a distance, and a few that do not.
     *
     * @param found takes them, none twice
     * @return how many
     */
    int near(double px, double py, double reach, int[] found) {
        int column = cell(px);
        int row = cell(py);
        int rings = Math.min((cells - 1) / 2 + 1, (int) (reach * cells) + 1);
        int last = Math.min(rings, cells - 1 - rings); // all round, no cell twice
        double most = reach * reach;
        int count = 0;
        for (int dy = -rings; dy <= last; dy++) {
            int cellRow = wrapped(row + dy) * cells;
            for (int dx = -rings; dx <= last; dx++) {
                for (int point = lastIn[cellRow + wrapped(column + dx)]; point >= 0; point = before[point]) {
                    if (squared(x[point] - px, y[point] - py) <= most) {
                        found[count++] = point;
                    }
                }
            }
        }
        return count;
    }
}
