package saddlebar.cartoon.opening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Require;

/**
 * Points measured round an opening of free shape, in order, joined to a closed outline: smooth between corners, straight between two neighbouring
 * corners.
 *
 * <p>A careful survey reads its first point again at the end. What the two readings differ by is the misclosure; it is laid off along the round in
 * proportion to the way gone (Bowditch's rule, 1808). Told besides: points read twice, gaps far wider than the others, a curve that crosses itself.
 */
public final class TemplateSurvey {
    /** The last point is a second reading of the first if it lies within this of it, or within a quarter of the usual spacing, whichever is less. */
    private static final double SAME_PLACE_MM = 20;
    /** Misclosure above this is told (studio setting, no source). */
    public static final double MISCLOSURE_TOLD_MM = 3;
    /** Gaps above so many times the median are told where the edge is curved (studio setting, no source). */
    public static final double WIDE_GAP = 2.5;
    private static final double READ_TWICE_MM = 0.5;
    private static final int MOST_POINTS = 5000;

    private final String name;
    private final List<SurveyPoint> points;
    private final List<Problem> problems = new ArrayList<>();
    private OptionalDouble misclosureMm = OptionalDouble.empty();

    private TemplateSurvey(String name, List<SurveyPoint> points) {
        this.name = name;
        this.points = new ArrayList<>(points);
    }

    /**
     * @param name        of the outline, for refusals and as the element of the line
     * @param points      in order round the opening, 3 to 5000
     * @param toleranceMm how far the straight steps may be from the curve
     * @throws Refusal if the points make no outline
     */
    public static Template of(String name, List<SurveyPoint> points, double toleranceMm) {
        Require.text("name", name);
        Require.within("toleranceMm", toleranceMm, 1e-4, 100);
        return new TemplateSurvey(name, points).template(toleranceMm);
    }

    private Template template(double toleranceMm) {
        requireEnough();
        if (points.size() > MOST_POINTS) {
            throw new Refusal(name, "it has " + points.size() + " points", "give at most " + MOST_POINTS);
        }
        dropReadTwice();
        requireEnough();
        close();
        requireEnough();
        tellGaps();
        List<double[]> steps = new ArrayList<>();
        runs().forEach(run -> steps.addAll(run.steps(toleranceMm)));
        DrawnLine outline = new DrawnLine(name, 0, steps.stream().flatMapToDouble(Arrays::stream).toArray(), true);
        tellCrossing(outline);
        problems.sort(Problem.WORST_FIRST);
        return new Template(outline, misclosureMm, problems);
    }

    private void requireEnough() {
        if (points.size() < 3) {
            throw new Refusal(name, "it has " + points.size() + " different points", "measure at least three, better twenty, round the opening");
        }
    }

    private void dropReadTwice() {
        for (int i = points.size() - 1; i > 0; i--) {
            SurveyPoint point = points.get(i);
            if (point.distanceMm(points.get(i - 1)) < READ_TWICE_MM) {
                problems.add(Problem.at("point-twice", Severity.NOTE, point.xMm(), point.yMm(), "point " + (i + 1)
                        + " was read at the place of the one before; it is left out"));
                points.remove(i);
            }
        }
    }

    private void close() {
        SurveyPoint first = points.get(0);
        SurveyPoint last = points.get(points.size() - 1);
        double off = last.distanceMm(first);
        if (points.size() < 4 || off > Math.min(SAME_PLACE_MM, medianGap() / 4)) {
            problems.add(Problem.at("no-closing-reading", Severity.NOTE, first.xMm(), first.yMm(),
                    "the first point was not read again at the end, so nothing proves the round: read it twice"));
            return;
        }
        misclosureMm = OptionalDouble.of(off);
        if (off > MISCLOSURE_TOLD_MM) {
            problems.add(Problem.at("misclosure", Severity.WARNING, first.xMm(), first.yMm(),
                    String.format(Locale.ROOT,
                            "the two readings of the first point are %.1f mm apart; the difference is spread round the opening: "
                                    + "measure again if glass is to fit",
                            off)));
        }
        double round = 0;
        for (int i = 1; i < points.size(); i++) {
            round += points.get(i).distanceMm(points.get(i - 1));
        }
        double dx = last.xMm() - first.xMm();
        double dy = last.yMm() - first.yMm();
        double gone = 0;
        List<SurveyPoint> adjusted = new ArrayList<>();
        adjusted.add(first);
        for (int i = 1; i + 1 < points.size(); i++) {
            SurveyPoint point = points.get(i);
            gone += point.distanceMm(points.get(i - 1));
            adjusted.add(new SurveyPoint(point.xMm() - dx * gone / round, point.yMm() - dy * gone / round, point.corner()));
        }
        points.clear();
        points.addAll(adjusted);
    }

    private double medianGap() {
        double[] gaps = new double[points.size() - 1];
        for (int i = 0; i < gaps.length; i++) {
            gaps[i] = points.get(i + 1).distanceMm(points.get(i));
        }
        Arrays.sort(gaps);
        return gaps[gaps.length / 2];
    }

    /** Wide gaps between two corners are straight edges and need no points. */
    private void tellGaps() {
        double usual = medianGap();
        for (int i = 0; i < points.size(); i++) {
            SurveyPoint point = points.get(i);
            SurveyPoint next = points.get((i + 1) % points.size());
            double gap = point.distanceMm(next);
            if (gap > WIDE_GAP * usual && !(point.corner() && next.corner())) {
                problems.add(Problem.at("wide-gap", Severity.WARNING, (point.xMm() + next.xMm()) / 2, (point.yMm() + next.yMm()) / 2,
                        String.format(Locale.ROOT,
                                "%.0f mm without a point where the others are %.0f mm apart: the curve is a guess here, measure more points", gap, usual)));
            }
        }
    }

    private List<SmoothRun> runs() {
        int first = -1;
        for (int i = 0; i < points.size() && first < 0; i++) {
            first = points.get(i).corner() ? i : -1;
        }
        if (first < 0) {
            return List.of(new SmoothRun(points, true));
        }
        List<SmoothRun> runs = new ArrayList<>();
        List<SurveyPoint> run = new ArrayList<>();
        for (int step = 0; step <= points.size(); step++) {
            SurveyPoint point = points.get((first + step) % points.size());
            run.add(point);
            if (point.corner() && run.size() > 1) {
                runs.add(new SmoothRun(List.copyOf(run), false));
                run.clear();
                run.add(point);
            }
        }
        return runs;
    }

    private void tellCrossing(DrawnLine outline) {
        Coordinate[] points = new Coordinate[outline.points() + 1];
        for (int i = 0; i < outline.points(); i++) {
            points[i] = new Coordinate(outline.x(i), outline.y(i));
        }
        points[outline.points()] = points[0].copy();
        if (!new GeometryFactory().createLineString(points).isSimple()) {
            SurveyPoint first = this.points.get(0);
            problems.add(Problem.at("outline-crosses", Severity.ERROR, first.xMm(), first.yMm(),
                    "the outline through these points crosses itself: see that they go round in order, and mark the corners"));
        }
    }
}
