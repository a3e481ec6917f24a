package saddlebar.report.truesize;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import javax.imageio.ImageIO;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.work.Work;

class TrueSizePdfTest {
    @TempDir
    private Path temp;

    /** A square of 1 m with its diagonal: what a maker would lay a rule to. */
    private static TrueSizeDrawing metre() {
        return new TrueSizeDrawing("One metre \u2013 test", 1020, 1020, List.of(
                Ink.Line.full(List.of(new double[] {10, 10, 1010, 10, 1010, 1010, 10, 1010}), true, 0.35, 0),
                Ink.Line.full(List.of(new double[] {10, 10, 1010, 1010}), false, 0.35, 0), new Ink.Words("17", 500, 500, 8, 0)));
    }

    private Path written(String name, LaidDrawing... drawings) throws IOException {
        Path file = temp.resolve(name);
        TrueSizePdf.write("Test", List.of(drawings), file, "test", Work.UNWATCHED);
        return file;
    }

    /** Path points of a page: x and y in mm from its left top, and 1 where a line is drawn to it, 0 where the pen only moves. */
    private static List<double[]> points(PDPage page) throws IOException {
        List<double[]> points = new ArrayList<>();
        List<Object> operands = new ArrayList<>();
        double unitMm = page.getUserUnit() * 25.4 / 72;
        PDFStreamParser parser = new PDFStreamParser(page);
        for (Object token = parser.parseNextToken(); token != null; token = parser.parseNextToken()) {
            if (token instanceof Operator operator) {
                if (operator.getName().equals("m") || operator.getName().equals("l")) {
                    points.add(new double[] {((COSNumber) operands.get(0)).floatValue() * unitMm,
                            (page.getMediaBox().getHeight() - ((COSNumber) operands.get(1)).floatValue()) * unitMm, operator.getName().equals("l") ? 1 : 0});
                }
                operands.clear();
            } else {
                operands.add(token);
            }
        }
        return points;
    }

    @Test
    void everyPageHoldsItsWindowAtTrueSizeToATenthOfAMillimetreAMetre() throws IOException {
        LaidDrawing laid = LaidDrawing.of(metre(), PrintPaper.of("a4"), 12);
        try (PDDocument document = Loader.loadPDF(written("a4.pdf", laid).toFile())) {
            assertEquals(laid.pages(), document.getNumberOfPages());
            assertEquals(laid.tiling().tiles().size() + 1, document.getNumberOfPages());
            for (Tiling.Tile tile : laid.tiling().tiles()) {
                PDPage page = document.getPage(1 + laid.tiling().tiles().indexOf(tile));
                List<double[]> points = points(page);
                // the drawing's first four points are the square's corners, here in mm of the paper
                double left = points.get(0)[0] - 10 + tile.xMm();
                double top = points.get(0)[1] - 10 + tile.yMm();
                assertEquals(6 + Tiling.SIDE_MM, left, 0.001, tile.name() + " lies elsewhere");
                assertEquals(6, top, 0.001, tile.name() + " lies elsewhere");
                assertEquals(1000, points.get(1)[0] - points.get(0)[0], 0.02);
                assertEquals(1000, points.get(2)[1] - points.get(1)[1], 0.02);
                assertEquals(1000 * Math.sqrt(2), Math.hypot(points.get(5)[0] - points.get(4)[0], points.get(5)[1] - points.get(4)[1]), 0.03);
            }
        }
    }

    @Test
    void bothCheckRulesMeasureAHundredMillimetres() throws IOException {
        try (PDDocument document = Loader.loadPDF(written("a3.pdf", LaidDrawing.of(metre(), PrintPaper.of("a3"), 12)).toFile())) {
            List<double[]> points = points(document.getPage(1));
            int level = 0;
            int upright = 0;
            for (int i = 0; i + 1 < points.size(); i++) {
                if (points.get(i + 1)[2] == 0) {
                    continue;
                }
                double dx = Math.abs(points.get(i + 1)[0] - points.get(i)[0]);
                double dy = Math.abs(points.get(i + 1)[1] - points.get(i)[1]);
                level += Math.abs(dx - 100) < 0.002 && dy < 0.001 ? 1 : 0;
                upright += Math.abs(dy - 100) < 0.002 && dx < 0.001 ? 1 : 0;
            }
            assertEquals(1, level);
            assertEquals(1, upright);
        }
    }

    @Test
    void aPageLongerThanTheFormatAllowsHasALargerUnit() throws IOException {
        TrueSizeDrawing tall = new TrueSizeDrawing("Tall", 300, 8_000, List.of(Ink.Line.full(List.of(new double[] {5, 5, 5, 7_995}), false, 0.5, 0)));
        try (PDDocument document = Loader.loadPDF(written("roll.pdf", LaidDrawing.of(tall, PrintPaper.of("roll:610"), 12)).toFile())) {
            PDPage page = document.getPage(0);
            assertEquals(1, document.getNumberOfPages());
            assertTrue(page.getUserUnit() > 1);
            assertTrue(page.getMediaBox().getHeight() <= 14_400);
            List<double[]> points = points(page);
            assertEquals(7_990, points.get(1)[1] - points.get(0)[1], 0.8, "0.1 mm a metre");
        }
    }

