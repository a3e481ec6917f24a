package saddlebar.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

import saddlebar.model.store.StudioLibrary;

class ColourCommandTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private String before;

    @TempDir
    private Path folder;

    @BeforeEach
    void tables() {
        before = System.getProperty(StudioLibrary.PROPERTY);
        System.setProperty(StudioLibrary.PROPERTY, Path.of("../../shared").toAbsolutePath().toString());
    }

    @AfterEach
    void asBefore() {
        if (before == null) {
            System.clearProperty(StudioLibrary.PROPERTY);
        } else {
            System.setProperty(StudioLibrary.PROPERTY, before);
        }
    }

    private int run(String... words) {
        out.reset();
        err.reset();
        var voice = new Voice(new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8));
        return new Launcher(List.of(new ColourCommand()), "1", voice, new StopSign()).run(words);
    }

    private JsonObject json(String... words) {
        String[] all = new String[words.length + 2];
        all[0] = "colour";
        System.arraycopy(words, 0, all, 1, words.length);
        all[words.length + 1] = "--json";
        assertEquals(0, run(all), () -> err.toString(StandardCharsets.UTF_8));
        return JsonParser.parseString(out.toString(StandardCharsets.UTF_8)).getAsJsonObject();
    }

    /**
     * Murray 1936 on neutral colours: half of clear (1) under linear gray 128 (.21586) is .60793; its sRGB by IEC 61966-2-1 is .80242 x 255 = 204.6,
     * code 205.
     */
    @Test
    void neutralByHand() {
        JsonObject answer = json("--glass", "#ffffff", "--paint", "#808080", "--coverage", "0.5");
        assertEquals(.60793, answer.get("transmittance").getAsDouble(), 2e-5);
        assertEquals("#cdcdcd", answer.get("srgb").getAsString());
        assertEquals(82.268, answer.getAsJsonArray("lab").get(0).getAsDouble(), 0.01); // 116 x .60793^(1/3) - 16
        assertEquals(0, answer.getAsJsonArray("lab").get(1).getAsDouble(), 1e-6);
        assertEquals("bare glass", answer.get("comparedWith").getAsString());
        assertTrue(answer.get("deltaE2000").getAsDouble() > 5);
    }

    @Test
    void namesOfTheStudioAndSeveralLights() {
        JsonObject answer = json("--glass", "Amber", "--paint", "umber matt", "--coverage", "0", "--light", "D65,A,dusk,7500k");
        assertEquals("#dc8a1c", answer.get("srgb").getAsString());
        assertEquals(0, answer.get("deltaE2000").getAsDouble(), 1e-9);
        assertEquals(4, answer.getAsJsonArray("lights").size());
        assertEquals("A", answer.getAsJsonArray("lights").get(1).getAsJsonObject().get("light").getAsString());
        assertTrue(answer.getAsJsonArray("notes").toString().contains("lead"));
    }

    @Test
    void severalPaintsGainAndThickness() {
        double one = json("--glass", "clear", "--paint", "umber matt", "--coverage", ".5").get("transmittance").getAsDouble();
        double gained = json("--glass", "clear", "--paint", "umber matt", "--coverage", ".5", "--gain", ".15").get("transmittance").getAsDouble();
        double two = json("--glass", "clear", "--paint", "umber matt", "--coverage", ".5", "--paint", "pale matt", "--coverage",
                ".5").get("transmittance").getAsDouble();
        double thin = json("--glass", "amber", "--paint", "#808080", "--coverage", ".5", "--thickness-mm", "2").get("transmittance").getAsDouble();
        double thick = json("--glass", "amber", "--paint", "#808080", "--coverage", ".5", "--thickness-mm", "6").get("transmittance").getAsDouble();
        assertTrue(gained < one && two < one && thick < thin);
    }

    @Test
    void spectrumFromAFile() throws IOException {
        Path file = folder.resolve("gray.csv");
        Files.writeString(file,
                "nm,percent\n380,60\n400,60\n420,60\n440,60\n460,60\n480,60\n500,60\n520,60\n540,60\n560,60\n580,60\n600,60\n620,60\n640,60\n660,60\n680,60\n700,60\n");
        assertEquals(.6, json("--glass", file.toString(), "--paint", "#000000", "--coverage", "0").get("transmittance").getAsDouble(), 1e-9);
        assertEquals(.52064, json("--glass", file.toString(), "--paint", "#000000", "--coverage", "0", "--thickness-mm",
                "4").get("transmittance").getAsDouble(), 1e-5);
        Files.writeString(file, "nm,percent\n380,60\n400,x\n");
        assertEquals(3, run("colour", "--glass", file.toString(), "--paint", "#000000", "--coverage", "0"));
        assertTrue(err.toString(StandardCharsets.UTF_8).startsWith("gray.csv:3: 'x' is no number; "), err.toString(StandardCharsets.UTF_8));
        assertEquals(3, run("colour", "--glass", folder.resolve("none.csv").toString(), "--paint", "#000000", "--coverage", "0"));
    }

    @Test
    void whatWasApproved() {
        assertEquals(0, run("colour", "--glass", "amber", "--paint", "#808080", "--coverage", "0", "--approved", "#dc8a1c"),
                err.toString(StandardCharsets.UTF_8));
        assertEquals(1, run("colour", "--glass", "amber", "--paint", "#808080", "--coverage", "0", "--approved", "#14556b"));
        assertTrue(out.toString(StandardCharsets.UTF_8).contains("another colour"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"--glass,#12345,--paint,#808080,--coverage,0.5", "--glass,no such glass,--paint,#808080,--coverage,0.5",
            "--glass,amber,--paint,mud,--coverage,0.5",
            "--glass,amber,--paint,#808080,--coverage,1.5", "--glass,amber,--paint,#808080,--coverage,NaN",
            "--glass,amber,--paint,#808080,--coverage,much",
            "--glass,amber,--paint,#808080", "--glass,amber,--paint,#808080,--coverage,0.5,--light,moon",
            "--glass,amber,--paint,#808080,--coverage,0.5,--light,3000K",
            "--glass,amber,--paint,#808080,--coverage,0.5,--thickness-mm,0", "--glass,amber,--paint,#808080,--coverage,0.5,--measured-mm,3",
            "--glass,amber,--paint,#808080,--coverage,0.5,--approved,green", "--glass,amber,--paint,#808080,--coverage,0.5,--gain,2",
            "--glass,amber,--paint,#808080,--coverage,0.5,--paint,#111111", "--paint,#808080,--coverage,0.5"})
    void wrongValuesAreOneSentence(String words) {
        assertEquals(2, run(("colour," + words).split(",")));
        String told = err.toString(StandardCharsets.UTF_8);
        assertEquals(1, told.strip().lines().count(), told);
        assertFalse(told.contains("Exception"), told);
        assertEquals(0, out.size());
    }
}
