package saddlebar.model.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.PaintKind;
import saddlebar.model.commission.PaperSize;
import saddlebar.model.commission.ScreenFrame;
import saddlebar.model.commission.Studio;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.CsvTable.Row;
import saddlebar.model.units.Units;

class StudioLibraryTest {
    @TempDir
    Path temp;

    private static Studio studio() throws IOException {
        Studio studio = CommissionFactory.eINSTANCE.createStudio();
        StudioLibrary.of(CommissionFolderTest.SHARED).fill(studio);
        return studio;
    }

    @Test
    void aNewStudioCanMakeAWindow() throws IOException {
        Studio studio = studio();
        assertTrue(studio.getGlass().size() >= 24, "glasses: " + studio.getGlass().size());
        assertTrue(studio.getPaints().size() >= 8, "paints: " + studio.getPaints().size());
        assertEquals(16, studio.getMeshes().size());
        for (PaintKind kind : PaintKind.values()) {
            assertTrue(studio.getPaints().stream().anyMatch(paint -> paint.getKind() == kind), kind.toString());
            assertTrue(studio.getSchedules().stream().anyMatch(schedule -> schedule.getPurpose() == kind), kind.toString());
        }
        Paint dearest = studio.getPaints().stream().max((a, b) -> a.getPricePerKg().compareTo(b.getPricePerKg())).orElseThrow();
        assertTrue(dearest.isGoldBearing(), "gold-bearing purples are dearest");
        double stain = studio.getPaints().stream().filter(p -> p.getKind() == PaintKind.STAIN).mapToDouble(Paint::getMaturingToC).max().orElseThrow();
        double others = studio.getPaints().stream().filter(p -> p.getKind() != PaintKind.STAIN).mapToDouble(Paint::getMaturingToC).min().orElseThrow();
        assertTrue(stain < others, "stain is fired lowest and last");
        assertEquals(2, studio.getProcesses().size());
        assertTrue(studio.getProcesses().stream().noneMatch(process -> process.isConfirmed()), "the studio has yet to be asked");
    }

    @Test
    void namesAreUniqueAndColoursAreColours() throws IOException {
        Studio studio = studio();
        for (List<String> names : List.of(studio.getGlass().stream().map(GlassStock::getName).toList(),
                studio.getPaints().stream().map(Paint::getName).toList(),
                studio.getFrames().stream().map(ScreenFrame::getName).toList(), studio.getPapers().stream().map(PaperSize::getName).toList())) {
            assertEquals(names.size(), new HashSet<>(names).size(), names.toString());
        }
        assertTrue(studio.getGlass().stream().allMatch(glass -> glass.getColour().matches("#[0-9a-f]{6}")));
    }

    /** Luminance of a paint's colour (IEC 61966-2-1) is the transmittance that its row states. */
    @Test
    void aPaintsColourHasTheLuminanceOfItsTransmittance() throws IOException {
        for (Paint paint : studio().getPaints()) {
            int rgb = Integer.parseInt(paint.getColour().substring(1), 16);
            double y = 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
            assertEquals(paint.getSolidTransmittance(), y, 0.006, paint.getName());
        }
    }

    private static double linear(int code) {
        double v = (code & 255) / 255.0;
        return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }

    /** ISO 216: A0 is 1 m2 of sides 1 : sqrt 2, each next size its half, rounded down to whole mm; ANSI/ASME Y14.1: inches exactly. */
    @ParameterizedTest
    @CsvSource({"a4, 210, 297", "a3, 297, 420", "letter, 215.9, 279.4", "tabloid, 279.4, 431.8"})
    void papersAreOfTheirStandards(String name, double widthMm, double heightMm) throws IOException {
        PaperSize paper = studio().getPapers().stream().filter(p -> p.getName().equals(name)).findFirst().orElseThrow();
        assertEquals(widthMm, paper.getWidthMm());
        assertEquals(heightMm, paper.getHeightMm());
        if (name.startsWith("a")) {
            int n = name.charAt(1) - '0';
            assertEquals(Math.floor(1000 * Math.pow(2, 0.25 - n / 2.0) + 0.2), paper.getHeightMm());
        }
    }

