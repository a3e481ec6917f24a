package saddlebar.model.store;

import java.io.IOException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import com.google.gson.stream.MalformedJsonException;

/**
 * One record as it stands in its file. Immutable.
 *
 * @param id         UUID of the record
 * @param time       when it happened
 * @param written    when it was appended
 * @param kind       key of its kind; may be one that this version does not know
 * @param who        who did it
 * @param writer     the user and machine whose chain it stands in
 * @param used       ids of what it used
 * @param made       ids of what it made
 * @param settings   settings of that day; texts, numbers, yes or no, lists, maps
 * @param supersedes ids of the records that it corrects
 * @param note       words of the person, or empty
 * @param prev       SHA-256 of the line before it in this writer's chain, zeros for the first
 * @param sha256     of this line, without its line feed
 * @param file       name of its file in the records folder
 * @param line       line in that file, from 1
 * @param offset     where the line starts, in bytes
 */
public record RecordLine(String id, Instant time, Instant written, String kind, String who, String writer, List<String> used, List<String> made,
        Map<String, Object> settings, List<String> supersedes, String note, String prev, String sha256, String file, int line, long offset) {
    /** What the first line of a chain names as the line before it. */
    public static final String NO_PREV = "0".repeat(64);

    public RecordLine {
        used = List.copyOf(used);
        made = List.copyOf(made);
        supersedes = List.copyOf(supersedes);
    }

    /** The line to write, without its line feed. Keys with nothing to say are left out, except those that every record has. */
    static String text(String id, Instant written, String writer, String prev, RecordDraft draft, String who) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("id", id);
        map.put("time", draft.time().orElse(written).toString());
        map.put("written", written.toString());
        map.put("kind", draft.kind());
        map.put("who", who);
        map.put("writer", writer);
        map.put("used", draft.used());
        map.put("made", draft.made());
        map.put("settings", draft.settings());
        if (!draft.supersedes().isEmpty()) {
            map.put("supersedes", draft.supersedes());
        }
        if (!draft.note().isEmpty()) {
            map.put("note", draft.note());
        }
        map.put("prev", prev);
        return Json.write(map);
    }

    /** @throws IOException telling what is wrong with the text */
    static RecordLine parse(String text, String sha256, String file, int line, long offset) throws IOException {
        if (!(Json.read(text) instanceof Map<?, ?> map)) {
            throw new MalformedJsonException("the line is no object");
        }
        Instant time = instant(map, "time");
        Instant written = map.containsKey("written") ? instant(map, "written") : time;
        Map<String, Object> settings = new LinkedHashMap<>();
        if (map.get("settings") instanceof Map<?, ?> given) {
            given.forEach((key, value) -> settings.put((String) key, value));
        } else {
            throw new MalformedJsonException("\"settings\" is no object");
        }
        return new RecordLine(string(map, "id"), time, written, string(map, "kind"), optional(map, "who"), optional(map, "writer"), strings(map, "used"),
                strings(map, "made"), java.util.Collections.unmodifiableMap(settings), strings(map, "supersedes"), optional(map, "note"),
                string(map, "prev"), sha256, file, line, offset);
    }

    private static String string(Map<?, ?> map, String key) throws IOException {
        if (map.get(key) instanceof String text && !text.isEmpty()) {
            return text;
        }
        throw new MalformedJsonException("\"" + key + "\" is missing or no text");
    }

    private static String optional(Map<?, ?> map, String key) throws IOException {
        return map.containsKey(key) ? map.get(key) instanceof String text ? text : string(map, key) : "";
    }

    private static Instant instant(Map<?, ?> map, String key) throws IOException {
        try {
            return Instant.parse(string(map, key));
        } catch (DateTimeException e) {
            throw new MalformedJsonException("\"" + key + "\" is no instant of ISO 8601", e);
        }
    }

    private static List<String> strings(Map<?, ?> map, String key) throws IOException {
        if (!map.containsKey(key)) {
            return List.of();
        }
        if (map.get(key) instanceof List<?> list && list.stream().allMatch(String.class::isInstance)) {
            return list.stream().map(String.class::cast).toList();
        }
        throw new MalformedJsonException("\"" + key + "\" is no list of texts");
    }
}
