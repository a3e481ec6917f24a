package saddlebar.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;

import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.record.DeedBook;
import saddlebar.production.record.DeedReader;

/** What the records say of the kilns, and what {@code fire} takes of glasses; on words and files that will not do, too. */
class KilnCommandTest {
    private static final Path DEMO = Path.of("../../demo-projects");

    @TempDir
    private Path temp;
    private CommandBench bench;

    @BeforeEach
    void copy() throws IOException {
        bench = new CommandBench(temp);
        for (String name : new String[] {"first-panel", "firing"}) {
            try (Stream<Path> files = Files.walk(DEMO.resolve(name))) {
                for (Path file : files.filter(path -> Files.isRegularFile(path) && !path.getFileName().toString().startsWith(".")).toList()) {
                    Path target = temp.resolve(DEMO.relativize(file).toString());
                    Files.createDirectories(target.getParent());
                    Files.copy(file, target);
                }
            }
        }
    }

    private JsonObject glass(String words) {
        int code = bench.run("fire @firing/trace-650.csv --json " + words);
        assertTrue(code <= 1, bench::told);
        return bench.json().getAsJsonObject("glass");
    }

    /** SRM 710A: Fluegel 2007, Table 12; DGG I's composition by Lakatos et al. 1976, within 8 K of the fit (Encyclopedia of Glass Science 2021). */
    @Test
    void glassesByPointsAndByAnalysis() {
        assertEquals(515.0, glass("--glass-points 1.5=1319,6.6=731,12=545").get("strainC").getAsDouble(), 0.1);
        assertEquals(542.7, glass("--glass-analysis SiO2=71.789,Al2O3=1.237,Na2O=14.971,K2O=.333,MgO=4.181,CaO=6.735").get("annealingC").getAsDouble(), 8);
        for (String wrong : new String[] {"--glass-points 12=545", "--glass-points 1=1,2=2,3=3", "--glass-points a=b,c=d,e=f", "--glass-analysis SiO2=20",
                "--glass-analysis Xy=3", "--glass-points 1.5=1319,6.6=731,12=545 --glass-analysis SiO2=72,Na2O=15,CaO=10", "--over float", "--over nothing=3",
                "--over float=900", "--shelf wood", "--lesson trace-650.csv", "--chart c.gif", "--table t.txt"}) {
            assertEquals(2, bench.run("fire @firing/trace-650.csv " + wrong), wrong + ": " + bench.told());
        }
    }

    @Test
    void aFusedLayerThatDoesNotGoTogetherIsTold() {
        assertEquals(1, bench.run("fire @firing/trace-650.csv --glass srm-711 --over float=3"), bench.told());
        assertTrue(bench.told().contains("Their annealing points lie"), bench.told());
        assertFalse(bench.run("fire @firing/trace-650.csv --largest-mm 50 --over float=0.1") > 0, bench.told());
    }

    @Test
    void theKilnIsLearntBeforeTheFiringAndItsChartIsWritten() throws IOException {
        String lesson = temp.resolve("firing/trace-650.csv") + "=" + temp.resolve("firing/kiln-log.csv");
        assertEquals(0, bench.run("fire @firing/trace-650.csv --json --lesson " + lesson + " --chart @c.png --table @t.csv"), bench.told());
        JsonObject learnt = bench.json().getAsJsonObject("learnt");
        assertTrue(learnt.get("afterK").getAsDouble() < learnt.get("beforeK").getAsDouble() / 3, learnt.toString());
        assertEquals((byte) 'P', Files.readAllBytes(temp.resolve("c.png"))[1]);
        assertTrue(Files.readString(temp.resolve("t.csv")).lines().count() > 100);
        assertEquals(4, bench.run("fire @firing/trace-650.csv --table @t.csv"), "never over a file unasked");
    }

    @Test
    void aFiringWithItsLogMeterAndWitness() throws IOException {
        assertEquals(0, bench.run("kiln @first-panel"), bench.told());
        Files.writeString(temp.resolve("notebook.csv"), """
                when,kind,window,piece,layer,firing,schedule,shelf_place
                2026-02-01T08:00:00Z,fire,W01,1,trace,F001,trace 650,A1
                2026-02-01T08:00:00Z,fire,W01,2,trace,F001,trace 650,A2
                """);
        try (var open = CommissionFolder.open(temp.resolve("first-panel"), Access.WRITE)) {
            var reader = new DeedReader(Instant.parse("2026-03-01T00:00:00Z"), ZoneOffset.UTC);
            new DeedBook(open, false).enter(reader.table(temp.resolve("notebook.csv")).deeds(), true);
        }
        String log = temp.resolve("firing/kiln-log.csv").toString();
        assertEquals(0, bench.run("kiln @first-panel --json --log F001=" + log + " --meter F001=9.4 --witness F001:A1=652"), bench.told());
        JsonObject firing = bench.json().getAsJsonArray("firings").get(0).getAsJsonObject();
        assertEquals("as scheduled", firing.get("verdict").getAsString());
        assertEquals(2, firing.get("pieces").getAsInt());
        assertEquals(9.4, firing.get("kWh").getAsDouble());
        assertTrue(Files.isRegularFile(temp.resolve("first-panel/studio/logs/kiln-log.csv")));
        assertEquals(2, bench.json().getAsJsonArray("pieces").size());
        assertEquals(3, bench.run("kiln @first-panel --log F009=" + log));
        assertEquals(3, bench.run("kiln @first-panel --meter F001=-4"));
        assertEquals(2, bench.run("kiln @first-panel --witness F001=652"));
        assertEquals(2, bench.run("kiln @first-panel --learn nobody"));
        Path bad = Files.writeString(temp.resolve("bad.csv"), "seconds,temperature_x\n0,20\n60,30\n");
        assertEquals(3, bench.run("kiln @first-panel --log F001=" + bad));
        assertTrue(bench.told().contains("bad.csv:1"), bench.told());
        assertEquals(0, bench.run("kiln @first-panel --json"), bench.told());
        assertEquals("logs/kiln-log.csv", bench.json().getAsJsonArray("firings").get(0).getAsJsonObject().get("log").getAsString(), "nothing is lost");
    }
}
