package saddlebar.ui.properties;

import java.util.List;

/**
 * Several things that are chosen together, or none: the Properties tell of them as of one.
 *
 * @param things none or more than one
 */
public record ChosenThings(List<Object> things) {
    public ChosenThings {
        things = List.copyOf(things);
    }
}
