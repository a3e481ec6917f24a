package saddlebar.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;

/** Whatever is wrong is told in one sentence with the exit code of its kind, and nothing is left behind. */
class BadWordsAndFilesTest {
    private static final String SCREEN = "screen @ok.svg --out @new.tif ";

    @TempDir
    private Path folder;
    private CommandBench bench;

    @BeforeEach
    void art() throws IOException {
        bench = new CommandBench(folder);
        bench.svg("ok.svg", "<g id='matt'><rect x='5' y='5' width='40' height='40' fill='#777'/></g>");
        bench.svg("panel.svg", "<g id='trace'><path d='M5 10H45' stroke='#000' stroke-width='2'/></g>"
                + "<g id='cutline' fill='none' stroke='#000'><rect width='50' height='50'/><path d='M25 0V50'/></g>");
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    private void refused(int code, String line, String words) throws IOException {
        List<String> before = names();
        assertEquals(code, bench.run(line), line + " said: " + bench.told());
        String told = bench.told();
        assertTrue(told.contains(words), line + " said: " + told);
        assertFalse(told.contains("\n") || told.contains("Exception") || told.contains("\tat "), told);
        assertEquals("", bench.answered(), "no answer beside a refusal");
        assertEquals(before, names(), "nothing is left behind by " + line);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "<svg><g | bad.svg:1: this is no well-formed XML",
            "<!DOCTYPE svg [<!ENTITY a 'ha'><!ENTITY b '&a;&a;'>]><svg xmlns='http://www.w3.org/2000/svg'><text>&b;</text></svg>"
                    + " | bad.svg:1: the file declares the entity a",
            "<!DOCTYPE svg [<!ENTITY x SYSTEM 'file:///etc/hostname'>]><svg xmlns='http://www.w3.org/2000/svg'><text>&x;</text></svg> | of another file",
            "<svg xmlns='http://www.w3.org/2000/svg' width='0' height='5'/> | bad.svg:1: the drawing's page has no size",
            "<svg xmlns='http://www.w3.org/2000/svg' width='9mm' height='9mm'>~<path d='M0 0L NaN 3' stroke='#000'/></svg>"
                    + " | bad.svg:2: <path>: d holds a number that is none",
            "<svg xmlns='http://www.w3.org/2000/svg' width='9mm' height='9mm'>~<path d='M0 0L1e30 3' stroke='#000'/></svg>"
                    + " | bad.svg:2: <path> reaches more than ten"})
    void drawings(String text, String words) throws IOException {
        bench.file("bad.svg", text.replace('~', '\n'));
        refused(3, "pieces @bad.svg", words);
        refused(3, "screen @bad.svg --out @new.png", words);
    }

