package saddlebar.nesting.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import saddlebar.model.problem.Refusal;
import saddlebar.nesting.NestItem;
import saddlebar.nesting.Turns;

class StripFileTest {
    @Test
    void readsTheFormOfTheOpenDataSets() throws IOException {
        StripFile strip = read("""
                {"name": "two", "strip_height": 40.5, "items": [
                  {"id": 0, "demand": 3, "dxf": "a/b", "allowed_orientations": [0.0, 180.0],
                   "shape": {"type": "simple_polygon", "data": [[0, 0], [7, 1.5], [7, 5], [0, 0]]}},
                  {"id": "k", "demand": 1, "shape": {"type": "simple_polygon", "data": [[0, 0], [1, 0], [1, 1]]}}]}
                """);
        assertEquals(40.5, strip.stripHeightMm());
        assertEquals(List.of("0", "k"), strip.items().stream().map(NestItem::id).toList());
        assertEquals(List.of(3, 1), strip.items().stream().map(NestItem::quantity).toList());
        assertEquals(List.of(Turns.HALF, Turns.FREE), strip.items().stream().map(NestItem::turns).toList());
        assertEquals(7 * 5 / 2.0 - 7 * 1.5 / 2, strip.items().get(0).areaMm2(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
            "{;\"strip_height\": -1} | f.json:2: strip_height is -1.0; give a height in mm above 0",
            "{\"items\": [],;;\"strip_height\": \"x\"} | f.json:3: $.strip_height is of another kind than it must be; give numbers as numbers, lists in [ ] and items in { }",
            "{\"strip_height\": 4, \"items\": [;{\"id\": 1,;\"demand\": 0}]} | f.json:3: demand is 0.0; give a whole number from 1 to 100000",
            "{\"strip_height\": 4, \"items\": [;{\"id\": 1,;\"allowed_orientations\": []}]} | f.json:3: allowed_orientations names no angle; give angles in degrees, such as [0, 180], or leave it out for any",
            "{\"strip_height\": 4, \"items\": [;{\"id\": 1}]} | f.json:2: item 1 has no shape.data; give its outline as a list of points",
            "{\"strip_height\": 4, \"items\": [{\"demand\": 1}]} | f.json:1: an item has no id; give each item an id of its own",
            "{\"strip_height\": 4, \"items\": []} | f.json: it lists no item; give at least one in items",
            "{\"items\": []} | f.json: it has no strip_height; give the height of the strip in mm",
            "{\"strip_height\": 4,; \"items\": [{ | f.json:2: it is no well-formed JSON; close every bracket and quotation mark and write the file anew",
            "[1] | f.json:1: $ is of another kind than it must be; give numbers as numbers, lists in [ ] and items in { }",
            "hello | f.json:1: it is no well-formed JSON; close every bracket and quotation mark and write the file anew"})
    void refusesWithFileAndLine(String json, String message) {
        assertEquals(message, assertThrows(Refusal.class, () -> read(json.replace(';', '\n'))).getMessage());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"[[0,0],[1,1]] | fewer than three corners", "[[0,0],[2,2],[2,0],[0,2]] | crosses or touches itself",
            "[[0,0],[1,0],[2,0]] | its size is 2 x 0 mm", "[] | shape.data is empty", "[[0,0],[1,0],[NaN,1]] | well-formed JSON"})
    void refusesOutlinesThatAreNone(String data, String words) {
        String json = "{\"strip_height\": 4, \"items\": [\n{\"id\": 1, \"shape\": {\"data\": " + data + "}}]}";
        String message = assertThrows(Refusal.class, () -> read(json)).getMessage();
        assertTrue(message.startsWith("f.json:2: ") && message.contains(words), message);
    }

    private static StripFile read(String json) throws IOException {
        return StripFile.read(new StringReader(json), "f.json");
    }
}
