package saddlebar.model.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The grammar of RFC 8259. */
class JsonTest {
    @Test
    void valuesComeBackAsWhatTheyAre() throws IOException {
        assertEquals(Arrays.asList(1L, -0.0, 1.5, 1e300, "a", true, null, List.of(), Map.of("k", -7L)),
                Json.read(" [1, -0, 1.5, 1e300, \"a\", true, null, [], {\"k\":-7}] "));
        assertEquals(new BigDecimal("0.1000000000000000055511151231257827"), Json.read("0.1000000000000000055511151231257827"));
        assertEquals(new BigDecimal("92233720368547758070"), Json.read("92233720368547758070"));
        assertEquals(Long.MAX_VALUE, Json.read("9223372036854775807"));
        assertEquals("\ud83d\ude00 \u2028 \"\\ \n", Json.read(Json.write("\ud83d\ude00 \u2028 \"\\ \n")));
        assertEquals("{\"a\":[1,2.0,\"x\"],\"b\":null}", Json.write(ordered()));
    }

    private static Map<String, Object> ordered() {
        Map<String, Object> map = new java.util.LinkedHashMap<>();
        map.put("a", List.of(1L, 2.0, "x"));
        map.put("b", null);
        return map;
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "[1,]", "{\"a\":1,}", "{a:1}", "'a'", "01", "+1", "1.", ".5", "NaN", "Infinity", "tru", "[1] 2", "{\"a\":1,\"a\":2}",
            "\"\\x\"", "# x\n1", "// x\n1", "\"a\nb\"", "True"})
    void whatTheStandardDoesNotAllowIsRefused(String text) {
        assertThrows(IOException.class, () -> Json.read(text));
    }

    @Test
    void whatJsonCannotHoldIsNotWritten() {
        assertThrows(IllegalArgumentException.class, () -> Json.write(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Json.write(List.of(Double.POSITIVE_INFINITY)));
        assertThrows(IllegalArgumentException.class, () -> Json.write(new Object()));
    }

    @Test
    void deepNestingIsRefusedBeforeTheStackEnds() {
        assertThrows(IOException.class, () -> Json.read("[".repeat(100_000)));
    }
}
