package saddlebar.artwork.drawing;

import java.util.Objects;

/**
 * Where a drawn thing comes from.
 *
 * @param element its id, or its kind if it has none
 * @param line    line of the file, 0 if unknown
 */
public record Origin(String element, int line) {
    public Origin {
        Objects.requireNonNull(element, "element");
    }
}
