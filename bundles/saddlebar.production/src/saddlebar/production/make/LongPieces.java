package saddlebar.production.make;

import java.util.Locale;
import java.util.Optional;

import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

import saddlebar.model.problem.PlaceMm;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;

/**
 * Painted pieces that are long and thin: their ends and edges heat and cool sooner than their middle, and the paint sits on one face. Told from eight
 * times as long as wide and 100 mm on (studio settings, no source); the kiln's own checks say what a schedule does to a pane.
 */
public final class LongPieces {
    /** Code of the note. */
    public static final String LONG_PAINTED = "long-painted";
    private static final double LONG = 8;
    private static final double LEAST_LENGTH_MM = 100;

    private LongPieces() {
    }

    /**
     * @param label what people call the piece
     * @param glass as cut, in mm
     * @return empty if the piece is not long, or of no area
     */
    public static Optional<Problem> caution(String label, Polygon glass) {
        if (glass.isEmpty()) {
            return Optional.empty();
        }
        Geometry box = new MinimumDiameter(glass).getMinimumRectangle();
        Coordinate[] corners = box.getCoordinates();
        if (corners.length < 4) {
            return Optional.empty();
        }
        double lengthMm = Math.max(corners[0].distance(corners[1]), corners[1].distance(corners[2]));
        double widthMm = glass.getArea() / lengthMm;
        if (lengthMm < LEAST_LENGTH_MM || lengthMm < LONG * widthMm) {
            return Optional.empty();
        }
        Coordinate at = glass.getInteriorPoint().getCoordinate();
        return Optional.of(new Problem(LONG_PAINTED, Severity.NOTE, label, Optional.of(new PlaceMm(at.x, at.y)), String.format(Locale.ROOT,
                "This painted piece is %.0f mm long and %.0f mm wide in the mean, and may crack or bend in the firing: heat and cool it slowly, lay it "
                        + "flat on its whole length away from the shelf's edge, or divide it",
                lengthMm, widthMm)));
    }
}
