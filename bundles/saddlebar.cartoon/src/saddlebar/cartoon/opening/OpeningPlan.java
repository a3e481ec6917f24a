package saddlebar.cartoon.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;

/**
 * All that follows from an opening's measures.
 *
 * @param shape    as measured, exact
 * @param fit      the solved frame, where four sides and two diagonals were measured
 * @param sizes    outlines of what shows, of the rebate, of the panel
 * @param division bars and panels
 * @param problems worst first
 */
public record OpeningPlan(OpeningShape shape, Optional<FrameFit> fit, OpeningSizes sizes, PanelDivision division, List<Problem> problems) {
    private static final double TOLERANCE_MM = 0.01;

    public OpeningPlan {
        Objects.requireNonNull(shape, "shape");
        Objects.requireNonNull(fit, "fit");
        Objects.requireNonNull(sizes, "sizes");
        Objects.requireNonNull(division, "division");
        problems = List.copyOf(problems);
    }

    /** @throws Refusal if no opening has these measures, or nothing is left of it for a panel */
    public static OpeningPlan of(OpeningMeasures measures) {
        Optional<FrameFit> fit = measures.frame().map(MeasuredFrame::fit);
        OpeningShape shape = fit.isPresent() ? fit.get().shape() : shape(measures);
        DrawnLine line = shape.line(TOLERANCE_MM);
        OpeningSizes sizes = measures.inRebate()
                ? OpeningSizes.ofTight(line, measures.rebateMm(), measures.clearanceMm())
                : OpeningSizes.ofSight(line, measures.rebateMm(), measures.clearanceMm());
        PanelDivision division = PanelDivision.of(sizes.panel(), shape.springingMm(), measures.bars(), measures.mostPerimeterMm());
        List<Problem> problems = new ArrayList<>();
        fit.ifPresent(frame -> problems.addAll(frame.problems()));
        problems.addAll(sizes.problems());
        problems.addAll(division.problems());
        problems.sort(Problem.WORST_FIRST);
        return new OpeningPlan(shape, fit, sizes, division, problems);
    }

    private static OpeningShape shape(OpeningMeasures measures) {
        try {
            return measures.kind().shape(measures.widthMm(), measures.heightMm(), measures.riseMm());
        } catch (IllegalArgumentException outOfRange) {
            throw new Refusal(measures.kind().word() + " opening", "its measures are out of range: " + outOfRange.getMessage(),
                    "give sizes of 10 mm to 20 m, and a rise above nothing", outOfRange);
        }
    }

    /** Least and greatest x and y of an outline: left, top, right, bottom in mm. */
    public static double[] box(DrawnLine outline) {
        double[] box = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        for (int i = 0; i < outline.points(); i++) {
            box[0] = Math.min(box[0], outline.x(i));
            box[1] = Math.min(box[1], outline.y(i));
            box[2] = Math.max(box[2], outline.x(i));
            box[3] = Math.max(box[3], outline.y(i));
        }
        return box;
    }
}
