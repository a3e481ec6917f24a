package saddlebar.trace.prov;

import java.io.IOException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Json;
import saddlebar.model.store.RecordDraft;

/** Reads a PROV-JSON document that {@link ProvWriter} wrote. */
public final class ProvReader {
    /**
     * One record as it was.
     *
     * @param draft    all that is to be appended
     * @param written  when it was first appended
     * @param writer   to whose chain
     */
    public record Told(RecordDraft draft, Instant written, String writer) {
    }

    private ProvReader() {
    }

    /**
     * All records in the document's order, which is that of the books.
     *
     * @param name of the file, for refusals
     * @throws Refusal if it is no such document
     */
    public static List<Told> read(String name, String text) {
        Object document;
        try {
            document = Json.read(text);
        } catch (IOException e) {
            throw new Refusal(name, "is no JSON (" + e.getMessage() + ")", "name a file that prov --out wrote", e);
        }
        if (!(document instanceof Map<?, ?> map) || !(map.get("activity") instanceof Map<?, ?> activities)) {
            throw new Refusal(name, "holds no activities of PROV-JSON", "name a file that prov --out wrote");
        }
        if (!(map.get("prefix") instanceof Map<?, ?> prefixes) || !ProvWriter.PREFIXES.get(ProvNames.OWN).equals(prefixes.get(ProvNames.OWN))) {
            throw new Refusal(name, "is not a making record: the prefix " + ProvNames.OWN + " is not " + ProvWriter.PREFIXES.get(ProvNames.OWN),
                    "name a file that prov --out wrote");
        }
        List<Told> all = new ArrayList<>();
        activities.forEach((key, value) -> {
            if (value instanceof Map<?, ?> attributes && attributes.containsKey("sb:kind")) { // others are only named
                all.add(told(name + ": " + key, (String) key, attributes));
            }
        });
        return all;
    }

    private static Told told(String where, String key, Map<?, ?> attributes) {
        try {
            Map<String, Object> settings = new LinkedHashMap<>();
            for (Map.Entry<?, ?> entry : attributes.entrySet()) {
                String attribute = (String) entry.getKey();
                if (attribute.startsWith(ProvNames.SETTING + ":")) {
                    settings.put(ProvNames.local(attribute), value(entry.getValue()));
                }
            }
            RecordDraft draft = new RecordDraft(Optional.of(ProvNames.local(key)), Optional.of(instant(attributes, "prov:startTime")),
                    text(attributes, "sb:kind"), Optional.of(text(attributes, "sb:who")), list(attributes, "sb:used"), list(attributes, "sb:made"),
                    settings, list(attributes, "sb:supersedes"), text(attributes, "sb:note"));
            return new Told(draft, instant(attributes, "sb:written"), text(attributes, "sb:writer"));
        } catch (IOException | DateTimeException | IllegalArgumentException e) {
            throw new Refusal(where, "is no record (" + e.getMessage() + ")", "export it again", e);
        }
    }

    private static Object value(Object value) throws IOException {
        return value instanceof Map<?, ?> typed && "sb:json".equals(typed.get("type")) && typed.get("$") instanceof String json ? Json.read(json) : value;
    }

    private static Instant instant(Map<?, ?> attributes, String name) {
        return Instant.parse(text(attributes, name));
    }

    private static String text(Map<?, ?> attributes, String name) {
        if (attributes.get(name) instanceof String text) {
            return text;
        }
        throw new IllegalArgumentException(name + " is missing");
    }

    private static List<String> list(Map<?, ?> attributes, String name) throws IOException {
        if (value(attributes.get(name)) instanceof List<?> list && list.stream().allMatch(String.class::isInstance)) {
            return list.stream().map(String.class::cast).toList();
        }
        throw new IllegalArgumentException(name + " is no list");
    }
}
