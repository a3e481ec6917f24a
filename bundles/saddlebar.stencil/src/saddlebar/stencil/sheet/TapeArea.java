package saddlebar.stencil.sheet;

import java.util.Objects;

/**
 * A part of the sheet that would print although it is no stencil.
 *
 * @param kind   why it is open
 * @param what   the mark's own words, such as a stencil's number; may be empty
 * @param areaMm place in the toner view
 */
public record TapeArea(Kind kind, String what, RectMm areaMm) {
    /** Why a part of the mesh is open. */
    public enum Kind {
        /** The printer's margin: no toner, open where toner closes the mesh. */
        EDGE,
        /** Label and register marks at the upper end. */
        HEAD,
        /** Rule, reading mark and register marks at the lower end. */
        FOOT,
        /** A stencil's number, up-arrow and F. */
        CAPTION
    }

    public TapeArea {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(areaMm, "areaMm");
    }
}
