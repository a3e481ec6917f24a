package saddlebar.report.truesize;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.art.OutlineMm;
import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;

class CartoonAndBarsTest {
    @TempDir
    private Path temp;

    private static List<PatternPiece> panel() {
        return List.of(new PatternPiece("1", OutlineMm.of(List.of(new double[] {0, 0, 400, 0, 400, 300, 0, 300})), 200, 150, 90, ""),
                new PatternPiece("2", OutlineMm.of(List.of(new double[] {0, 300, 400, 300, 400, 600, 0, 600})), 200, 450, 90, ""));
    }

    /** The tone lies under the pieces to a pixel, and the number is drawn over it. */
    @Test
    void whatIsPaintedLiesWhereItIsDrawn() throws IOException {
        byte[] gray = new byte[40 * 60];
        java.util.Arrays.fill(gray, (byte) 255);
        for (int y = 10; y < 20; y++) { // 100 to 200 mm down
            java.util.Arrays.fill(gray, y * 40 + 5, y * 40 + 15, (byte) 150); // 50 to 150 mm across
        }
        TrueSizeDrawing cartoon = CutlineDrawing.of("Test, cartoon", List.of(new Ink.Picture(40, 60, gray, 0, 0, 400, 600)), panel());
        Path file = temp.resolve("cartoon.pdf");
        TrueSizePdf.write("Test", List.of(LaidDrawing.of(cartoon, PrintPaper.of("roll:610"), 12)), file, "test", Work.UNWATCHED);
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 25.4f, ImageType.RGB); // 1 px a mm
            int left = (int) Math.round(6 + Tiling.SIDE_MM + CutlineDrawing.BORDER_MM);
            int top = (int) Math.round(6 + CutlineDrawing.BORDER_MM);
            assertEquals(150, page.getRGB(left + 60, top + 110) & 255, 3);
            assertEquals(150, page.getRGB(left + 145, top + 195) & 255, 3);
            assertEquals(255, page.getRGB(left + 40, top + 150) & 255, 3);
            assertEquals(255, page.getRGB(left + 100, top + 90) & 255, 3);
            assertTrue(new PDFTextStripper().getText(document).contains("2"));
        }
    }

    @Test
    void barsAreDrawnAtTheirHeightWithLengthTiesAndCaution() throws IOException {
        TrueSizeDrawing bars = BarsDrawing.of("Test, bars", panel(), List.of(new BarPlace(300, 0, 400, List.of(100.0, 300.0))), 10,
                List.of("1 bar: more than 3 m around.", "Wind load is for a licensed professional."));
        double[] middle = bars.ink().stream().filter(ink -> ink instanceof Ink.Line line && line.dashMm().length > 0)
                .map(ink -> ((Ink.Line) ink).paths().get(0)).findFirst().orElseThrow();
        assertEquals(400, middle[2] - middle[0], 1e-9);
        double[] upper = ((Ink.Line) bars.ink().get(0)).paths().get(0);
        assertEquals(300, middle[1] - upper[1], 1e-9, "from the panel's top");
        Path file = temp.resolve("bars.pdf");
        TrueSizePdf.write("Test", List.of(LaidDrawing.of(bars, PrintPaper.of("a1"), 12)), file, "test", Work.UNWATCHED);
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("400.0 mm clear, 2 ties") && text.contains("licensed professional"), text);
        }
        assertThrows(Refusal.class, () -> BarsDrawing.of("Test", List.of(), List.of(), 10, List.of()));
    }
}