    @Test
    void wordsAreTextAndTheFontIsEmbedded() throws IOException {
        TrueSizeDrawing odd = new TrueSizeDrawing("Ebb tide \u6f6e", 100, 80, List.of(new Ink.Words("W01/12", 50, 40, 5, 0)));
        try (PDDocument document = Loader.loadPDF(written("words.pdf", LaidDrawing.of(odd, PrintPaper.of("letter"), 12)).toFile())) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("W01/12"), text);
            assertTrue(text.contains("protect the eyes"), text);
            assertTrue(text.contains("Ebb tide ?"), text);
            document.getPage(0).getResources().getFontNames().forEach(name -> {
                try {
                    assertTrue(document.getPage(0).getResources().getFont(name).isEmbedded());
                } catch (IOException e) {
                    throw new AssertionError(e);
                }
            });
        }
    }

    @Test
    void theSameDrawingGivesTheSameBytes() throws IOException {
        LaidDrawing laid = LaidDrawing.of(metre(), PrintPaper.of("a2"), 12);
        assertArrayEquals(Files.readAllBytes(written("one.pdf", laid)), Files.readAllBytes(written("two.pdf", laid)));
    }

    @Test
    void stoppedItLeavesNothing() throws IOException {
        Path file = temp.resolve("stopped.pdf");
        Work stop = new Work() {
            @Override
            public void advance(long units) {
                throw new java.util.concurrent.CancellationException();
            }

            @Override
            public void say(String words) {
                // nobody listens
            }

            @Override
            public void checkpoint() {
                throw new java.util.concurrent.CancellationException();
            }
        };
        org.junit.jupiter.api.Assertions.assertThrows(java.util.concurrent.CancellationException.class,
                () -> TrueSizePdf.write("Test", List.of(LaidDrawing.of(metre(), PrintPaper.of("a3"), 12)), file, "test", stop));
        assertFalse(Files.exists(file));
        try (var left = Files.list(temp)) {
            assertEquals(0, left.count());
        }
    }

    /** The pages, drawn by poppler's pdftoppm, laid together by their windows, are the drawing itself: every seam meets. */
    @Test
    void laidTogetherThePagesAreTheDrawing() throws Exception {
        Assumptions.assumeTrue(Files.isExecutable(Path.of("/usr/bin/pdftoppm")), "pdftoppm is not installed");
        List<Ink> ink = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            ink.add(Ink.Line.full(List.of(new double[] {i * 17.3, 0, 600 - i * 11.1, 500}), false, 0.6, 0));
        }
        TrueSizeDrawing drawing = new TrueSizeDrawing("Seams", 600, 500, ink);
        LaidDrawing laid = LaidDrawing.of(drawing, PrintPaper.of("a4"), 12);
        Path file = written("seams.pdf", laid);
        int dpi = 254; // 10 px a mm
        run("/usr/bin/pdftoppm", "-r", String.valueOf(dpi), "-gray", "-png", "-f", "2", file.toString(), temp.resolve("page").toString());
        List<Path> pages;
        try (var all = Files.list(temp)) {
            pages = all.filter(p -> p.toString().endsWith(".png")).sorted().toList();
        }
        assertEquals(laid.tiling().tiles().size(), pages.size());
        BufferedImage whole = new BufferedImage(6000, 5000, BufferedImage.TYPE_BYTE_GRAY);
        for (int i = 0; i < pages.size(); i++) {
            Tiling.Tile tile = laid.tiling().tiles().get(i);
            BufferedImage page = ImageIO.read(pages.get(i).toFile());
            double half = 6;
            double fromX = tile.column() == 0 ? 0 : half;
            double fromY = tile.row() == 0 ? 0 : half;
            for (int y = (int) Math.round((tile.yMm() + fromY) * 10); y < Math.round((tile.yMm() + tile.heightMm()) * 10); y++) {
                for (int x = (int) Math.round((tile.xMm() + fromX) * 10); x < Math.round((tile.xMm() + tile.widthMm()) * 10); x++) {
                    int px = (int) Math.floor((6 + Tiling.SIDE_MM - tile.xMm()) * 10 + x + 0.5);
                    int py = (int) Math.floor((6 - tile.yMm()) * 10 + y + 0.5);
                    whole.getRaster().setSample(x, y, 0, page.getRaster().getSample(Math.min(px, page.getWidth() - 1), Math.min(py, page.getHeight() - 1), 0));
                }
            }
        }
        // along every line the ink must be there, seam or no seam
        int missed = 0;
        int looked = 0;
        for (Ink each : ink) {
            double[] line = ((Ink.Line) each).paths().get(0);
            for (double t = 0.01; t < 0.99; t += 0.001) {
                int x = (int) Math.round((line[0] + t * (line[2] - line[0])) * 10);
                int y = (int) Math.round((line[1] + t * (line[3] - line[1])) * 10);
                if (x > 3 && y > 3 && x < 5997 && y < 4997) {
                    looked++;
                    missed += whole.getRaster().getSample(x, y, 0) > 128 ? 1 : 0;
                }
            }
        }
        assertTrue(looked > 30_000);
        assertEquals(0, missed, "of " + looked + " places on the lines");
    }

    private static void run(String... words) throws Exception {
        Process process = new ProcessBuilder(words).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes());
        assertEquals(0, process.waitFor(), said);
    }
}
