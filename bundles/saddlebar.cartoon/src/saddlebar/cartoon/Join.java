package saddlebar.cartoon;

import java.util.Objects;

import saddlebar.model.units.Require;
import saddlebar.model.units.Units;

/**
 * How neighbouring pieces are joined, and the gap that the join needs between their glasses.
 *
 * @param kind  copper foil, lead came, or a gap given outright
 * @param gapMm width of the gap between two neighbouring glasses, all in, 0 to 20 mm; half of it comes off each side
 */
public record Join(Kind kind, double gapMm) {
    /** Gap if nobody says otherwise: foil with adhesive and a hand's clearance, all in (common practice, no source). */
    public static final double DEFAULT_GAP_MM = 0.8;

    /** What lies in the gap. */
    public enum Kind {
        /** Copper foil folded round each edge, soldered. */
        FOIL,
        /** H section of lead; its heart is the web between the glasses. */
        CAME,
        /** A gap somebody measured. */
        GAP
    }

    public Join {
        Objects.requireNonNull(kind, "kind");
        Require.within("gapMm", gapMm, 0, 20);
    }

    /** The foil of both pieces and a clearance: gap = 2 t + c. */
    public static Join foil(double foilThicknessMm, double clearanceMm) {
        Require.within("foilThicknessMm", foilThicknessMm, 0, 1);
        Require.within("clearanceMm", clearanceMm, 0, 5);
        return new Join(Kind.FOIL, 2 * foilThicknessMm + clearanceMm);
    }

    /** Foil as it is sold, in thousandths of an inch (1 mil = 25.4 um by definition). */
    public static Join foilMil(double foilThicknessMil, double clearanceMm) {
        return foil(foilThicknessMil * Units.MM_PER_INCH / 1000, clearanceMm);
    }

    /** Lead came with a heart of this width (1.6 to 1.8 mm is common practice). */
    public static Join came(double heartMm) {
        return new Join(Kind.CAME, heartMm);
    }

    public static Join gap(double gapMm) {
        return new Join(Kind.GAP, gapMm);
    }
}
