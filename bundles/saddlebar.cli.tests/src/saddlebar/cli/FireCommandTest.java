package saddlebar.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** What a user types after {@code fire}, and what comes out. */
class FireCommandTest {
    private static final String PROFILE = """
            segment,rate_k_per_h,target_c,soak_min
            dry and warm,150,300,10
            heat,200,540,10
            peak,300,650,10
            fall,,540,30
            anneal,60,485,0
            cool,120,150,0
            shut,,50,0
            """;
    /** 150 K/h to 520, 300 K/h to the peak, 10 min, 300 K/h down: heat work against it was worked out outside of this program. */
    private static final String PLAIN = "segment,rate_k_per_h,target_c,soak_min\n1,150,520,0\n2,300,650,10\n3,300,560,0\n";

    @TempDir
    Path temp;
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void sayWhereTheTablesLie() {
        if (System.getProperty(NewCommand.TABLES) == null) {
            System.setProperty(NewCommand.TABLES, Path.of("../../shared").toAbsolutePath().normalize().toString());
        }
    }

    private int run(String... words) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return new Launcher(List.of(new FireCommand()), "test", new Voice(out, err), new StopSign()).run(words);
    }

    private String file(String name, String text) throws IOException {
        return Files.writeString(temp.resolve(name), text, StandardCharsets.UTF_8).toString();
    }

    private String log(String name, double peakC, int fromMinute, int toMinute) throws IOException {
        double[] minutes = {0, 200, 200 + (peakC - 520) / 5, 210 + (peakC - 520) / 5, 210 + (peakC - 520) / 5 + (peakC - 100) / 5};
        double[] degC = {20, 520, peakC, peakC, 100};
        StringBuilder text = new StringBuilder("minutes,temperature_c\n");
        for (int m = 0; m < minutes[4]; m++) {
            int i = 0;
            while (minutes[i + 1] < m) {
                i++;
            }
            if (m < fromMinute || m > toMinute) {
                text.append(String.format(Locale.ROOT, "%d,%.3f%n", m,
                        degC[i] + (degC[i + 1] - degC[i]) * (m - minutes[i]) / (minutes[i + 1] - minutes[i])));
            }
        }
        return file(name, text.toString());
    }

    private JsonObject json() {
        return JsonParser.parseString(out.toString()).getAsJsonObject();
    }

    @Test
    void simulatesAndAdvises() throws IOException {
        assertEquals(0, run("fire", file("s.csv", PROFILE), "--json"), err.toString());
        JsonObject answer = json();
        for (String field : List.of("hours", "peakC", "heatWork", "coreLagMaxK", "stressMaxMpa", "annealed", "advice", "kWh")) {
            assertTrue(answer.has(field), field);
        }
        assertEquals(650, answer.get("peakC").getAsDouble(), 0.6);
        assertTrue(answer.get("annealed").getAsBoolean());
        assertTrue(answer.get("kWh").getAsDouble() > 3 && answer.get("kWh").getAsDouble() < 50);
        String advice = answer.get("advice").toString();
        assertTrue(advice.contains("unattended") && advice.contains("eye protection") && advice.contains("Fumes"), advice);
        assertEquals(0, run("fire", file("s.csv", PROFILE)), err.toString());
        assertTrue(out.toString().contains("annealed"), out.toString());
        assertTrue(err.toString().contains("unattended"), "cautions are told without --json too");
    }

    @Test
    void holdsALogAgainstTheSchedule() throws IOException {
        String schedule = file("s.csv", PLAIN);
        run("fire", schedule, "--log", log("hot.csv", 660, -1, -1), "--json");
        JsonObject log = json().getAsJsonObject("log");
        assertEquals(1.849, log.get("heatWorkRatio").getAsDouble(), 0.03); // the log goes on below 560 degC: a little more
        assertEquals(10, log.get("overshootK").getAsDouble(), 0.01);
        assertEquals(0, log.get("gaps").getAsInt());
        assertEquals("as scheduled", log.get("verdict").getAsString());
        run("fire", schedule, "--log", log("hotter.csv", 675, -1, -1), "--json");
        assertEquals("hot", json().getAsJsonObject("log").get("verdict").getAsString());
        assertEquals(1, run("fire", schedule, "--log", log("cold.csv", 630, -1, -1), "--json"));
        assertEquals("cold", json().getAsJsonObject("log").get("verdict").getAsString());
        assertEquals(0, json().getAsJsonObject("log").get("overshootK").getAsDouble());
        assertEquals(1, run("fire", schedule, "--log", log("gap.csv", 650, 215, 245), "--json"));
        assertEquals("unusable", json().getAsJsonObject("log").get("verdict").getAsString());
        assertEquals(1, json().getAsJsonObject("log").get("gaps").getAsInt());
    }

    @Test
    void aFiringTooCoolToMakeGlassFlowHasNoRatio() throws IOException {
        String cool = file("cool.csv", "segment,rate_k_per_h,target_c,soak_min\n1,150,150,10\n");
        assertEquals(1, run("fire", cool, "--log", log("l.csv", 650, -1, -1), "--json"), err.toString());
        assertTrue(json().getAsJsonObject("log").get("heatWorkRatio").isJsonNull());
        assertEquals("unusable", json().getAsJsonObject("log").get("verdict").getAsString());
    }

    /** The example that --help shows, on the files of the tree. */
    @Test
    void theExampleOfTheHelp() {
        Path firing = Path.of("../../demo-projects/firing");
        assertEquals(0,
                run("fire", firing.resolve("trace-650.csv").toString(), "--log", firing.resolve("kiln-log.csv").toString(), "--paint",
                        "tracing black",
                        "--chart", temp.resolve("firing.svg").toString(), "--json"),
                err.toString());
        assertEquals("as scheduled", json().getAsJsonObject("log").get("verdict").getAsString());
    }

    @Test
    void paintsAndEarlierFirings() throws IOException {
        String trace = file("trace.csv", PROFILE);
        String stain = file("stain.csv", PROFILE.replace("300,650", "200,560"));
        assertEquals(0, run("fire", trace, "--paint", "tracing black", "--json"), err.toString());
        double flux = json().get("heatWork").getAsDouble();
        assertEquals(0, run("fire", trace, "--json"));
        assertTrue(flux > json().get("heatWork").getAsDouble(), "a flux is softer than the glass");
        assertEquals(0, run("fire", stain, "--paint", "silver stain amber", "--earlier", "tracing black=" + trace, "--json"), err.toString());
        assertEquals(1, run("fire", trace, "--paint", "tracing black", "--earlier", "silver stain amber=" + stain, "--json"));
        assertTrue(codes().contains("order-stain"), codes().toString());
        assertEquals(1, run("fire", stain, "--paint", "tracing black", "--json"));
        assertTrue(codes().contains("paint-underfired"), codes().toString());
    }

    private List<String> codes() {
        return json().getAsJsonArray("advice").asList().stream().map(JsonElement::getAsJsonObject).map(a -> a.get("code").getAsString()).toList();
    }

    @Test
    void writesAShorterScheduleAndAChartAndNeverOverAFile() throws IOException {
        String schedule = file("s.csv", PROFILE);
        Path best = temp.resolve("best.csv");
        Path chart = temp.resolve("chart.svg");
        assertEquals(0, run("fire", schedule, "--optimise", best.toString(), "--chart", chart.toString(), "--json", "--progress", "none"),
                err.toString());
        assertEquals("", err.toString().lines().filter(line -> line.startsWith("warning")).findFirst().orElse(""));
        double asked = json().get("hoursToOpen").getAsDouble();
        assertTrue(json().getAsJsonObject("optimised").get("hoursToOpen").getAsDouble() <= asked);
        assertTrue(Files.readString(chart).startsWith("<svg"));
        byte[] first = Files.readAllBytes(best);
        assertEquals(0, run("fire", best.toString(), "--json"), "what was written is a schedule like any other: " + err);
        assertEquals(4, run("fire", schedule, "--optimise", best.toString()));
        assertTrue(err.toString().contains("exists already; nothing was written"), err.toString());
        assertEquals(4, run("fire", schedule, "--chart", chart.toString()));
        assertEquals(0, run("fire", schedule, "--optimise", best.toString(), "--replace", "--progress", "none"), err.toString());
        assertEquals(new String(first, StandardCharsets.UTF_8), Files.readString(best), "same input, same bytes");
    }

    @Test
    void wrongWords() throws IOException {
        String schedule = file("s.csv", PROFILE);
        assertEquals(2, run("fire", schedule, "--glass", "window putty"));
        assertTrue(err.toString().contains("--glass knows no 'window putty'") && err.toString().contains("srm-710a"), err.toString());
        assertEquals(2, run("fire", schedule, "--paint", "house paint"));
        assertEquals(2, run("fire", schedule, "--kiln", "stove"));
        assertEquals(2, run("fire", schedule, "--thickness-mm", "0"));
        assertEquals(2, run("fire", schedule, "--thickness-mm", "NaN"));
        assertEquals(2, run("fire", schedule, "--thickness-mm", "thick"));
        assertEquals(2, run("fire", schedule, "--earlier", "tracing black"));
        assertEquals(2, run("fire", schedule, "--chart", temp.resolve("c.gif").toString())); // svg, png and pdf are drawn
        assertEquals(2, run("fire"));
        assertEquals(0, run("fire", "--help"));
    }

    @Test
    void refusalsHaveFileAndLineAndNoTrace() throws IOException {
        String schedule = file("s.csv", PROFILE);
        refused("bad.csv:2: rate_k_per_h is -80", "fire", file("bad.csv", "segment,rate_k_per_h,target_c,soak_min\n1,-80,300,0\n"));
        refused("empty.csv: it is empty", "fire", file("empty.csv", ""));
        refused("none.csv: there is no such file", "fire", temp.resolve("none.csv").toString());
        refused("log.csv:1: the column 'temperature_x'", "fire", schedule, "--log", file("log.csv", "seconds,temperature_x\n0,20\n"));
        refused("log.csv:3: time runs back", "fire", schedule, "--log", file("log.csv", "seconds,temperature_c\n60,20\n0,30\n"));
        refused("log.csv:2: temperature_c is 1500", "fire", schedule, "--log", file("log.csv", "seconds,temperature_c\n60,1500\n90,30\n"));
        Path binary = Files.write(temp.resolve("log.bin.csv"), new byte[] {0, 1, 2, 3});
        refused("log.bin.csv: it is not text but a binary file", "fire", schedule, "--log", binary.toString());
    }

    private void refused(String begins, String... words) {
        assertEquals(3, run(words), err.toString());
        assertTrue(err.toString().startsWith(begins), err.toString());
        assertEquals(1, err.toString().strip().lines().count(), err.toString());
        assertFalse(err.toString().contains("Exception"), err.toString());
        assertEquals("", out.toString());
    }
}
