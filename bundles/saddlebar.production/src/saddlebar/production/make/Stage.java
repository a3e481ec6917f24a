package saddlebar.production.make;

/** How far making goes; the order of the constants is the order of the work. */
public enum Stage {
    /** Numbered pieces, and the cutline drawn with numbers. */
    PIECES,
    /** One file for each stencil. */
    STENCILS,
    /** Sheets for the printer. */
    SHEETS,
    /** Cutting lists and the record of the making. */
    CARDS;

    boolean reaches(Stage other) {
        return compareTo(other) >= 0;
    }
}
