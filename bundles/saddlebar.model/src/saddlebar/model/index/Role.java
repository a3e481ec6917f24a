package saddlebar.model.index;

/** How a record speaks of a thing. The order is part of the index's format. */
public enum Role {
    /** It went in. */
    USED,
    /** It came out. */
    MADE,
    /** Whoever or whatever did it. */
    BY,
    /** It is only spoken of: a factor, a place, something named beside. */
    ABOUT
}
