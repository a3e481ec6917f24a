package saddlebar.production.pieces;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** In which order pieces are numbered anew. */
public enum NumberOrder {
    /** Rows from the top, each from the left. */
    READING,
    /** Columns from the left, each from the top. */
    COLUMNS,
    /** From the largest to the smallest. */
    SIZE,
    /** By the name of the glass, then as one reads: what is cut from one sheet has numbers in a row. */
    GLASS;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<NumberOrder> ofWord(String word) {
        return Arrays.stream(values()).filter(order -> order.word().equals(word)).findFirst();
    }
}
