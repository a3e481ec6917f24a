package saddlebar.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.StreamSupport;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Mends, numbers, marks and openings as a user types them. */
class PieceCommandsTest {
    private static final String GRID = "<g id='cutline' fill='none' stroke='#000'><rect id='frame' width='50' height='50'/>"
            + "<path id='down' d='M25 0V50'/><path id='across' d='M0 25H%s'/></g>";

    @TempDir
    Path folder;
    private CommandBench bench;

    @BeforeEach
    void art() throws IOException {
        bench = new CommandBench(folder);
        bench.svg("gap.svg", GRID.formatted("47.5"));
        assertEquals(0, bench.run("new @job --title A --paper a4"), bench.told());
        assertEquals(1, bench.run("bring @job @gap.svg --window W01"), bench.told());
    }

    private JsonObject json(int code, String line) {
        assertEquals(code, bench.run(line + " --json"), line + " said: " + bench.told());
        return bench.json();
    }

    private static List<JsonObject> rows(JsonElement array) {
        JsonArray all = array.getAsJsonArray();
        return StreamSupport.stream(all.spliterator(), false).map(JsonElement::getAsJsonObject).toList();
    }

    @Test
    void mendsAreListedAgreedToAndTakenBack() {
        List<JsonObject> found = rows(json(1, "mend @job").get("mends"));
        assertEquals(1, found.size());
        assertEquals("proposed", found.get(0).get("state").getAsString());
        String id = found.get(0).get("id").getAsString();
        List<JsonObject> agreed = rows(json(0, "mend @job W01 --accept " + id).get("mends"));
        assertEquals(List.of("agreed"), agreed.stream().map(row -> row.get("state").getAsString()).toList());
        assertTrue(bench.run("make @job --until pieces") <= 1, bench.told());
        assertTrue(bench.run("status @job --json") == 0);
        assertEquals(4, bench.json().getAsJsonArray("windows").get(0).getAsJsonObject().getAsJsonArray("pieces").size());
        assertEquals(3, bench.run("mend @job --take-back abcdef"));
        assertTrue(bench.told().contains("no mend has this id"), bench.told());
        assertEquals("proposed", rows(json(1, "mend @job --take-back all").get("mends")).get(0).get("state").getAsString());
        assertEquals(2, bench.run("mend @job --accept all --take-back all"), "one thing at a time");
    }

    @Test
    void looseArtworkIsMendedToo() throws IOException {
        byte[] before = Files.readAllBytes(bench.at("gap.svg"));
        JsonObject listed = json(1, "pieces @gap.svg --mend list");
        assertEquals(3, listed.getAsJsonArray("pieces").size());
        assertEquals(1, listed.getAsJsonArray("mends").size());
        JsonObject mended = json(0, "pieces @gap.svg --mend all");
        assertEquals(4, mended.getAsJsonArray("pieces").size());
        assertEquals(25, rows(mended.get("pieces")).get(0).get("narrowestMm").getAsDouble(), 1e-3);
        assertTrue(json(1, "pieces @gap.svg").get("mends").isJsonNull());
        assertEquals(3, bench.run("pieces @gap.svg --mend 123456"), bench.told());
        assertTrue(Arrays.equals(before, Files.readAllBytes(bench.at("gap.svg"))));
    }

    @Test
    void revisionIsTold() throws IOException {
        bench.svg("whole.svg", GRID.formatted("50"));
        JsonObject revised = json(0, "bring @job @whole.svg --window W01").getAsJsonObject("revised");
        assertEquals(2, revised.getAsJsonArray("newNumbers").size(), "halves keep no number");
        List<JsonObject> became = rows(revised.get("became"));
        assertEquals(2, became.size());
        became.forEach(row -> assertEquals(0.5, row.get("shareOfBefore").getAsDouble(), 0.05));
        assertEquals(0, bench.run("bring @job @whole.svg --window W01"), bench.told());
    }

    @Test
    void numbersLocksAndGroups() throws IOException {
        bench.svg("whole.svg", GRID.formatted("50"));
        assertEquals(1, bench.run("bring @job @gap.svg --window W02"));
        assertEquals(0, bench.run("bring @job @whole.svg --window W03"), bench.told());
        assertEquals(0, bench.run("number @job W03 --piece 2=30"), bench.told());
        assertEquals(3, bench.run("number @job W03 --piece 3=30"));
        assertTrue(bench.told().contains("30 is the number of another piece"), bench.told());
        assertEquals(0, bench.run("mark @job W03 1 --lock --group sky"), bench.told());
        assertEquals(3, bench.run("number @job W03 --piece 1=9"));
        assertTrue(bench.told().contains("locked"), bench.told());
        JsonObject answer = json(0, "number @job W03 --by columns");
        assertEquals(List.of(1, 30), rows(answer.get("kept")).stream().map(row -> row.get("number").getAsInt()).toList());
        // the left column is 1 (locked) and 3, the right one 30 (by hand) and 4: the others get 2 and 3
        assertEquals(List.of(2, 3), rows(answer.get("changed")).stream().map(row -> row.get("now").getAsInt()).toList());
        List<JsonObject> sky = rows(json(0, "mark @job W03 sky").get("pieces"));
        assertEquals(1, sky.size());
        assertTrue(sky.get(0).get("locked").getAsBoolean());
        assertEquals(3, bench.run("mark @job W03 77 --lock"));
        assertEquals(3, bench.run("mark @job W03 1 --group 12"), "a group that looks like a number");
        assertEquals(2, bench.run("number @job W03 --by beauty"));
        assertEquals(2, bench.run("number @job W03"));
        assertEquals(3, bench.run("number @job W09 --by size"));
    }

