package saddlebar.stencil.printer;

import java.util.Locale;

import saddlebar.model.units.Require;

/**
 * Whether a solid of toner closes a mesh, or shades an emulsion, judged before a sheet is fused. A solid that lets more than a hundredth of the light
 * through mostly has pinholes, and each pinhole prints a speck. Common practice, no source: the two limits are studio settings, not a standard.
 *
 * @param transmittance light through the solid over light through bare film, above 0 to 1
 * @param verdict       what to do
 */
public record TonerJudgement(double transmittance, Verdict verdict) {
    private static final double DENSE = 0.01;
    private static final double THIN = 0.03162;

    /** What to do with such a sheet. */
    public enum Verdict {
        /** Density 2 and more. */
        FUSE,
        /** Density 1.5 to 2. */
        LOOK_FIRST,
        /** Less than 1.5. */
        PRINT_AGAIN
    }

    public static TonerJudgement of(double transmittance) {
        Require.within("transmittance", transmittance, 1e-6, 1);
        return new TonerJudgement(transmittance, transmittance <= DENSE ? Verdict.FUSE : transmittance <= THIN ? Verdict.LOOK_FIRST : Verdict.PRINT_AGAIN);
    }

    public static TonerJudgement ofDensity(double density) {
        Require.within("density", density, 0, 6);
        return of(Math.pow(10, -density));
    }

    public double density() {
        return -Math.log10(transmittance);
    }

    /** In a sentence. */
    public String words() {
        String begun = String.format(Locale.ROOT, "The solid of toner has a density of %.2f: ", density());
        return begun + switch (verdict) {
            case FUSE -> "dense enough to fuse (2 or more; common practice, no source).";
            case LOOK_FIRST -> "hold it against the light and look for pinholes before fusing; 2 or more is better. Set the printer to its darkest, or to"
                    + " heavy film.";
            case PRINT_AGAIN -> "too thin, it would not close the mesh. Set the printer to its darkest or to heavy film, change the cartridge, print again.";
        };
    }
}
