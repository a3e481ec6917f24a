package saddlebar.model.store;

import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import com.google.gson.Strictness;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import com.google.gson.stream.MalformedJsonException;

/**
 * JSON (RFC 8259) as plain values: {@code String, Long, Double, BigDecimal, Boolean, List, Map} and null. A whole number becomes a Long, another
 * one the Double that is written the same way, else a BigDecimal: nothing is rounded unseen.
 */
public final class Json {
    private static final int DEEPEST = 64;

    private Json() {
    }

    /** @throws IOException if the text is not one JSON value and nothing else */
    public static Object read(String text) throws IOException {
        try (JsonReader reader = new JsonReader(new StringReader(text))) {
            reader.setStrictness(Strictness.STRICT);
            Object value = value(reader, 0);
            if (reader.peek() != JsonToken.END_DOCUMENT) {
                throw new MalformedJsonException("text after the value");
            }
            return value;
        } catch (IllegalStateException | NumberFormatException e) {
            throw new MalformedJsonException(e.getMessage(), e);
        }
    }

    private static Object value(JsonReader reader, int depth) throws IOException {
        if (depth > DEEPEST) {
            throw new MalformedJsonException("more than " + DEEPEST + " levels");
        }
        switch (reader.peek()) {
            case BEGIN_OBJECT :
                return object(reader, depth);
            case BEGIN_ARRAY :
                List<Object> list = new ArrayList<>();
                reader.beginArray();
                while (reader.hasNext()) {
                    list.add(value(reader, depth + 1));
                }
                reader.endArray();
                return Collections.unmodifiableList(list);
            case STRING :
                return reader.nextString();
            case BOOLEAN :
                return reader.nextBoolean();
            case NULL :
                reader.nextNull();
                return null;
            case NUMBER :
                return number(reader.nextString());
            default :
                throw new MalformedJsonException("unexpected " + reader.peek());
        }
    }

    private static Map<String, Object> object(JsonReader reader, int depth) throws IOException {
        Map<String, Object> map = new LinkedHashMap<>();
        reader.beginObject();
        while (reader.hasNext()) {
            String name = reader.nextName();
            if (map.containsKey(name)) {
                throw new MalformedJsonException("\"" + name + "\" stands twice");
            }
            map.put(name, value(reader, depth + 1));
        }
        reader.endObject();
        return Collections.unmodifiableMap(map);
    }

    private static Object number(String text) {
        BigDecimal exact = new BigDecimal(text);
        boolean whole = text.chars().allMatch(c -> c == '-' || c >= '0' && c <= '9');
        if (whole && !text.equals("-0") && exact.unscaledValue().bitLength() < Long.SIZE) {
            return exact.longValueExact();
        }
        double near = Double.parseDouble(text);
        return Double.isFinite(near) && new BigDecimal(Double.toString(near)).compareTo(exact) == 0 ? (Object) near : exact;
    }

    /** One line without blanks between; keys in the map's order. */
    public static String write(Object value) {
        return element(value).toString();
    }

    private static JsonElement element(Object value) {
        if (value == null) {
            return JsonNull.INSTANCE;
        } else if (value instanceof Map<?, ?> map) {
            JsonObject object = new JsonObject();
            map.forEach((key, item) -> object.add((String) key, element(item)));
            return object;
        } else if (value instanceof Iterable<?> list) {
            JsonArray array = new JsonArray();
            list.forEach(item -> array.add(element(item)));
            return array;
        } else if (value instanceof Boolean bool) {
            return new JsonPrimitive(bool);
        } else if (value instanceof Number number) {
            if (!Double.isFinite(number.doubleValue()) && !(number instanceof BigDecimal)) {
                throw new IllegalArgumentException("a record cannot hold the number " + number);
            }
            return new JsonPrimitive(number);
        } else if (value instanceof String || value instanceof Enum) {
            return new JsonPrimitive(value.toString());
        }
        throw new IllegalArgumentException("a record cannot hold a " + value.getClass().getName());
    }
}