    @Test
    void pieceThatRecordsNameKeepsItsNumber() {
        assertEquals(0, bench.run("record @job glaze window=W01 piece=2"), bench.told());
        JsonObject answer = json(0, "number @job W01 --by size");
        assertEquals("is named in records", rows(answer.get("kept")).get(0).get("because").getAsString());
        assertEquals(3, bench.run("number @job W01 --piece 2=8"));
    }

    @Test
    void openingSolvedAndEntered() {
        JsonObject frame = json(1, "opening --sides 400,301,400,299 --diagonals 502,498");
        JsonObject square = frame.getAsJsonObject("square");
        double[] corners = square.getAsJsonArray("cornersDeg").asList().stream().mapToDouble(JsonElement::getAsDouble).toArray();
        assertEquals(360, corners[0] + corners[1] + corners[2] + corners[3], 1e-9);
        assertTrue(square.get("outOfSquareMm").getAsDouble() > 1);
        JsonObject right = json(0, "opening --sides 400,300,400,300 --diagonals 500,500"); // 3, 4, 5
        assertEquals(0, right.getAsJsonObject("square").get("outOfSquareMm").getAsDouble(), 1e-9);
        assertEquals(420 * 320, right.getAsJsonObject("tight").get("areaMm2").getAsDouble(), 1e-6);
        assertEquals(414, right.getAsJsonObject("panel").get("widthMm").getAsDouble(), 1e-9);
        assertEquals(0, bench.run("opening --shape semicircular --width-mm 600 --height-mm 1400 --into @job --window W05 --svg @o.svg"), bench.told());
        assertTrue(Files.exists(bench.at("o.svg")));
        assertEquals(4, bench.run("opening --width-mm 600 --height-mm 1400 --svg @o.svg"));
        // half a circle on a square: closed form of the sight size
        double area = json(0, "opening --shape semicircular --width-mm 600 --height-mm 1400").getAsJsonObject("sight").get("areaMm2").getAsDouble();
        assertEquals(Math.PI * 300 * 300 / 2 + 600 * 1100, area, 10);
        for (String wrong : List.of("opening", "opening --width-mm 5 --height-mm 700", "opening --shape ogee --width-mm 600 --height-mm 900",
                "opening --shape window --width-mm 600 --height-mm 900", "opening --sides 1,2,3 --diagonals 4,5", "opening --sides 100,100,100,100",
                "opening --sides 100,100,100,100 --diagonals 500,500", "opening --width-mm 600 --height-mm 900 --bars often",
                "opening --shape segmental --width-mm 600 --height-mm 100 --rise-mm 250", "opening --width-mm 600 --height-mm 900 --rebate-mm -1")) {
            assertEquals(2, bench.run(wrong), wrong + " said: " + bench.told());
        }
    }

    @Test
    void joinsMixedInOnePanel() throws IOException {
        bench.svg("whole.svg", GRID.formatted("50").replace("</svg>", "") + "<g id='leads' fill='none' stroke='#000'><path d='M10 0V25'/></g>");
        assertTrue(bench.run("bring @job @whole.svg --window W03 --roles cutline=cutline") <= 1, bench.told());
        assertEquals(0, bench.run("join @job W03 --between 1,2 --lead --gap-mm 1.8"), bench.told());
        JsonObject told = json(0, "join @job W03 --layer leads --lead --gap-mm 1.6 --edge-mm 2");
        assertEquals(2, told.get("edgeMm").getAsDouble());
        assertEquals(2, told.getAsJsonArray("rules").size());
        assertTrue(bench.run("make @job W03 --until pieces") <= 1, bench.told());
        assertTrue(bench.run("status @job --json") == 0);
        assertTrue(Files.readString(bench.at("job/made/pieces/W03-pieces.svg")).contains("piece-5"), "the leads part a piece too");
        assertEquals(3, bench.run("join @job W03 --between 1,4 --foil"), "pieces that meet in a point have no joint");
        assertEquals(3, bench.run("join @job W03 --between 1,2 --lead --stock unheard-of"));
        assertEquals(2, bench.run("join @job W03 --lead"));
        assertEquals(2, bench.run("join @job W03 --round 1 --lead --gap-mm 99"));
        assertEquals(0, json(0, "join @job W03 --clear").getAsJsonArray("rules").size());
    }
}
