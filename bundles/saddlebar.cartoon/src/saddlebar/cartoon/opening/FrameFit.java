package saddlebar.cartoon.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import saddlebar.model.problem.PlaceMm;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Require;

/**
 * The corners of a measured frame, bottom side level, and how far it is from square.
 *
 * @param topLeft     corner
 * @param topRight    corner
 * @param bottomRight corner
 * @param bottomLeft  corner
 * @param missesMm    fitted less measured length: top, right, bottom, left, falling, rising diagonal
 */
public record FrameFit(PlaceMm topLeft, PlaceMm topRight, PlaceMm bottomRight, PlaceMm bottomLeft, double[] missesMm) {
    /** Told above this: 3.5 mm in a metre (studio setting, no source). */
    public static final double SQUARE_DEG = 0.2;
    /** A tape is read to about 1 mm: six of them that disagree by more hold a misreading (studio setting, no source). */
    public static final double TAPE_MM = 2;

    public FrameFit {
        Require.within("missesMm", missesMm.length, 6, 6);
        missesMm = missesMm.clone();
    }

    @Override
    public double[] missesMm() {
        return missesMm.clone();
    }

    private PlaceMm[] corners() {
        return new PlaceMm[] {topLeft, topRight, bottomRight, bottomLeft};
    }

    /** Angles inside the corners: top left, top right, bottom right, bottom left; together 360. */
    public double[] cornersDeg() {
        PlaceMm[] corners = corners();
        double[] angles = new double[4];
        for (int i = 0; i < 4; i++) {
            PlaceMm at = corners[i];
            PlaceMm next = corners[(i + 1) % 4];
            PlaceMm before = corners[(i + 3) % 4];
            double turn = StrictMath.toDegrees(StrictMath.atan2(before.yMm() - at.yMm(), before.xMm() - at.xMm())
                    - StrictMath.atan2(next.yMm() - at.yMm(), next.xMm() - at.xMm()));
            angles[i] = turn < 0 ? turn + 360 : turn;
        }
        return angles;
    }

    /** The most that a corner is off a right angle, in degrees. */
    public double outOfSquareDeg() {
        double most = 0;
        for (double angle : cornersDeg()) {
            most = Math.max(most, Math.abs(angle - 90));
        }
        return most;
    }

    /** The most that the end of a side stands off the square raised on its neighbour, in mm. */
    public double outOfSquareMm() {
        PlaceMm[] corners = corners();
        double[] angles = cornersDeg();
        double most = 0;
        for (int i = 0; i < 4; i++) {
            double off = Math.abs(StrictMath.cos(StrictMath.toRadians(angles[i])));
            most = Math.max(most, off * Math.max(length(corners[i], corners[(i + 1) % 4]), length(corners[i], corners[(i + 3) % 4])));
        }
        return most;
    }

    /** Falling less rising diagonal. */
    public double diagonalsDifferMm() {
        return length(topLeft, bottomRight) - length(bottomLeft, topRight);
    }

    /** Root mean square of the misses: how much the six measures disagree. */
    public double disagreementMm() {
        double sum = 0;
        for (double miss : missesMm) {
            sum += miss * miss;
        }
        return StrictMath.sqrt(sum / missesMm.length);
    }

    private static double length(PlaceMm a, PlaceMm b) {
        return StrictMath.hypot(b.xMm() - a.xMm(), b.yMm() - a.yMm());
    }

    public OpeningShape shape() {
        return new OpeningShape("measured frame", List.of(new StraightEdge(bottomLeft, topLeft), new StraightEdge(topLeft, topRight),
                new StraightEdge(topRight, bottomRight), new StraightEdge(bottomRight, bottomLeft)), 0);
    }

    /** What a person should know before cutting: out of square, measures that disagree. */
    public List<Problem> problems() {
        List<Problem> problems = new ArrayList<>();
        if (disagreementMm() > TAPE_MM) {
            problems.add(Problem.of("measures-disagree", Severity.WARNING, "measured frame", String.format(Locale.ROOT,
                    "the four sides and two diagonals disagree by %.1f mm; they cannot tell which is wrong: measure all six again",
                    disagreementMm())));
        }
        if (outOfSquareDeg() > SQUARE_DEG) {
            problems.add(Problem.of("out-of-square", Severity.WARNING, "measured frame", String.format(Locale.ROOT,
                    "the opening is out of square by %.1f mm (%.2f degrees): make the panel to its four corners or smaller, not to width and height",
                    outOfSquareMm(),
                    outOfSquareDeg())));
        }
        return problems;
    }
}
