package saddlebar.stencil.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

import javax.imageio.ImageIO;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.problem.LockedException;
import saddlebar.model.work.Work;
import saddlebar.stencil.BitBands;
import saddlebar.stencil.code.BitonalSettings;
import saddlebar.stencil.code.PublicTool;
import saddlebar.stencil.process.FilmPositiveProcess;
import saddlebar.stencil.process.FusedSheetProcess;
import saddlebar.stencil.process.TonerSide;

class TapePlanTest {
    private static final BitonalSettings SETTINGS = BitonalSettings.at(120);

    @TempDir
    private Path folder;

    @Test
    void fusedSheetIsOpenAtItsEdgesAndMarks() throws IOException {
        TapePlan plan = TapePlan.of(Sheets.small(new FusedSheetProcess(), 120));
        assertEquals(List.of(TapeArea.Kind.EDGE, TapeArea.Kind.HEAD, TapeArea.Kind.FOOT, TapeArea.Kind.CAPTION), List.copyOf(plan.whatToDo().keySet()));
        assertEquals(4 + 1 + 1 + 4, plan.areas().size());
        assertEquals(2 * 4.3 * (140 + 120 - 2 * 4.3), plan.areas().stream().filter(area -> area.kind() == TapeArea.Kind.EDGE)
                .mapToDouble(area -> area.areaMm().widthMm() * area.areaMm().heightMm()).sum(), 1e-9);
        assertTrue(plan.cautions().get(0).contains("hot"), plan.cautions().toString());
        assertTrue(plan.cautions().get(1).contains("Common practice") && plan.cautions().get(1).contains("121"), plan.cautions().toString());
    }

    @Test
    void filmIsOpenAtItsMarksOnly() throws IOException {
        TapePlan plan = TapePlan.of(Sheets.small(new FilmPositiveProcess(), 120));
        assertEquals(List.of(TapeArea.Kind.HEAD, TapeArea.Kind.FOOT, TapeArea.Kind.CAPTION), List.copyOf(plan.whatToDo().keySet()));
        assertTrue(plan.cautions().get(0).contains("gloves"), plan.cautions().toString());
    }

    /** What touches a side of the mesh shows mirrored on that side: the other side shows the toner view. */
    @Test
    void saysFromWhereItIsSeen() throws IOException {
        SheetPlan print = Sheets.small(new FusedSheetProcess(), 120);
        assertTrue(TapePlan.of(print).notes().get(0).startsWith("Drawn in the toner view, as the squeegee side of the screen shows it"));
        SheetPlan squeegee = new SheetPlan(print.paper(), 120, 4.3, print.process(), TonerSide.SQUEEGEE, print.label(), print.stencils());
        assertTrue(TapePlan.of(squeegee).notes().get(0).startsWith("Drawn in the toner view, as the print side of the screen shows it"));
    }

    @Test
    void pageIsOneOfItsPaperAndTheSameEachTime() throws Exception {
        SheetPlan plan = Sheets.full(new FusedSheetProcess(), Paper.TABLOID, 50, 120, 90);
        Path pdf = TapePage.writePdf(plan, folder.resolve("tape.pdf"), SETTINGS);
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertEquals(1, document.getNumberOfPages());
            assertEquals(612, document.getPage(0).getMediaBox().getWidth(), 0.01);
        }
        Thread.sleep(5); // whatever took the time of day would differ now
        Path again = TapePage.writePdf(plan, folder.resolve("again.pdf"), SETTINGS);
        assertArrayEquals(Files.readAllBytes(pdf), Files.readAllBytes(again));
        assertThrows(LockedException.class, () -> TapePage.writePdf(plan, pdf, SETTINGS));
    }

    /** poppler reads all sentences and cautions from the page. */
    @Test
    void pageSaysAllOfIt() throws Exception {
        SheetPlan plan = Sheets.small(new FusedSheetProcess(), 50);
        Path pdf = TapePage.writePdf(plan, folder.resolve("tape.pdf"), SETTINGS);
        String text = PublicTool.run("pdftotext", "-enc", "UTF-8", "-nopgbrk", pdf, "-").replaceAll("\\s+", " ");
        TapePlan tape = TapePlan.of(plan);
        for (String sentence : Stream.of(tape.whatToDo().values(), tape.notes(), tape.cautions()).flatMap(Collection::stream).toList()) {
            assertTrue(text.contains(sentence), sentence + " is not in " + text);
        }
        assertTrue(text.contains("Estuary reading room sheet 2 of 5"), text);
    }

    @Test
    void pageAndProofAreDrawn() throws IOException {
        SheetPlan plan = Sheets.small(new FusedSheetProcess(), 300);
        BufferedImage page = ImageIO.read(TapePage.writePng(plan, folder.resolve("tape.png"), SETTINGS).toFile());
        assertEquals(1240, page.getWidth()); // A4 at 150 px an inch
        assertEquals(1754, page.getHeight());
        Path proofFile = folder.resolve("proof.png");
        try (BitBands sheet = ComposedSheet.of(plan)) {
            SheetProof.write(sheet, plan, proofFile, 150, SETTINGS, Work.UNWATCHED);
        }
        BufferedImage proof = ImageIO.read(proofFile.toFile());
        assertEquals(plan.widthPx() / 2, proof.getWidth());
        assertTrue(proof.getHeight() > plan.heightPx() / 2 + 100, "words under the sheet");
        int red = 0;
        for (int y = 0; y < plan.heightPx() / 2; y++) {
            for (int x = 0; x < proof.getWidth(); x++) {
                int rgb = proof.getRGB(x, y);
                red += (rgb >> 16 & 0xFF) > 150 && (rgb & 0xFF) < 100 ? 1 : 0;
            }
        }
        assertTrue(red > 1000, red + " px of hatch");
        assertFalse(Files.exists(folder.resolve(".proof.png")));
    }
}
