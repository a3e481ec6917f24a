package saddlebar.ui.properties;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * One line of the properties.
 *
 * @param label what it is
 * @param value what is known, in words
 * @param edit  takes a new value; empty if it cannot be changed here
 * @param lines how many lines of text are usual; more than one for notes
 */
public record Row(String label, String value, Optional<Consumer<String>> edit, int lines) {
    public Row {
        Objects.requireNonNull(label, "label");
        value = value == null ? "" : value;
        Objects.requireNonNull(edit, "edit");
    }

    static Row fact(String label, String value) {
        return new Row(label, value, Optional.empty(), 1);
    }

    static Row field(String label, String value, Consumer<String> edit) {
        return new Row(label, value, Optional.of(edit), 1);
    }

    static Row note(String label, String value, Consumer<String> edit) {
        return new Row(label, value, Optional.of(edit), 3);
    }
}
