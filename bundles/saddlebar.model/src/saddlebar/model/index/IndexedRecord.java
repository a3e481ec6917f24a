package saddlebar.model.index;

import java.time.Instant;
import java.util.List;
import java.util.Map;

/**
 * What the index keeps of one record.
 *
 * @param ordinal  its place in the index, from 0
 * @param id       of the record
 * @param time     when it happened, to the millisecond
 * @param kind     key of its kind
 * @param mentions in the lens's order
 * @param measures by name
 */
public record IndexedRecord(int ordinal, String id, Instant time, String kind, List<Mention> mentions, Map<String, Double> measures) {
    /** Names of the things spoken of in a role, in order. */
    public List<String> things(Role role) {
        return mentions.stream().filter(mention -> mention.role() == role).map(Mention::thing).toList();
    }
}
