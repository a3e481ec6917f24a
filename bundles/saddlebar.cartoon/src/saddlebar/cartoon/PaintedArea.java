package saddlebar.cartoon;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

import saddlebar.model.units.Require;

/** Where paint goes on a piece: past the cut edge by the bleed, so that none is bare; or only where neither foil nor came covers it. */
public final class PaintedArea {
    /** Corners are kept sharp up to this ratio of corner distance to offset, and cut straight beyond. */
    private static final double MITRE_LIMIT = 2;

    private PaintedArea() {
    }

    /**
     * The clip of a stencil for one piece.
     *
     * @param glass   the piece's glass, not changed
     * @param bleedMm how far paint runs past the cut edge, 0 to 50 mm
     * @return the glass grown by the bleed with mitred corners; empty for empty glass
     */
    public static Geometry of(Polygon glass, double bleedMm) {
        return grown(glass, Require.within("bleedMm", bleedMm, 0, 50));
    }

    /** The same for a piece of a cartoon. */
    public static Geometry of(CartoonPiece piece, double bleedMm) {
        return of(piece.glass(), bleedMm);
    }

    /**
     * What shows between the sight lines.
     *
     * @param glass     the piece's glass, not changed
     * @param coveredMm how much foil or came covers along the edge, 0 to 50 mm
     * @return the glass shrunk by what is covered: may be several parts, may be empty
     */
    public static Geometry visible(Polygon glass, double coveredMm) {
        return grown(glass, -Require.within("coveredMm", coveredMm, 0, 50));
    }

    private static Geometry grown(Polygon glass, double byMm) {
        if (byMm == 0 || glass.isEmpty()) {
            return glass.copy();
        }
        var mitred = new BufferParameters(BufferParameters.DEFAULT_QUADRANT_SEGMENTS, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE,
                MITRE_LIMIT);
        return BufferOp.bufferOp(glass, byMm, mitred);
    }
}
