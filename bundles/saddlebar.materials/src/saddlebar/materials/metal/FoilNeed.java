package saddlebar.materials.metal;

import saddlebar.model.units.Require;

/**
 * Copper foil around every piece.
 *
 * @param netM   sum of the pieces' perimeters, which is twice the inner joints plus the outer edges
 * @param totalM with overlaps and tears
 * @param rolls  rolls to have at hand
 */
public record FoilNeed(double netM, double totalM, int rolls) {
    /** Overlap where an end meets its beginning, and what tears (studio setting, no source). */
    public static final double WASTE_SHARE = 0.1;
    /** 36 yd, as foil is commonly sold (studio setting, no source). */
    public static final double ROLL_M = 32.9184;
    /** Wanted fold on each face (common practice, no source). */
    public static final double LEAST_FOLD_MM = 0.8;
    public static final double MOST_FOLD_MM = 1.6;

    public static FoilNeed of(double perimetersMm) {
        Require.within("perimetersMm", perimetersMm, 0, 1e9);
        double net = perimetersMm / 1000;
        double total = net * (1 + WASTE_SHARE);
        return new FoilNeed(net, total, (int) Math.ceil(total / ROLL_M - 1e-9));
    }

    /** How far a foil folds over each face of the glass. */
    public static double foldMm(double foilWidthMm, double glassThicknessMm) {
        return (foilWidthMm - glassThicknessMm) / 2;
    }

    /** Whether the fold is as wanted. */
    public static boolean fits(double foilWidthMm, double glassThicknessMm) {
        double fold = foldMm(foilWidthMm, glassThicknessMm);
        return fold >= LEAST_FOLD_MM && fold <= MOST_FOLD_MM;
    }
}
