package saddlebar.model.store;

import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import saddlebar.model.units.Require;

/**
 * A record to be appended. What is left empty the book fills in: a new id, now, and who sits here.
 *
 * @param id         given by the caller where another draft of the same batch names it
 * @param time       when it happened
 * @param kind       key of its kind
 * @param who        who did it
 * @param used       ids of what it used
 * @param made       ids of what it made
 * @param settings   settings of that day, in full: texts, numbers, yes or no, lists and maps of these
 * @param supersedes ids of the records that it corrects
 * @param note       words of the person, or empty
 */
public record RecordDraft(Optional<String> id, Optional<Instant> time, String kind, Optional<String> who, List<String> used, List<String> made,
        Map<String, Object> settings, List<String> supersedes, String note) {
    public RecordDraft {
        Require.text("kind", kind);
        used = List.copyOf(used);
        made = List.copyOf(made);
        settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
        supersedes = List.copyOf(supersedes);
    }

    public static RecordDraft of(RecordKind kind) {
        return new RecordDraft(Optional.empty(), Optional.empty(), kind.key(), Optional.empty(), List.of(), List.of(), Map.of(), List.of(), "");
    }

    public RecordDraft withId(String given) {
        return new RecordDraft(Optional.of(given), time, kind, who, used, made, settings, supersedes, note);
    }

    public RecordDraft at(Instant when) {
        return new RecordDraft(id, Optional.of(when), kind, who, used, made, settings, supersedes, note);
    }

    public RecordDraft by(String person) {
        return new RecordDraft(id, time, kind, Optional.of(person), used, made, settings, supersedes, note);
    }

    public RecordDraft using(List<String> ids) {
        return new RecordDraft(id, time, kind, who, ids, made, settings, supersedes, note);
    }

    public RecordDraft making(List<String> ids) {
        return new RecordDraft(id, time, kind, who, used, ids, settings, supersedes, note);
    }

    public RecordDraft with(Map<String, Object> allSettings) {
        return new RecordDraft(id, time, kind, who, used, made, allSettings, supersedes, note);
    }

    public RecordDraft superseding(List<String> ids) {
        return new RecordDraft(id, time, kind, who, used, made, settings, ids, note);
    }

    public RecordDraft noting(String words) {
        return new RecordDraft(id, time, kind, who, used, made, settings, supersedes, words);
    }
}
