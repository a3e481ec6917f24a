package saddlebar.cartoon.opening;

import java.util.ArrayList;
import java.util.List;

/**
 * A smooth curve through points: the cubic spline by chord length, one for x and one for y, whose slope and bend are continuous (Ahlberg, Nilson,
 * Walsh, The Theory of Splines and Their Applications, 1967). Closed without an end, or open with the end slopes of the parabola through the three
 * points there.
 */
final class SmoothRun {
    private static final int MOST_SWEEPS = 200;
    private static final double SETTLED = 1e-13;

    private final double[] x;
    private final double[] y;
    /** Chord from each point to the next; one less than points where open. */
    private final double[] chord;
    private final boolean closed;

    SmoothRun(List<SurveyPoint> points, boolean closed) {
        this.closed = closed;
        int count = points.size();
        x = points.stream().mapToDouble(SurveyPoint::xMm).toArray();
        y = points.stream().mapToDouble(SurveyPoint::yMm).toArray();
        chord = new double[closed ? count : count - 1];
        for (int i = 0; i < chord.length; i++) {
            chord[i] = points.get(i).distanceMm(points.get((i + 1) % count));
        }
    }

    /** Steps from the first point to before the last (or round to before the first), none further from the curve than the tolerance. */
    List<double[]> steps(double toleranceMm) {
        double[] slopesX = slopes(x);
        double[] slopesY = slopes(y);
        List<double[]> steps = new ArrayList<>();
        for (int i = 0; i < chord.length; i++) {
            int next = (i + 1) % x.length;
            double third = chord[i] / 3;
            double[] bezierX = {x[i], x[i] + third * slopesX[i], x[next] - third * slopesX[next], x[next]};
            double[] bezierY = {y[i], y[i] + third * slopesY[i], y[next] - third * slopesY[next], y[next]};
            double bend = Math.max(StrictMath.hypot(bezierX[2] - 2 * bezierX[1] + bezierX[0], bezierY[2] - 2 * bezierY[1] + bezierY[0]),
                    StrictMath.hypot(bezierX[3] - 2 * bezierX[2] + bezierX[1], bezierY[3] - 2 * bezierY[2] + bezierY[1]));
            int count = (int) Math.max(1, Math.ceil(StrictMath.sqrt(0.75 * bend / toleranceMm))); // Wang 1984, for cubics
            for (int step = 0; step < count; step++) {
                double t = (double) step / count;
                steps.add(new double[] {cubic(bezierX, t), cubic(bezierY, t)});
            }
        }
        return steps;
    }

    private static double cubic(double[] b, double t) {
        double s = 1 - t;
        return s * s * s * b[0] + 3 * s * s * t * b[1] + 3 * s * t * t * b[2] + t * t * t * b[3];
    }

    /** Slopes per mm of chord; the equations are dominated by their diagonal, so sweeps settle, halving the error each time at least. */
    private double[] slopes(double[] values) {
        int count = values.length;
        double[] rise = new double[chord.length];
        for (int i = 0; i < rise.length; i++) {
            rise[i] = (values[(i + 1) % count] - values[i]) / chord[i];
        }
        double[] slopes = new double[count];
        if (!closed && count == 2) {
            slopes[0] = slopes[1] = rise[0];
            return slopes;
        }
        if (!closed) {
            int last = rise.length - 1;
            slopes[0] = ((2 * chord[0] + chord[1]) * rise[0] - chord[0] * rise[1]) / (chord[0] + chord[1]);
            slopes[count - 1] = ((2 * chord[last] + chord[last - 1]) * rise[last] - chord[last] * rise[last - 1]) / (chord[last] + chord[last - 1]);
        }
        for (int sweep = 0; sweep < MOST_SWEEPS; sweep++) {
            double change = 0;
            for (int i = closed ? 0 : 1; i < (closed ? count : count - 1); i++) {
                int before = (i + count - 1) % count;
                double h = chord[i];
                double hBefore = chord[before];
                double slope = (3 * (h * rise[before] + hBefore * rise[i]) - h * slopes[before] - hBefore * slopes[(i + 1) % count]) / (2 * (h
                        + hBefore));
                change = Math.max(change, Math.abs(slope - slopes[i]));
                slopes[i] = slope;
            }
            if (change < SETTLED) {
                break;
            }
        }
        return slopes;
    }
}
