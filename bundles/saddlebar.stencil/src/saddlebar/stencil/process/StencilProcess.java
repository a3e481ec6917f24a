package saddlebar.stencil.process;

import saddlebar.stencil.BitBands;

/**
 * How a sheet becomes the stencil on a screen: what prints, and which way round. Whoever works another way adds a bundle with one such
 * service. Services have no state.
 */
public interface StencilProcess {
    /** Short word used in recipes, records and commands; never changed. */
    String key();

    /** Whether what must print is white on the sheet, so that toner lies everywhere else; if not, what must print is toner. */
    boolean printsWhite();

    /**
     * Whether the file must be mirrored. What touches a side of the mesh shows mirrored on that side, and the glass shows what the squeegee
     * side shows to the printer; a picture on the exterior is seen through the glass. Hence one exchange of left and right for toner on the
     * squeegee side, another for the exterior face.
     */
    default boolean mirrored(TonerSide touches, Face painted) {
        return touches == TonerSide.SQUEEGEE ^ painted == Face.EXTERIOR;
    }

    /** What can hurt whoever does this, in a sentence that stands where the act is told. */
    String caution();

    /**
     * From paint (1 prints) to toner (1 is black), mirrored by {@link #mirrored} or as the person ordered it.
     *
     * @param paint closed with the result
     */
    default BitBands toner(BitBands paint, boolean mirrored) {
        return new ProcessedBands(paint, printsWhite(), mirrored);
    }
}
