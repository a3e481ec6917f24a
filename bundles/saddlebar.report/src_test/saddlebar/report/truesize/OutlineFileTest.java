package saddlebar.report.truesize;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import javax.imageio.ImageIO;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.art.OutlineMm;
import saddlebar.model.problem.Refusal;

class OutlineFileTest {
    @TempDir
    private Path temp;

    private static PatternPiece piece(String name, double[]... rings) {
        return new PatternPiece(name, OutlineMm.of(List.of(rings)), 10, 10, 5, "amber");
    }

    /** A rectangle of 800 x 1000 mm, and a ring: a square of 60 with a square hole of 20 in it. */
    private static List<PatternPiece> pieces() {
        return List.of(piece("1", new double[] {0, 0, 800, 0, 800, 1000, 0, 1000}),
                piece("2", new double[] {900, 100, 960, 100, 960, 160, 900, 160}, new double[] {920, 120, 920, 140, 940, 140, 940, 120}));
    }

    /** Rings of each path in the SVG, as any reader of its grammar would take them. */
    private static List<List<double[]>> paths(String svg) {
        List<List<double[]>> paths = new ArrayList<>();
        Matcher path = Pattern.compile(" d=\"([^\"]*)\"").matcher(svg);
        while (path.find()) {
            List<double[]> rings = new ArrayList<>();
            for (String ring : path.group(1).split("Z")) {
                rings.add(Pattern.compile("[ML ]+").splitAsStream(ring).filter(s -> !s.isEmpty()).mapToDouble(Double::parseDouble).toArray());
            }
            paths.add(rings);
        }
        return paths;
    }

    @Test
    void onePathAPieceNamedWithoutFillInTrueMillimetres() {
        OutlineFile file = OutlineFile.of("Test", pieces(), 0);
        String svg = file.svg();
        assertEquals(2, paths(svg).size());
        assertTrue(svg.contains("width=\"970.0000mm\"") && svg.contains("viewBox=\"0 0 970.0000 1010.0000\""), svg);
        assertTrue(svg.contains("id=\"piece-1\"") && svg.contains("<title>2</title>") && svg.contains("fill=\"none\""), svg);
        assertEquals(1, Pattern.compile("fill=").matcher(svg).results().count());
        double[] first = paths(svg).get(0).get(0);
        assertEquals(800, first[2] - first[0], 0.001);
        assertEquals(1000, first[5] - first[3], 0.001);
        assertEquals(2, paths(svg).get(1).size(), "the hole belongs to its piece's path");
    }

    @Test
    void aKerfIsLedOutsideByHalfOfItAlsoInHoles() {
        List<List<double[]>> paths = paths(OutlineFile.of("Test", pieces(), 1.2).svg());
        double[] outer = paths.get(1).get(0);
        double[] hole = paths.get(1).get(1);
        assertEquals(61.2, span(outer, 0), 0.0005);
        assertEquals(18.8, span(hole, 0), 0.0005);
        assertEquals(61.2, span(outer, 1), 0.0005);
    }

    private static double span(double[] xy, int axis) {
        double least = Double.MAX_VALUE;
        double most = -Double.MAX_VALUE;
        for (int i = axis; i < xy.length; i += 2) {
            least = Math.min(least, xy[i]);
            most = Math.max(most, xy[i]);
        }
        return most - least;
    }