    @Test
    void noSizeAtAllIsTold() throws IOException {
        bench.file("bare.svg", "<svg xmlns='http://www.w3.org/2000/svg'><rect width='50' height='50'/></svg>");
        assertEquals(1, bench.run("screen @bare.svg --out @bare.png --dpi 150 --lpi 20"), bench.told());
        assertTrue(bench.told().contains("does not say how large its page is"), bench.told());
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "tif"})
    void pictures(String kind) throws IOException {
        Path whole = bench.at("whole." + kind);
        ImageIO.write(new BufferedImage(60, 60, BufferedImage.TYPE_BYTE_GRAY), kind, whole.toFile());
        byte[] bytes = Files.readAllBytes(whole);
        Files.write(bench.at("cut." + kind), Arrays.copyOf(bytes, bytes.length / 2));
        refused(3, "screen @cut." + kind + " --out @new.tif", "cut." + kind + ": ");
    }

    @Test
    void cutlines() throws IOException {
        bench.svg("empty.svg", "<g id='cutline'/>");
        refused(3, "pieces @empty.svg", "empty.svg: cutline: there is no line in it");
        bench.svg("open.svg", "<g id='cutline' fill='none' stroke='#000'><path d='M0 0L40 40M3 9V20'/></g>");
        refused(3, "pieces @open.svg", "open.svg: cutline: none of its 2 lines closes a piece");
        bench.svg("half.svg", "<g id='cutline' fill='none' stroke='#000'><rect width='50' height='50'/><path d='M25 0V50M25 20L40 25'/></g>");
        assertEquals(1, bench.run("pieces @half.svg"), bench.told());
        assertTrue(bench.told().startsWith("error: ") && bench.told().contains("at 40.0, 25.0 mm"), bench.told());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"--dpi 0 | --dpi: 0 is out of range; take 72 to 4800", "--dpi 100000"
            + " | --dpi: 100000 is out of range", "--dpi x | no number",
            "--dpi NaN | out of range", "--lpi 301 | leaves a cell fewer than 17 tones; ask for 300 or less", "--lpi 0 | cells wider",
            "--dot heart | no dot shape",
            "--dot-mm 0 | out of range", "--filter none | no diffusion filter", "--method magic | no screening method", "--process wet | no stencil process",
            "--mirror so | --mirror takes", "--from 2 | cannot stay bare", "--from .5 --to .2 | must be lighter", "--tone linear --to 1 | leave out",
            "--width-mm 0 | --width-mm takes", "--width-mm NaN | --width-mm takes", "--scale 1 | two numbers", "--scale 1:0 | --scale takes",
            "--page 0 | from 1",
            "--page x | no whole number", "--jobs 0 | --jobs takes", "--bogus | Unknown option", "--course zigzag | lines cannot run", "more | one too many"})
    void wordsOfScreen(String option, String words) throws IOException {
        refused(2, SCREEN + option, words);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"nonsense | There is no command 'nonsense'", "screen @ok.svg | --out", "screen @ok.svg --out @a.bmp | ends in .tif",
            "pieces @ok.svg --gap-mm -1 | out of range", "gang @items.csv --sheet 0x9 | usable width", "gang @items.csv --strip 0 | --strip takes",
            "gang @items.csv | On what?", "mesh --count 5 --thread-um 48 | --count: a mesh of 5 threads", "mesh --count 220 --thread-um 500 | no opening",
            "wedge --out @a.pdf --dpi 0 | --dpi: 0", "wedge --out @a.pdf --sheet tiny | no sheet", "new @job --title A --paper foolscap | --paper takes",
            "bring @job @ok.svg --window W01 --roles mud=x | --roles knows"})
    void wordsOfOthers(String line, String words) throws IOException {
        bench.file("items.csv", "id,width_mm,height_mm,quantity,rotate\na,100,100,1,no\n");
        refused(2, line, words);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"screen @none.svg --out @a.tif | none.svg: there is no such file", "screen @. --out @a.tif | a folder, not a file",
            "screen @ok.svg --out @a.tif --page 2 | ok.svg: it has no page 2 but 1 page", "screen @ok.svg --out @a.tif --layer none | none",
            "gang @items.csv --sheet 50x60 | items.csv: item a: it is 100 x 100 mm and fits no sheet",
            "gang @none.csv --sheet 50x60 | none.csv: there is no such file",
            "make @nowhere | nowhere", "check @nowhere | nowhere", "status @nowhere | nowhere", "status @ok.svg | ok.svg",
            "bring @nowhere @ok.svg --window W01 | nowhere"})
    void filesAndFolders(String line, String words) throws IOException {
        bench.file("items.csv", "id,width_mm,height_mm,quantity,rotate\na,100,100,1,no\n");
        refused(3, line, words);
    }

    @Test
    void aForeignFileStays() throws IOException {
        for (String line : List.of("screen @ok.svg --out @mine.tif", "pieces @panel.svg --svg @mine.svg", "wedge --out @mine.pdf")) {
            String name = line.substring(line.lastIndexOf('@') + 1);
            bench.file(name, "mine");
            refused(4, line, "exists already; nothing was written. Give --replace");
            assertEquals("mine", Files.readString(bench.at(name)));
        }
        bench.file("new", "mine");
        refused(4, "new @new --title A", "exists already");
    }

    @Test
    void aFolderThatMayNotBeWritten() throws IOException {
        Path shut = Files.createDirectory(bench.at("shut"));
        Files.setPosixFilePermissions(shut, PosixFilePermissions.fromString("r-xr-xr-x"));
        assumeFalse(Files.isWritable(shut), "a superuser may write everywhere");
        refused(4, "screen @ok.svg --out @shut/new.tif", "may not be written");
    }

    /** A file system of 16 kB, as only a superuser can make one. */
    @Test
    void aFullDisk() throws IOException, InterruptedException {
        Path full = Files.createDirectory(bench.at("full"));
        assumeTrue("root".equals(System.getProperty("user.name")) && 0 == exit("mount", "-t", "tmpfs", "-o", "size=16k", "tmpfs", full.toString()),
                "needs the right to mount");
        try {
            assertEquals(4, bench.run("wedge --out @full/new.pdf"), bench.told());
            assertTrue(bench.told().contains("No space left on device") && bench.told().contains("nothing was changed"), bench.told());
            try (Stream<Path> left = Files.list(full)) {
                assertEquals(List.of(), left.toList());
            }
        } finally {
            exit("umount", full.toString());
        }
    }

    private static int exit(String... words) throws IOException, InterruptedException {
        return new ProcessBuilder(words).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor();
    }

    private void newerFormat() throws IOException {
        Path file = bench.at("job").resolve("commission.saddlebar");
        String text = Files.readString(file);
        String newer = text.replaceFirst("formatVersion=\"[0-9]+\"", "formatVersion=\"99\"");
        Files.writeString(file, newer);
        refused(3, "status @job", "99");
        refused(3, "make @job", "newer");
        assertEquals(newer, Files.readString(file));
        Files.writeString(file, text);
        bench.stopped();
        refused(130, "make @job", "Stopped; nothing is half written.");
    }

    /** Two pages of 1 and of 2 inches; no table of places, which readers make anew. */
    @Test
    void pagesOfAPdf() throws IOException {
        bench.file("two.pdf", """
                %PDF-1.4
                1 0 obj <</Type/Catalog/Pages 2 0 R>> endobj
                2 0 obj <</Type/Pages/Kids[3 0 R 4 0 R]/Count 2>> endobj
                3 0 obj <</Type/Page/Parent 2 0 R/MediaBox[0 0 72 72]/Resources<<>>/Contents 5 0 R>> endobj
                4 0 obj <</Type/Page/Parent 2 0 R/MediaBox[0 0 144 144]/Resources<<>>/Contents 5 0 R>> endobj
                5 0 obj <</Length 16>> stream
                9 9 54 54 re f\s
                endstream endobj
                trailer <</Root 1 0 R>>
                """);
        refused(3, "screen @two.pdf --out @new.tif --page 3", "two.pdf: it has no page 3 but 2 pages; name one of them");
        for (int page = 1; page <= 2; page++) {
            assertTrue(bench.run("screen @two.pdf --dpi 300 --lpi 20 --json --replace --out @new.tif --page " + page) <= 1, bench.told());
            assertEquals(300 * page, bench.json().get("widthPx").getAsInt());
        }
        refused(3, "pieces @two.pdf --page 3", "it has no page 3 but 2 pages");
    }

    @Test
    void commissions() throws IOException {
        assertEquals(0, bench.run("new @job --title A"), bench.told());
        refused(4, "new @job --title A", "is not empty");
        refused(3, "bring @job @ok.svg --window W01", "no layer looks like the cutline");
        bench.svg("open.svg", "<g id='cutline' fill='none' stroke='#000'><path d='M0 0L40 40M3 9V20'/></g>");
        refused(3, "bring @job @open.svg --window W01", "open.svg: cutline: none of its 2 lines closes a piece");
        refused(2, "bring @job @panel.svg --window -", "--window takes a short name");
        assertEquals(0, bench.run("bring @job @panel.svg --window W01"), bench.told());
        refused(3, "make @job W99", "W99");
        refused(2, "make @job --until never", "--until takes");
        try (CommissionFolder open = CommissionFolder.open(bench.at("job"), Access.WRITE)) {
            assertTrue(open.windows().size() == 1);
            refused(4, "make @job", "job");
            refused(4, "bring @job @panel.svg --window W02", "job");
        }
        newerFormat();
        bench.stopped();
        refused(130, "screen @ok.svg --out @new.tif", "Stopped; nothing is half written.");
    }

    /** Found by fuzzing: a quote that nothing closes came as a failure of the CSV library instead. */
    @Test
    void readingsWithAnOpenQuote() throws IOException {
        bench.file("open.csv", "nominal,effective\n\"0,0\n1,1\n");
        refused(3, "tone @open.csv", "open.csv: it is not a CSV of wedge readings");
    }
}