    /**
     * The table's formula against the published specifications of one count, 225 threads an inch in three threads: opening in um, open area in
     * percent (a weaver's data sheets; thickness and volume there follow the weaver's own measurement, not a formula).
     */
    @ParameterizedTest
    @CsvSource({"40, 73, 42", "48, 65, 33", "54, 59, 27"})
    void theFormulaOfTheMeshTableFitsPublishedMeshes(double threadUm, double openingUm, double openPercent) {
        double pitch = Units.UM_PER_INCH / 225;
        assertEquals(openingUm, pitch - threadUm, 1.0);
        assertEquals(openPercent, 100 * Math.pow((pitch - threadUm) / pitch, 2), 1.0);
    }

    @Test
    void theComputedColumnsOfTheMeshTableAreTheFormula() throws IOException {
        for (Row row : CsvTable.read(CommissionFolderTest.SHARED.resolve("meshes.csv")).rows()) {
            double pitch = Units.UM_PER_INCH / row.number("threads_per_inch");
            double opening = pitch - row.number("thread_um");
            double open = Math.pow(opening / pitch, 2);
            assertEquals(opening, row.number("opening_um"), 0.05, row.where());
            assertEquals(100 * open, row.number("open_percent"), 0.05, row.where());
            assertEquals(open * 1.55 * row.number("thread_um"), row.number("volume_cm3_per_m2"), 0.05, row.where());
            assertEquals(2 * row.number("thread_um") + opening, row.number("finest_um"), 0.5, row.where());
        }
    }

    @Test
    void everyRowOfEveryTableNamesItsSource() throws IOException {
        try (Stream<Path> files = Files.list(CommissionFolderTest.SHARED)) {
            Set<Path> tables = new HashSet<>(files.filter(file -> file.toString().endsWith(".csv")).toList());
            assertEquals(16, tables.size());
            for (Path table : tables) {
                for (Row row : CsvTable.read(table).rows()) {
                    row.needed("source");
                }
            }
        }
    }

    @Test
    void aBadRowIsToldWithFileAndLine() throws IOException {
        Map<String, String> bad = new HashMap<>();
        bad.put("papers.csv", "name,width_mm,height_mm,in_use,source\na4,210,wide,yes,x\n");
        bad.put("frames.csv", "name,mesh,image_width_mm,image_height_mm,squeegee_margin_mm,mesh_turn_deg,source\n# a remark\nF1,999-1,1,1,1,0,x\n");
        bad.put("paints.csv", "name,family\nx\n");
        for (Map.Entry<String, String> table : bad.entrySet()) {
            Path folder = temp.resolve(table.getKey());
            Files.createDirectory(folder);
            try (Stream<Path> files = Files.list(CommissionFolderTest.SHARED)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    Files.copy(file, folder.resolve(file.getFileName()));
                }
            }
            Files.writeString(folder.resolve(table.getKey()), table.getValue());
            Refusal refusal = assertThrows(Refusal.class, () -> StudioLibrary.of(folder).fill(CommissionFactory.eINSTANCE.createStudio()));
            assertTrue(refusal.where().matches(".*" + table.getKey() + ":[23]"), refusal.getMessage());
        }
        assertThrows(Refusal.class, () -> StudioLibrary.of(temp.resolve("nowhere")));
    }

    @Test
    void quotedCellsAreReadAsRfc4180Says() throws IOException {
        Path file = Files.writeString(temp.resolve("t.csv"), "\uFEFFa,b\r\n\"x, \"\"y\"\"\",\"two\nlines\"\r\n# remark, with comma\r\n\r\n1,\r\n");
        List<Row> rows = CsvTable.read(file).rows();
        assertEquals(2, rows.size());
        assertEquals("x, \"y\"", rows.get(0).text("a"));
        assertEquals("two\nlines", rows.get(0).text("b"));
        assertEquals("", rows.get(1).text("b"));
        assertTrue(rows.get(1).where().endsWith(":6"), rows.get(1).where());
        Files.writeString(file, "a,b\n\"open,1\n");
        assertThrows(Refusal.class, () -> CsvTable.read(file));
        Files.writeString(file, "# nothing\n");
        assertThrows(Refusal.class, () -> CsvTable.read(file));
        Files.write(file, new byte[] {'a', '\n', (byte) 0xff, '\n'});
        assertThrows(Refusal.class, () -> CsvTable.read(file));
    }
}
