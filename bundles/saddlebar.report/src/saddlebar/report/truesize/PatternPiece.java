package saddlebar.report.truesize;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import saddlebar.model.art.OutlineMm;
import saddlebar.model.units.Require;

/**
 * A piece as it is drawn for cutting.
 *
 * @param label      its number, with the window's where several are mixed
 * @param outline    where the glass is cut, in mm of the panel
 * @param labelXMm   middle of the largest circle within it
 * @param labelYMm   middle of the largest circle within it
 * @param inradiusMm radius of that circle
 * @param glass      name of the glass, or empty
 */
public record PatternPiece(String label, OutlineMm outline, double labelXMm, double labelYMm, double inradiusMm, String glass) {
    public PatternPiece {
        Require.text("label", label);
        Objects.requireNonNull(outline, "outline");
        Objects.requireNonNull(glass, "glass");
        Require.within("inradiusMm", inradiusMm, 0, 1e6);
    }

    List<double[]> rings() {
        List<double[]> rings = new ArrayList<>();
        for (int ring = 0; ring < outline.rings(); ring++) {
            rings.add(outline.ring(ring));
        }
        return rings;
    }

    /** Left, top, right, bottom; of an empty outline all 0. */
    double[] box() {
        double[] box = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (double[] ring : rings()) {
            for (int i = 0; i < ring.length; i += 2) {
                box[0] = Math.min(box[0], ring[i]);
                box[1] = Math.min(box[1], ring[i + 1]);
                box[2] = Math.max(box[2], ring[i]);
                box[3] = Math.max(box[3], ring[i + 1]);
            }
        }
        return outline.isEmpty() ? new double[4] : box;
    }

    /** Left, top, right, bottom of all; pieces without outline do not count. */
    static double[] boxOf(List<PatternPiece> pieces) {
        double[] box = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (PatternPiece piece : pieces) {
            if (!piece.outline().isEmpty()) {
                double[] own = piece.box();
                box[0] = Math.min(box[0], own[0]);
                box[1] = Math.min(box[1], own[1]);
                box[2] = Math.max(box[2], own[2]);
                box[3] = Math.max(box[3], own[3]);
            }
        }
        return box;
    }
}
