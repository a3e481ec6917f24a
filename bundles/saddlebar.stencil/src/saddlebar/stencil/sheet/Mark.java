package saddlebar.stencil.sheet;

import java.awt.geom.Path2D;

/**
 * Something drawn on the sheet outside the stencils.
 *
 * @param kind      what it is for
 * @param words     what it says or whose it is
 * @param boxMm     place that holds all of it
 * @param outlineMm what is drawn, filled by the non-zero rule
 */
record Mark(Kind kind, String words, RectMm boxMm, Path2D outlineMm) {
    enum Kind {
        LABEL, REGISTER, RULE, READING, CAPTION
    }
}
