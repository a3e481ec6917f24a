package saddlebar.trace.suspect;

/** What the counts say of a suspect. */
public enum Standing {
    /** The one that goes with the flaws most clearly. */
    LEADING,
    /** Goes with flaws also where the suspects before it are held fixed. */
    ALSO,
    /** Goes with flaws only because it often came together with a suspect before it. */
    EXPLAINED,
    /** Goes with flaws, but always or never came together with a suspect before it, so that the counts cannot tell them apart. */
    INSEPARABLE,
    /** No more flaws than chance brings. */
    CLEAR,
    /** Too few exposed, or too few not exposed, to be tested. */
    TOO_FEW
}
