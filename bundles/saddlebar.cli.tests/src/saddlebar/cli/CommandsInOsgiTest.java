package saddlebar.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceReference;

import saddlebar.model.file.Hashes;

/** The whole main job over services that a running OSGi has wired: what a user types, and what comes out. */
class CommandsInOsgiTest {
    private static final String PANEL = """
            <svg xmlns="http://www.w3.org/2000/svg" width="80mm" height="60mm" viewBox="0 0 80 60">
              <defs><linearGradient id="shade"><stop offset="0" stop-color="#fff"/><stop offset="1" stop-color="#888"/></linearGradient></defs>
              <g id="glass"><rect width="80" height="60" fill="#2f6f6a"/></g>
              <g id="matt"><rect x="5" y="5" width="70" height="50" fill="url(#shade)"/></g>
              <g id="trace"><path d="M10 30C25 10 55 50 70 30" fill="none" stroke="#000" stroke-width="1.2"/></g>
              <g id="cutline" fill="none" stroke="#000" stroke-width=".5"><rect id="panel" width="80" height="60"/><path d="M40 0V60"/></g>
            </svg>
            """;

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

    private int run(String... words) throws InvalidSyntaxException {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        BundleContext bundles = FrameworkUtil.getBundle(Main.class).getBundleContext();
        List<BenchCommand> commands = new ArrayList<>();
        for (ServiceReference<BenchCommand> found : bundles.getServiceReferences(BenchCommand.class, null)) {
            commands.add(bundles.getServiceObjects(found).getService());
        }
        return new Launcher(commands, "test", new Voice(out, err), new StopSign()).run(words);
    }

    private Path art() throws IOException {
        return Files.writeString(temp.resolve("panel.svg"), PANEL, StandardCharsets.UTF_8);
    }

    private Path commission() throws IOException, InvalidSyntaxException {
        Path folder = temp.resolve("job");
        assertEquals(0, run("new", folder.toString(), "--title", "A job"), err.toString());
        assertEquals(0, run("bring", folder.toString(), art().toString(), "--window", "W01", "--progress", "none"), err.toString());
        return folder;
    }

    private static Map<String, String> files(Path folder) throws IOException {
        Map<String, String> hashes = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).filter(f -> !f.endsWith("index.json")).toList()) {
                hashes.put(folder.relativize(file).toString(), Hashes.sha256(file));
            }
        }
        return hashes;
    }

    @Test
    void everyCommandIsThere() throws InvalidSyntaxException {
        assertEquals(0, run("--help"));
        for (String command : List.of("bring", "check", "colour", "colourway", "cost", "exposed", "fire", "fullsize", "gang", "join", "kiln", "make", "mark",
                "mend",
                "mesh", "new", "number", "opening", "pieces", "printer", "prov", "rack", "recipe", "record", "remake", "report", "screen", "stock", "studio",
                "status",
                "suspects", "tone", "trace", "wedge")) {
            assertTrue(out.toString().contains("\n  " + command + " "), command + " is missing in:\n" + out);
        }
    }

    @Test
    void makesACommissionOnceAndTheSecondTimeNothing() throws IOException, InvalidSyntaxException {
        Path folder = commission();
        assertEquals(0, run("make", folder.toString(), "--json", "--progress", "none", "--jobs", "2"), err.toString());
        Map<String, String> first = files(folder.resolve("made"));
        assertTrue(first.keySet().stream().anyMatch(file -> file.endsWith(".pdf")), first.keySet().toString());
        assertEquals(0, run("make", folder.toString(), "--json", "--progress", "none"), err.toString());
        assertTrue(out.toString().contains("\"made\": []"), out.toString());
        assertEquals(0, run("make", folder.toString(), "--afresh", "--jobs", "1", "--progress", "none"), err.toString());
        assertEquals(first, files(folder.resolve("made")), "one hand and two must make the same bytes");
        assertEquals(0, run("status", folder.toString()), err.toString());
        assertTrue(out.toString().contains("on sheet"), out.toString());
        assertEquals(0, run("check", folder.toString()), err.toString() + out);
    }

    @Test
    void refusesWhatCannotBeWorkedWithAndWritesNothing() throws IOException, InvalidSyntaxException {
        Path noXml = Files.writeString(temp.resolve("broken.svg"), "<svg><g");
        assertEquals(3, run("pieces", noXml.toString()), err.toString());
        assertTrue(err.toString().startsWith("broken.svg"), err.toString());
        Path target = temp.resolve("out.tif");
        for (List<String> bad : List.of(List.of("--dpi", "0"), List.of("--dpi", "100000"), List.of("--lpi", "400"), List.of("--dot", "heart"))) {
            List<String> words = new ArrayList<>(List.of("screen", art().toString(), "--out", target.toString(), "--progress", "none"));
            words.addAll(bad);
            assertEquals(2, run(words.toArray(String[]::new)), bad + " " + err);
            assertTrue(Files.notExists(target), bad.toString());
        }
        Path open = Files.writeString(temp.resolve("open.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='50mm' height='50mm' viewBox='0 0 50 50'><path d='M0 0L40 40' stroke='#000' fill='none'/></svg>");
        assertEquals(3, run("pieces", open.toString()), err.toString());
        assertEquals(2, run("screen", art().toString()), "no --out");
        assertEquals(2, run("nonsense"));
        assertEquals(3, run("make", temp.resolve("nowhere").toString()), err.toString());
    }

    @Test
    void keepsAFileThatItDidNotMake() throws IOException, InvalidSyntaxException {
        Path target = Files.writeString(temp.resolve("mine.tif"), "mine");
        assertEquals(4, run("screen", art().toString(), "--out", target.toString(), "--dpi", "150", "--lpi", "20", "--progress", "none"), err.toString());
        assertEquals("mine", Files.readString(target));
    }

    @Test
    void gangsTwoSquaresWhereTheyFitAndNeedsTwoSheetsWhereNot() throws IOException, InvalidSyntaxException {
        Path items = Files.writeString(temp.resolve("items.csv"), "id,width_mm,height_mm,quantity,rotate\na,100,100,2,no\n");
        assertEquals(0, run("gang", items.toString(), "--sheet", "210x105", "--gap-mm", "5", "--seconds", "0.2", "--json", "--progress", "none"),
                err.toString());
        assertTrue(out.toString().contains("\"sheets\": 1"), out.toString());
        assertEquals(0, run("gang", items.toString(), "--sheet", "204x105", "--gap-mm", "5", "--seconds", "0.2", "--json", "--progress", "none"),
                err.toString());
        assertTrue(out.toString().contains("\"sheets\": 2"), out.toString());
        assertEquals(3, run("gang", items.toString(), "--sheet", "90x90", "--seconds", "0.2", "--progress", "none"), err.toString());
    }

    /** Half of clear glass under linear gray 128 lets .60793 through (Murray 1936 by hand): the tables of the colour bundle are found in its jar. */
    @Test
    void colourOfAMatt() throws InvalidSyntaxException {
        assertEquals(0, run("colour", "--glass", "#ffffff", "--paint", "#808080", "--coverage", "0.5", "--light", "D65,A,dusk", "--json"), err.toString());
        assertTrue(out.toString().contains("\"srgb\": \"#cdcdcd\""), out.toString());
        assertEquals(2, run("colour", "--glass", "#ffffff", "--paint", "#80808", "--coverage", "0.5"), err.toString());
    }
}
