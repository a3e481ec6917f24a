package saddlebar.trace.prov;

import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import com.google.gson.stream.JsonWriter;
import saddlebar.model.index.Mention;
import saddlebar.model.store.Json;
import saddlebar.model.store.RecordLine;
import saddlebar.trace.lineage.RecordThings;
import saddlebar.trace.lineage.Web;

/**
 * Writes records as one PROV-JSON document. A record is an activity; what it used and generated are entities; who did it is an agent. A record that corrects
 * another was informed by it; a thing that a record generated was derived from each thing that the same record used. All else of a record stands as attributes
 * of its activity, so that {@link ProvReader} gives back what was written: {@code sb:} for what every record has, {@code set:} for its settings, values that
 * are neither text, number nor yes or no as JSON text of type {@code sb:json}.
 *
 * <p>Source: Huynh, T. D., Jewell, M. O., Sezavar Keshavarz, A., Michaelides, D. T., Yang, H., Moreau, L.: The PROV-JSON Serialization, W3C Member
 * Submission, 24 April 2013; relations as PROV-DM, W3C Recommendation, 30 April 2013.
 */
public final class ProvWriter {
    /** Namespaces of the names. */
    static final Map<String, String> PREFIXES = new TreeMap<>(Map.of(ProvNames.OWN, "urn:saddlebar:prov:1#", ProvNames.THING, "urn:saddlebar:thing:1#",
            ProvNames.RECORD, "urn:saddlebar:record:1#", ProvNames.PERSON, "urn:saddlebar:person:1#", ProvNames.SETTING, "urn:saddlebar:setting:1#", "xsd",
            "http://www.w3.org/2001/XMLSchema#"));

    private final RecordThings things = new RecordThings();
    private final Map<String, Map<String, Object>> entities = new TreeMap<>();
    private final Map<String, Map<String, Object>> activities = new LinkedHashMap<>();
    private final Map<String, Map<String, Object>> agents = new TreeMap<>();
    private final Map<String, Map<String, Map<String, Object>>> relations = new LinkedHashMap<>();
    private final boolean derivations;

    /** @param derivations whether each generated thing is also said to be derived from each used one: their product, too many for a whole record of years */
    public ProvWriter(boolean derivations) {
        this.derivations = derivations;
        for (String relation : List.of("used", "wasGeneratedBy", "wasAssociatedWith", "wasInformedBy", "wasDerivedFrom")) {
            relations.put(relation, new LinkedHashMap<>());
        }
    }

    /** Takes a record. */
    public void take(RecordLine line) {
        String activity = ProvNames.of(ProvNames.RECORD, line.id());
        Map<String, Object> attributes = new LinkedHashMap<>();
        attributes.put("prov:startTime", line.time().toString());
        attributes.put("prov:endTime", line.time().toString());
        attributes.put("prov:type", typed(ProvNames.OWN + ":" + line.kind(), "xsd:QName"));
        attributes.put("sb:kind", line.kind());
        attributes.put("sb:who", line.who());
        attributes.put("sb:writer", line.writer());
        attributes.put("sb:written", line.written().toString());
        attributes.put("sb:used", typed(Json.write(line.used()), "sb:json"));
        attributes.put("sb:made", typed(Json.write(line.made()), "sb:json"));
        attributes.put("sb:supersedes", typed(Json.write(line.supersedes()), "sb:json"));
        attributes.put("sb:note", line.note());
        attributes.put("sb:sha256", line.sha256());
        attributes.put("sb:prev", line.prev());
        line.settings().forEach((name, value) -> attributes.put(ProvNames.of(ProvNames.SETTING, name), attribute(value)));
        activities.put(activity, attributes);
        List<String> used = new ArrayList<>();
        List<String> made = new ArrayList<>();
        for (Mention mention : things.mentions(line)) {
            switch (mention.role()) {
                case USED -> used.add(entity(mention.thing()));
                case MADE -> made.add(entity(mention.thing()));
                case BY -> agent(mention.thing(), activity);
                case ABOUT -> {
                    // a word to find it by: it stands among the settings
                }
            }
        }
        used.forEach(thing -> relate("used", activity, thing, Map.of("prov:activity", activity, "prov:entity", thing, "prov:time", line.time().toString())));
        made.forEach(thing -> relate("wasGeneratedBy", activity, thing,
                Map.of("prov:entity", thing, "prov:activity", activity, "prov:time", line.time().toString())));
        if (derivations) {
            made.forEach(thing -> used.stream().filter(from -> !from.equals(thing)).forEach(from -> relate("wasDerivedFrom", thing, from,
                    Map.of("prov:generatedEntity", thing, "prov:usedEntity", from, "prov:activity", activity))));
        }
        line.supersedes().forEach(corrected -> {
            String informant = ProvNames.of(ProvNames.RECORD, corrected);
            activities.putIfAbsent(informant, new LinkedHashMap<>());
            relate("wasInformedBy", activity, informant, Map.of("prov:informed", activity, "prov:informant", informant));
        });
    }

