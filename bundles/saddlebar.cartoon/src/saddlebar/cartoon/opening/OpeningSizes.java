package saddlebar.cartoon.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Require;

/**
 * The three outlines of one opening, each square to the other: what shows (sight size), the rebate or groove in the frame (tight size), and the panel
 * to be made, which is the tight size less a clearance all round.
 *
 * @param sight       closed outline of what shows
 * @param tight       closed outline to the bottom of the rebate
 * @param panel       closed outline of the panel
 * @param rebateMm    depth of the rebate beyond the sight size, each side
 * @param clearanceMm air between panel and rebate, each side
 */
public record OpeningSizes(DrawnLine sight, DrawnLine tight, DrawnLine panel, double rebateMm, double clearanceMm) {
    /** Usual air each side; common practice, no source. */
    public static final double USUAL_CLEARANCE_MM = 3;
    /**
     * The least of a panel's edge that should stand behind the rebate, so that its border lead or solder is held and hidden; common practice, no
     * source.
     */
    public static final double LEAST_COVER_MM = 5;

    public OpeningSizes {
        Objects.requireNonNull(sight, "sight");
        Objects.requireNonNull(tight, "tight");
        Objects.requireNonNull(panel, "panel");
        Require.within("rebateMm", rebateMm, 0, 200);
        Require.within("clearanceMm", clearanceMm, 0, 100);
    }

    /**
     * From the outline that shows.
     *
     * @throws saddlebar.model.problem.Refusal if the outline is not closed or nothing is left of it
     */
    public static OpeningSizes ofSight(DrawnLine sight, double rebateMm, double clearanceMm) {
        DrawnLine tight = OutlineArea.offset(sight, Require.within("rebateMm", rebateMm, 0, 200), "tight size");
        return new OpeningSizes(OutlineArea.offset(sight, 0, "sight size"), tight,
                OutlineArea.offset(tight, -Require.within("clearanceMm", clearanceMm, 0, 100), "panel"), rebateMm, clearanceMm);
    }

    /**
     * From the outline measured in the rebate.
     *
     * @throws saddlebar.model.problem.Refusal if the outline is not closed or nothing is left of it
     */
    public static OpeningSizes ofTight(DrawnLine tight, double rebateMm, double clearanceMm) {
        return new OpeningSizes(OutlineArea.offset(tight, -Require.within("rebateMm", rebateMm, 0, 200), "sight size"), OutlineArea.offset(tight, 0,
                "tight size"),
                OutlineArea.offset(tight, -Require.within("clearanceMm", clearanceMm, 0, 100), "panel"), rebateMm, clearanceMm);
    }

    /** How much of the panel's edge stands behind the rebate. */
    public double coverMm() {
        return rebateMm - clearanceMm;
    }

    public List<Problem> problems() {
        List<Problem> problems = new ArrayList<>();
        if (coverMm() < LEAST_COVER_MM) {
            problems.add(Problem.of("edge-shows", Severity.WARNING, "opening", String.format(Locale.ROOT,
                    "only %.1f mm of the panel's edge stand behind the rebate, %.0f are wanted: "
                            + "less clearance, a deeper rebate, or a bead that covers more",
                    coverMm(),
                    LEAST_COVER_MM)));
        }
        return problems;
    }
}
