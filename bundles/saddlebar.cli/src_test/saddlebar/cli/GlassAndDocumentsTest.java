package saddlebar.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is printed at full size, laid on glass and written for client and bench, by command. */
class GlassAndDocumentsTest {
    @TempDir
    private Path folder;
    private CommandBench bench;

    @BeforeEach
    void commission() throws IOException {
        bench = new CommandBench(folder);
        bench.svg("panel.svg", "<g id='matt'><rect x='5' y='5' width='40' height='40' fill='#777'/></g>"
                + "<g id='cutline' fill='none' stroke='#000'><rect width='50' height='50'/><path d='M25 0V50'/></g>");
        assertEquals(0, bench.run("new @job --title A --paper a4"), bench.told());
        assertTrue(bench.run("bring @job @panel.svg --window W01") <= 1, bench.told());
    }

    @Test
    void fullSize() {
        assertEquals(0, bench.run("fullsize @job --paper a4 --out @out --json"), bench.told());
        assertEquals(6, bench.json().getAsJsonArray("files").size());
        assertTrue(Files.exists(folder.resolve("out/W01-outlines.svg")));
        assertEquals(4, bench.run("fullsize @job --what bars --out @out"), "what is there already is left alone");
        assertEquals(2, bench.run("fullsize @job --what towers --out @out"));
        assertEquals(2, bench.run("fullsize @job --paper roll:5 --out @other"));
        assertEquals(2, bench.run("fullsize @job --kerf-mm 9 --out @other"));
        assertEquals(3, bench.run("fullsize @job W09 --out @other"));
        assertFalse(Files.exists(folder.resolve("other")));
    }

    @Test
    void stock() {
        assertEquals(0, bench.run("stock add @job --glass amber --count 2 --json"), bench.told());
        assertEquals(2, bench.json().getAsJsonArray("sheets").size());
        assertEquals(0, bench.run("stock flaw @job G1 --at 100,100 --radius 20"), bench.told());
        assertEquals(0, bench.run("stock list @job --json"));
        assertEquals(1,
                bench.json().getAsJsonArray("sheets").get(0).getAsJsonObject().get("flaws").getAsInt()
                        + bench.json().getAsJsonArray("sheets").get(1).getAsJsonObject()
                                .get("flaws").getAsInt());
        assertEquals(3, bench.run("stock add @job --glass nowhere"));
        assertEquals(3, bench.run("stock flaw @job G9 --at 1,1 --radius 2"));
        assertEquals(3, bench.run("stock flaw @job G1 --at 9000,1 --radius 2"));
        assertEquals(2, bench.run("stock flaw @job G1 --at 1"));
        assertEquals(2, bench.run("stock burn @job"));
        assertEquals(2, bench.run("stock add @job --glass amber --size 10by20"));
        assertEquals(3, bench.run("stock lay @job"), "no piece has a glass");
        assertEquals(3, bench.run("stock take @job"), "nothing was laid");
    }

    @Test
    void report() {
        assertTrue(bench.run("report @job dossier --out @d.pdf --lang de --paper letter --day 2026-03-01 --json") <= 1, bench.told());
        assertEquals("dossier", bench.json().get("kind").getAsString());
        assertTrue(Files.exists(folder.resolve("d.pdf")));
        assertEquals(4, bench.run("report @job dossier --out @d.pdf"));
        assertEquals(2, bench.run("report @job poem --out @p.pdf"));
        assertEquals(2, bench.run("report @job dossier --lang xx --out @p.pdf"));
        assertEquals(2, bench.run("report @job remake --out @p.pdf"));
        assertEquals(3, bench.run("report @job remake --piece W01/99 --out @p.pdf"));
        assertEquals(3, bench.run("report @job defect --out @p.pdf"), "no defect is on record");
        assertFalse(Files.exists(folder.resolve("p.pdf")));
    }
}
