package saddlebar.production.record;

import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One thing done, in the words of whoever did it.
 *
 * @param where for refusals: file and line, or {@code record}
 * @param when  it happened
 * @param kind  a key of {@link saddlebar.model.store.RecordKind}
 * @param who   did it; empty if not told
 * @param words the other columns that are filled in, by name; numbers as text
 */
public record Deed(String where, Instant when, String kind, String who, Map<String, String> words) {
    public Deed {
        words = Collections.unmodifiableMap(new LinkedHashMap<>(words));
    }

    String word(String column) {
        return words.getOrDefault(column, "");
    }
}
