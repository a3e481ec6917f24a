package saddlebar.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

import saddlebar.model.file.Hashes;

/** The fields that scripts rely on, command by command; a field without a value is there and null. */
class JsonFieldsTest {
    @TempDir
    private Path folder;
    private CommandBench bench;

    @BeforeEach
    void art() throws IOException {
        bench = new CommandBench(folder);
        bench.svg("panel.svg", "<g id='matt'><rect x='5' y='5' width='40' height='40' fill='#777'/></g>"
                + "<g id='cutline' fill='none' stroke='#000'><rect width='50' height='50'/><path d='M25 0V50M25 20L40 25'/></g>");
    }

    private JsonObject json(int code, String line) {
        assertEquals(code, bench.run(line + " --json"), line + " said: " + bench.told());
        return bench.json();
    }

    private static void has(JsonElement element, String... fields) {
        JsonObject object = element.isJsonArray() ? element.getAsJsonArray().get(0).getAsJsonObject() : element.getAsJsonObject();
        for (String field : fields) {
            assertTrue(object.has(field), field + " is missing in " + object);
        }
    }

    @Test
    void pieces() {
        JsonObject answer = json(1, "pieces @panel.svg");
        has(answer.get("panel"), "areaMm2", "widthMm", "heightMm", "perimeterMm");
        has(answer.get("pieces"), "number", "areaMm2", "netAreaMm2", "perimeterMm", "label", "inradiusMm", "neighbours", "problems");
        has(answer.get("problems"), "code", "severity", "at", "message");
        has(answer.get("euler"), "v", "e", "f", "c");
    }

    @Test
    void screenOfAnyMethod() {
        for (String method : new String[] {"am", "diffusion", "solid"}) {
            has(json(0, "screen @panel.svg --dpi 300 --lpi 20 --layer matt --replace --out @new.tif --method " + method), "file", "widthPx", "heightPx", "dpi",
                    "method", "lpi", "angleDeg", "dotMm", "levels", "coverage", "tooFine", "bridgesLost", "sha256", "seconds");
        }
    }

    /** Each format says how it was made; a changed bit is noticed; a file of others says that it says nothing. */
    @Test
    void recipe() throws IOException {
        for (String ending : new String[] {"tif", "pdf", "png"}) {
            String sha256 = json(0, "screen @panel.svg --dpi 300 --lpi 20 --layer matt --out @new." + ending).get("sha256").getAsString();
            JsonObject answer = json(0, "recipe @new." + ending);
            has(answer, "file", "format", "widthPx", "heightPx", "dpi", "title", "recipe", "recipeIntact", "bitsIntact", "sha256OfBits");
            assertTrue(answer.get("recipe").getAsString().startsWith("method: am\nruling: 20.0 lpi at 22.5 degrees"), answer.toString());
            assertEquals(300, answer.get("dpi").getAsDouble());
            assertEquals(sha256, Hashes.sha256(bench.at("new." + ending)));
        }
        byte[] bytes = Files.readAllBytes(bench.at("new.tif"));
        int at = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("ruling: 20.0");
        bytes[at + 8] = '3';
        Files.write(bench.at("changed.tif"), bytes);
        JsonObject changed = json(1, "recipe @changed.tif");
        assertTrue(changed.get("bitsIntact").getAsBoolean() && !changed.get("recipeIntact").getAsBoolean(), changed.toString());
        ImageIO.write(new BufferedImage(9, 9, BufferedImage.TYPE_BYTE_BINARY), "tiff",
                bench.at("foreign.tif").toFile());
        assertTrue(json(1, "recipe @foreign.tif").get("recipeIntact").isJsonNull());
        assertEquals(3, bench.run("recipe @panel.svg"), bench.told());
        assertEquals(3, bench.run("recipe @none.tif"), bench.told());
    }

    /** Single px: the smallest packing, with a word why. */
    @Test
    void packingIsSaid() {
        JsonObject fine = json(0, "screen @panel.svg --dpi 300 --method diffusion --dot-mm 0.085 --layer matt --tone linear --out @fine.tif");
        assertEquals("deflate", fine.get("compression").getAsString());
        assertTrue(fine.get("compressionChoice").getAsString().contains("since T.6 "), fine.toString());
        assertTrue(json(0, "screen @panel.svg --dpi 300 --lpi 20 --layer matt --out @am.tif").get("compressionChoice").isJsonNull());
    }

