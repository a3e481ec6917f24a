package saddlebar.cartoon;

/** In which order new pieces take their numbers, from 1. Numbering by glass or colour: {@link Cartoon#renumbered}. */
public enum Numbering {
    /** As one reads: rows of one median piece height from the top, in a row from the left. */
    READING_ORDER,
    /** Columns of one median piece width from the left, in a column from the top: for tall lights. */
    COLUMN_ORDER,
    /** From the largest piece to the smallest. */
    LARGEST_FIRST
}
