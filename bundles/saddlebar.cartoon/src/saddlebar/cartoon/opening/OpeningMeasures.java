package saddlebar.cartoon.opening;

import java.util.Objects;
import java.util.Optional;

import saddlebar.model.units.Require;

/**
 * What was measured of an opening, and what is wanted of the panel in it.
 *
 * @param kind            its shape; a measured frame is a rectangle that may be out of square
 * @param widthMm         between the jambs or across; of a measured frame not asked
 * @param heightMm        from sill to crown; of round shapes and a measured frame not asked
 * @param riseMm          of the head, 0 where the shape does not need it
 * @param frame           four sides and two diagonals, in place of width and height of a rectangle
 * @param inRebate        whether it was measured in the rebate (tight size); else of what shows (sight size)
 * @param rebateMm        depth of the rebate, each side
 * @param clearanceMm     air between panel and rebate, each side
 * @param bars            how far apart bars may be
 * @param mostPerimeterMm limit of one panel
 */
public record OpeningMeasures(OpeningKinds kind, double widthMm, double heightMm, double riseMm, Optional<MeasuredFrame> frame, boolean inRebate,
        double rebateMm, double clearanceMm, BarRule bars, double mostPerimeterMm) {
    public OpeningMeasures {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(frame, "frame");
        Objects.requireNonNull(bars, "bars");
        if (frame.isPresent() && kind != OpeningKinds.RECTANGLE) {
            throw new IllegalArgumentException("only a rectangle is measured by four sides and two diagonals, not a " + kind.word());
        }
        Require.within("rebateMm", rebateMm, 0, 200);
        Require.within("clearanceMm", clearanceMm, 0, 100);
        Require.within("mostPerimeterMm", mostPerimeterMm, 500, 20_000);
    }
}