    @Test
    void meshWedgeAndTone() throws IOException {
        JsonObject beating = json(0, "mesh --count 220 --thread-um 48 --lpi 40");
        has(beating, "openingUm", "openArea", "volumeCm3PerM2", "finestDotUm");
        has(beating.get("beat"), "periodMm", "contrast", "visible", "order");
        has(beating.get("banding"), "periodMm");
        has(beating.get("better"), "lpi", "angleDeg", "score");
        has(json(0, "mesh --count 220 --thread-um 48"), "beat", "banding");
        has(json(0, "wedge --out @wedge.pdf --dpi 300 --lpi 20"), "file", "wedges", "steps", "sha256");
        bench.file("readings.csv", "nominal,effective\n0,0\n0.25,0.3\n0.5,0.6\n0.75,0.85\n1,1\n");
        JsonObject tone = json(0, "tone @readings.csv");
        has(tone, "points", "gainAt50", "inverse");
        assertEquals(0.1, tone.get("gainAt50").getAsDouble(), 1e-9, "0.6 printed for 0.5");
    }

    @Test
    void gang() throws IOException {
        bench.file("items.csv", "id,width_mm,height_mm,quantity,rotate\na,100,50,2,no\n");
        JsonObject answer = json(0, "gang @items.csv --sheet 210x105 --seconds 0.1");
        has(answer, "sheets", "lengthMm", "use", "placements", "valid");
        has(answer.get("placements"), "id", "sheet", "xMm", "yMm", "rotationDeg");
    }

    @Test
    void fireAndColour() throws IOException {
        bench.file("schedule.csv", "segment,rate_k_per_h,target_c,soak_min\n1,150,520,0\n2,300,650,10\n3,,540,30\n4,60,480,0\n5,120,50,0\n");
        bench.file("log.csv", "minutes,temperature_c\n0,20\n200,520\n226,650\n236,650\n300,540\n330,540\n390,480\n605,50\n");
        assertTrue(bench.run("fire @schedule.csv --log @log.csv --json") <= 1, bench.told());
        JsonObject answer = bench.json();
        has(answer, "hours", "peakC", "heatWork", "coreLagMaxK", "stressMaxMpa", "annealed", "advice", "log", "kWh");
        has(answer.get("log"), "heatWorkRatio", "overshootK", "minutesNearPeak", "gaps", "verdict");
        assertTrue(bench.run("fire @schedule.csv --json") <= 1, bench.told());
        has(bench.json(), "log");
        has(json(0, "colour --glass amber --paint #808080 --coverage .5"), "lab", "srgb", "transmittance", "deltaE2000");
    }

    @Test
    void commission() {
        has(json(0, "new @job --title A"), "folder", "title", "studio", "ownStudio");
        JsonObject empty = json(0, "status @job");
        assertEquals(0, empty.getAsJsonArray("windows").size());
        has(json(1, "bring @job @panel.svg --window W01"), "window", "file", "sha256", "revision", "pieces", "layers", "problems");
        JsonObject found = json(1, "check @job");
        has(found.get("problems"), "code", "severity", "where", "at", "message");
        assertTrue(bench.run("make @job --until pieces --json") <= 1, bench.told());
        has(bench.json(), "made", "kept", "problems");
        has(bench.json().get("problems"), "code", "severity", "where", "at", "message");
        JsonObject afresh = json(1, "make @job --until pieces --afresh");
        has(afresh.get("made"), "what", "file", "sha256", "seconds");
        JsonObject stands = json(0, "status @job");
        has(stands, "title", "windows", "next");
        has(stands.get("windows"), "name", "title", "state", "layers", "pieces");
        JsonObject window = stands.getAsJsonArray("windows").get(0).getAsJsonObject();
        has(window.get("layers"), "name", "role", "byHand", "state", "stencils", "prints");
        has(window.get("pieces"), "number", "state", "layers");
    }
}
