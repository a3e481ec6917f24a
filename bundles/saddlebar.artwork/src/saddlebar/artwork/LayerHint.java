package saddlebar.artwork;

/** What a layer looks like by its name or, for the cutline, by what is drawn in it. Only a guess to start from: the person says what counts. */
public enum LayerHint {
    /** Lines where the glass is cut. */
    CUTLINE,
    /** Coloured areas that say which glass. */
    GLASS,
    /** Solid painted lines. */
    TRACE,
    /** Shading in tones. */
    MATT,
    /** Letters. */
    LETTERING,
    /** Silver stain. */
    STAIN,
    /** Coloured enamel. */
    ENAMEL,
    /** Nothing can be told. */
    NONE
}
