package saddlebar.materials.cost;

import java.math.BigDecimal;

/** A line of an estimate or of what it came to, as records hold it: enough to compare the two. */
public record BookedLine(String source, String what, BigDecimal quantity, String unit, BigDecimal amount, String window) {
    /** Of the whole commission. */
    public BookedLine(String source, String what, BigDecimal quantity, String unit, BigDecimal amount) {
        this(source, what, quantity, unit, amount, "");
    }

    public static BookedLine of(ReckonedLine line) {
        return new BookedLine(line.source(), line.what(), line.quantity(), line.unit(), line.amount(), line.window());
    }
}
