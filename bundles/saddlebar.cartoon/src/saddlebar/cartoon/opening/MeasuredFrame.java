package saddlebar.cartoon.opening;

import java.util.List;

import saddlebar.model.problem.PlaceMm;
import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Require;

/**
 * A four-sided opening as a tape measures it: four sides and both diagonals, from which its true corners follow by least squares (six measures for
 * five unknowns, each measure trusted alike; Gauss and Newton's steps from the nearest rectangle). The bottom side is taken as level.
 *
 * @param topMm     length of the top side
 * @param rightMm   of the right side
 * @param bottomMm  of the bottom side
 * @param leftMm    of the left side
 * @param fallingMm diagonal from top left to bottom right
 * @param risingMm  diagonal from bottom left to top right
 */
public record MeasuredFrame(double topMm, double rightMm, double bottomMm, double leftMm, double fallingMm, double risingMm) {
    private static final double LEAST_MM = 10;
    private static final double MOST_MM = 20_000;
    private static final int MOST_STEPS = 100;
    private static final String WHERE = "measured frame";

    public MeasuredFrame {
        Require.within("topMm", topMm, LEAST_MM, MOST_MM);
        Require.within("rightMm", rightMm, LEAST_MM, MOST_MM);
        Require.within("bottomMm", bottomMm, LEAST_MM, MOST_MM);
        Require.within("leftMm", leftMm, LEAST_MM, MOST_MM);
        Require.within("fallingMm", fallingMm, LEAST_MM, 2 * MOST_MM);
        Require.within("risingMm", risingMm, LEAST_MM, 2 * MOST_MM);
    }

    /**
     * The frame that fits the measures best.
     *
     * @throws Refusal if no four-sided opening has such sides and diagonals, not even nearly
     */
    public FrameFit fit() {
        triangle(topMm, rightMm, fallingMm, "top, right and falling diagonal");
        triangle(leftMm, bottomMm, fallingMm, "left, bottom and falling diagonal");
        triangle(leftMm, topMm, risingMm, "left, top and rising diagonal");
        triangle(bottomMm, rightMm, risingMm, "bottom, right and rising diagonal");
        double width = (topMm + bottomMm) / 2;
        double height = (leftMm + rightMm) / 2;
        // unknowns: top left x y, top right x y, bottom right x; bottom left is the origin, y up
        double[] u = {0, height, width, height, width};
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] change = SmallEquations.leastSquares(slopes(u), misses(u));
            double most = 0;
            for (int i = 0; i < u.length; i++) {
                u[i] -= change[i];
                most = Math.max(most, Math.abs(change[i]));
            }
            if (!(most < 1e9)) {
                break;
            }
            if (most < 1e-10 * width) {
                return result(u);
            }
        }
        throw new Refusal(WHERE, "no four-sided opening has these sides and diagonals", "measure all six again, each from corner to corner");
    }

    private static void triangle(double a, double b, double diagonal, String which) {
        if (!(diagonal < a + b && diagonal > Math.abs(a - b))) {
            throw new Refusal(WHERE, which + " make no triangle", "measure these three again, each from corner to corner");
        }
    }

    private record Tape(int fromX, int fromY, int toX, int toY, double mm) {
    }

    /** Index of each end in the unknowns; -1 is zero. */
    private List<Tape> tapes() {
        return List.of(new Tape(0, 1, 2, 3, topMm), new Tape(2, 3, 4, -1, rightMm), new Tape(-1, -1, 4, -1, bottomMm), new Tape(-1, -1, 0, 1, leftMm),
                new Tape(0, 1, 4, -1, fallingMm), new Tape(-1, -1, 2, 3, risingMm));
    }

    private static double of(double[] u, int index) {
        return index < 0 ? 0 : u[index];
    }

    private double[] misses(double[] u) {
        return tapes().stream().mapToDouble(t -> StrictMath.hypot(of(u, t.toX) - of(u, t.fromX), of(u, t.toY) - of(u, t.fromY)) - t.mm).toArray();
    }

    private double[][] slopes(double[] u) {
        return tapes().stream().map(t -> {
            double dx = of(u, t.toX) - of(u, t.fromX);
            double dy = of(u, t.toY) - of(u, t.fromY);
            double length = StrictMath.hypot(dx, dy);
            double[] row = new double[u.length];
            add(row, t.toX, dx / length);
            add(row, t.toY, dy / length);
            add(row, t.fromX, -dx / length);
            add(row, t.fromY, -dy / length);
            return row;
        }).toArray(double[][]::new);
    }

    private static void add(double[] row, int index, double value) {
        if (index >= 0) {
            row[index] += value;
        }
    }

    private FrameFit result(double[] u) {
        double left = Math.min(0, u[0]);
        double top = Math.max(u[1], u[3]);
        return new FrameFit(new PlaceMm(u[0] - left, top - u[1]), new PlaceMm(u[2] - left, top - u[3]), new PlaceMm(u[4] - left, top),
                new PlaceMm(-left, top),
                misses(u));
    }
}
