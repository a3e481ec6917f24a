package saddlebar.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import saddlebar.model.commission.Piece;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;

/** On a copy of the demonstration panel; its pieces are put in by hand, so that no artwork need be made. */
class ColourwayCommandTest {
    @TempDir
    private Path temp;
    private CommandBench bench;

    @BeforeEach
    void copy() throws IOException {
        Path demo = Path.of("../../demo-projects/first-panel");
        Path folder = temp.resolve("panel");
        try (Stream<Path> files = Files.walk(demo)) {
            for (Path file : files.filter(path -> Files.isRegularFile(path) && !path.getFileName().toString().startsWith(".")).toList()) {
                Path target = folder.resolve(demo.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
        bench = new CommandBench(temp);
    }

    private JsonObject answer(String line) {
        assertEquals(0, bench.run(line + " --json"), bench::told);
        return bench.json();
    }

    private JsonObject row(String name) {
        JsonArray rows = answer("colourway @panel list").getAsJsonArray("windows").get(0).getAsJsonObject().getAsJsonArray("colourways");
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).getAsJsonObject().get("name").getAsString().equals(name)) {
                return rows.get(i).getAsJsonObject();
            }
        }
        return null;
    }

    @Test
    void fromNewToFrozen() throws IOException {
        answer("colourway @panel new Dawn");
        assertEquals(6, row("Dawn").get("withoutGlass").getAsInt());
        assertEquals(6, answer("colourway @panel set Dawn all=amber 2,4-5=olive").get("pieces").getAsInt() - 3);
        JsonObject dawn = row("Dawn");
        assertEquals(0, dawn.get("withoutGlass").getAsInt());
        assertEquals(List.of("amber", "olive"), dawn.getAsJsonArray("glass").asList().stream().map(glass -> glass.getAsJsonObject().get("name").getAsString())
                .toList());
        answer("colourway @panel copy Dawn Dusk");
        answer("colourway @panel set Dusk 1=slate");
        JsonObject compared = answer("colourway @panel compare Dawn Dusk --light A");
        assertEquals(1, compared.get("differing").getAsInt());
        assertTrue(compared.get("greatestDeltaE2000").getAsDouble() > 20);
        assertEquals(new BigDecimal(compared.get("secondCost").getAsString()).subtract(new BigDecimal(compared.get("firstCost").getAsString())),
                new BigDecimal(compared.get("costsMore").getAsString()));
        JsonObject approved = answer("colourway @panel approve Dusk --by Rowan --day 2026-02-03");
        assertEquals("Rowan", approved.get("approvedBy").getAsString());
        assertTrue(row("Dusk").get("chosen").getAsBoolean());
        assertEquals(3, bench.run("colourway @panel set Dusk 1=amber"));
        assertTrue(bench.told().contains("2026-02-03"), bench.told());
        answer("colourway @panel withdraw Dusk --by Rowan");
        assertFalse(row("Dusk").get("approved").getAsBoolean());
        answer("colourway @panel delete Dusk");
        try (CommissionFolder folder = CommissionFolder.open(temp.resolve("panel"), Access.READ)) {
            List<Piece> pieces = folder.window("W01").orElseThrow().getPanels().get(0).getPieces();
            assertTrue(pieces.stream().flatMap(piece -> piece.getChoices().stream()).allMatch(choice -> choice.getColourway() != null), "nothing dangles");
        }
    }

    @Test
    void thePictureIsWrittenAndNotOverwritten() throws IOException {
        JsonObject shown = answer("colourway @panel picture --out " + temp.resolve("v.png") + " --side-px 300 --light dusk");
        assertEquals("dusk", shown.get("light").getAsString());
        assertEquals(shown.get("widthPx").getAsInt(), ImageIO.read(temp.resolve("v.png").toFile()).getWidth());
        assertEquals(4, bench.run("colourway @panel picture --out " + temp.resolve("v.png")));
        assertEquals(0, bench.run("colourway @panel picture --plain --side-px 300 --replace --out " + temp.resolve("v.png")), bench::told);
        assertEquals(300, ImageIO.read(temp.resolve("v.png").toFile()).getHeight());
    }

    @Test
    void wrongWordsAreTold() {
        for (String line : new String[] {"colourway @panel", "colourway @panel paint", "colourway @panel new", "colourway @panel compare Dawn",
                "colourway @panel list Dawn", "colourway @panel picture", "colourway @panel approve \"Neap\"", "colourway @panel list --light moon",
                "colourway @panel picture --out x.png --side-px 5", "colourway @panel approve X --by Y --day 2026-13-01"}) {
            assertEquals(2, bench.run(line), line + ": " + bench.told());
        }
    }

    @Test
    void whatTheCommissionLacksIsRefused() {
        answer("colourway @panel new Dawn");
        for (String line : new String[] {"colourway @panel list --window W09", "colourway @panel rename Nobody Dawn2", "colourway @panel new dawn",
                "colourway @panel set Dawn 99=amber", "colourway @panel set Dawn 1=nosuch", "colourway @panel set Dawn 1", "colourway @panel set Dawn x=amber",
                "colourway @panel approve Dawn --by Rowan", "colourway @panel withdraw Dawn --by Rowan", "colourway @nowhere list"}) {
            assertEquals(3, bench.run(line), line + ": " + bench.told());
            assertFalse(bench.told().contains("\tat "), bench.told());
        }
    }
}
