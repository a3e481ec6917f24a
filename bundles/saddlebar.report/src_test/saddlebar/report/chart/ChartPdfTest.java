package saddlebar.report.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.kiln.chart.ChartDrawing;
import saddlebar.kiln.chart.Ink;
import saddlebar.kiln.chart.Mark;

class ChartPdfTest {
    @TempDir
    private Path temp;

    private static ChartDrawing drawing() {
        return new ChartDrawing(400, 300, List.of(new Mark.Box(0, 0, 400, 300, Ink.PAPER, Ink.FRAME), new Mark.Rule(10, 10, 390, 10, Ink.GRID),
                new Mark.Curve(new double[] {10, 290, 200, 20, 390, 200}, Ink.KILN), new Mark.Words(20, 40, "Temperature", Mark.Anchor.START, 14, true, false),
                new Mark.Words(12, 150, "\u00b0C", Mark.Anchor.MIDDLE, 14, false, true)), List.of());
    }

    @Test
    void onePageWithItsWordsAndTheSameBytes() throws IOException {
        Path first = temp.resolve("a.pdf");
        Path second = temp.resolve("b.pdf");
        ChartPdf.write(drawing(), "A firing", first, "test");
        ChartPdf.write(drawing(), "A firing", second, "test");
        assertArrayEquals(Files.readAllBytes(first), Files.readAllBytes(second));
        try (PDDocument document = Loader.loadPDF(first.toFile())) {
            assertEquals(1, document.getNumberOfPages());
            assertTrue(document.getPage(0).getMediaBox().getWidth() > document.getPage(0).getMediaBox().getHeight());
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("Temperature"), text);
            assertEquals("A firing", document.getDocumentInformation().getTitle());
        }
    }
}