    @Test
    void thePdfMeasuresToATenthOfAMillimetreAMetreAndNamesEachPiece() throws IOException {
        Path file = temp.resolve("outlines.pdf");
        OutlineFile.of("Test", pieces(), 0).writePdf(file, "test");
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            PDPage page = document.getPage(0);
            double mm = page.getUserUnit() * 25.4 / 72;
            assertEquals(970, page.getMediaBox().getWidth() * mm, 0.05);
            List<double[]> points = new ArrayList<>();
            List<Object> operands = new ArrayList<>();
            List<String> operators = new ArrayList<>();
            PDFStreamParser parser = new PDFStreamParser(page);
            for (Object token = parser.parseNextToken(); token != null; token = parser.parseNextToken()) {
                if (token instanceof Operator operator) {
                    operators.add(operator.getName());
                    if (operator.getName().equals("m") || operator.getName().equals("l")) {
                        points.add(new double[] {((COSNumber) operands.get(0)).floatValue() * mm, ((COSNumber) operands.get(1)).floatValue() * mm});
                    }
                    operands.clear();
                } else {
                    operands.add(token);
                }
            }
            assertEquals(800, points.get(1)[0] - points.get(0)[0], 0.05);
            assertEquals(1000, points.get(1)[1] - points.get(2)[1], 0.05);
            assertFalse(operators.contains("f") || operators.contains("f*") || operators.contains("B"), "no fills");
            assertEquals(2, operators.stream().filter("S"::equals).count(), "one path a piece");
            assertArrayEquals(new String[] {"1", "2"}, document.getDocumentCatalog().getOCProperties().getGroupNames());
        }
    }

    /** librsvg draws the SVG and poppler the PDF: two independent readers must see the same lines, px for px within a line's width. */
    @Test
    void independentReadersDrawBothAlike() throws Exception {
        Assumptions.assumeTrue(Files.isExecutable(Path.of("/usr/bin/rsvg-convert")) && Files.isExecutable(Path.of("/usr/bin/pdftoppm")),
                "rsvg-convert or pdftoppm is not installed");
        double[] round = new double[240];
        for (int i = 0; i < 120; i++) {
            round[2 * i] = 60 + 50 * Math.cos(i * Math.PI / 60);
            round[2 * i + 1] = 60 + 40 * Math.sin(i * Math.PI / 60);
        }
        OutlineFile file = OutlineFile.of("Test", List.of(piece("1", round), piece("2", new double[] {120, 10, 180, 30, 150, 110})), 0);
        file.writeSvg(temp.resolve("o.svg"));
        file.writePdf(temp.resolve("o.pdf"), "test");
        run("rsvg-convert", "-d", "254", "-p", "254", "--background-color=white", "-o", temp.resolve("svg.png").toString(), temp.resolve("o.svg").toString());
        run("pdftoppm", "-r", "254", "-png", "-singlefile", temp.resolve("o.pdf").toString(), temp.resolve("pdf").toString());
        BufferedImage svg = ImageIO.read(temp.resolve("svg.png").toFile());
        BufferedImage pdf = ImageIO.read(temp.resolve("pdf.png").toFile());
        assertEquals(svg.getWidth(), pdf.getWidth(), 1);
        int dark = 0;
        int missed = 0;
        for (int y = 2; y < Math.min(svg.getHeight(), pdf.getHeight()) - 2; y++) {
            for (int x = 2; x < Math.min(svg.getWidth(), pdf.getWidth()) - 2; x++) {
                if ((svg.getRGB(x, y) & 255) < 128) {
                    dark++;
                    missed += darkNear(pdf, x, y) ? 0 : 1;
                }
            }
        }
        assertTrue(dark > 3000, dark + " px of line");
        assertEquals(0, missed, "of " + dark + " px of line no one may be missing within 0.2 mm");
    }

    private static boolean darkNear(BufferedImage image, int x, int y) {
        for (int dy = -2; dy <= 2; dy++) {
            for (int dx = -2; dx <= 2; dx++) {
                if ((image.getRGB(x + dx, y + dy) & 255) < 160) {
                    return true;
                }
            }
        }
        return false;
    }

    private static void run(String... words) throws Exception {
        Process process = new ProcessBuilder(words).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes());
        assertEquals(0, process.waitFor(), said);
    }

    @Test
    void sameNamesAreToldApartAndNothingIsRefused() {
        assertTrue(OutlineFile.of("Test", List.of(pieces().get(0), pieces().get(0)), 0).svg().contains("<title>1 (2)</title>"));
        assertThrows(Refusal.class, () -> OutlineFile.of("Test", List.of(), 0));
        assertThrows(IllegalArgumentException.class, () -> OutlineFile.of("Test", pieces(), 9));
    }
}