    /** Says which records follow from which: the strands of a lineage. */
    public void take(Web web) {
        web.strands().forEach(strand -> {
            String informed = ProvNames.of(ProvNames.RECORD, strand.later().id());
            String informant = ProvNames.of(ProvNames.RECORD, strand.earlier().id());
            relate("wasInformedBy", informed, informant, Map.of("prov:informed", informed, "prov:informant", informant));
        });
    }

    private void relate(String relation, String one, String two, Map<String, Object> words) {
        relations.get(relation).put("_:" + relation + "/" + one + "/" + two, new TreeMap<>(words));
    }

    private String entity(String thing) {
        String name = ProvNames.ofThing(thing);
        entities.computeIfAbsent(name, any -> {
            Map<String, Object> attributes = new LinkedHashMap<>();
            attributes.put("prov:type", typed("sb:" + thing.substring(0, thing.indexOf('=')), "xsd:QName"));
            attributes.put("prov:label", thing);
            return attributes;
        });
        return name;
    }

    private void agent(String thing, String activity) {
        String person = thing.substring(thing.indexOf('=') + 1);
        String name = ProvNames.of(ProvNames.PERSON, person);
        agents.computeIfAbsent(name, any -> new LinkedHashMap<>(Map.of("prov:label", person, "prov:type", typed("prov:Person", "xsd:QName"))));
        relate("wasAssociatedWith", activity, name, Map.of("prov:activity", activity, "prov:agent", name));
    }

    private static Map<String, Object> typed(String value, String type) {
        Map<String, Object> typed = new LinkedHashMap<>();
        typed.put("$", value);
        typed.put("type", type);
        return typed;
    }

    private static Object attribute(Object value) {
        return value instanceof String || value instanceof Boolean || value instanceof Number && !(value instanceof BigDecimal)
                ? value
                : typed(Json.write(value), "sb:json");
    }

    /** The whole document as plain values, for an answer within other JSON. */
    public Map<String, Object> document() {
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("prefix", PREFIXES);
        document.put("entity", entities);
        document.put("activity", activities);
        document.put("agent", agents);
        relations.forEach((name, all) -> {
            if (!all.isEmpty()) {
                document.put(name, all);
            }
        });
        return document;
    }

    /** Writes the document, two blanks a level. */
    public void write(Writer out) throws IOException {
        JsonWriter json = new JsonWriter(out);
        json.setIndent("  ");
        json.setHtmlSafe(false);
        value(json, document());
        json.flush();
        out.write('\n');
        out.flush();
    }

    private static void value(JsonWriter json, Object value) throws IOException {
        if (value instanceof Map<?, ?> map) {
            json.beginObject();
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                json.name((String) entry.getKey());
                value(json, entry.getValue());
            }
            json.endObject();
        } else if (value instanceof Number number) {
            json.value(number);
        } else if (value instanceof Boolean yes) {
            json.value(yes);
        } else {
            json.value((String) value);
        }
    }
}
