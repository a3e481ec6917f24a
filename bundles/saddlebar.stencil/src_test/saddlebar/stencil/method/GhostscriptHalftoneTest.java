package saddlebar.stencil.method;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.stencil.Fields;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.SpotFunction;

/**
 * Dots against those of Ghostscript, which brings its own spot functions and cells: a PDF page of flat gray with a Type 1 halftone (ISO 32000-1,
 * 10.5.5.2), rendered to one bit. Its black px at gray 1 - a are our paint at coverage a. It samples at corners of px, we at their middle, so dots
 * are compared by the order in which px turn. Skipped where Ghostscript is not installed.
 */
class GhostscriptHalftoneTest {
    private static final double[] TONES = {0.1, 0.3, 0.5, 0.7, 0.9};
    private static final int CELL = 30;

    /** At 40 lines an inch, 0 degrees and 1200 dpi a cell is 30 x 30 px in both, with the same number of px turned. */
    @Test
    void allDotsTurnInTheSameOrder(@TempDir Path folder) throws Exception {
        List<Page> pages = new ArrayList<>();
        for (SpotFunction spot : SpotFunction.values()) {
            if (spot == SpotFunction.DOUBLE_DOT) {
                continue; // version 10.00 does not know it and takes its own halftone; it does know the inverted one
            }
            for (double tone : TONES) {
                pages.add(new Page(spot, tone, 40, 0));
            }
        }
        List<boolean[][]> rendered = render(folder, pages, 3 * CELL);
        ScreeningRecipe recipe = ScreeningRecipe.withDefaults().withAngleDeg(0);
        for (int i = 0; i < pages.size(); i++) {
            Page page = pages.get(i);
            boolean[][] black = rendered.get(i);
            String what = page.spot.standardName() + " at " + page.tone;
            int turned = 0;
            for (int y = 0; y < CELL; y++) {
                for (int x = 0; x < CELL; x++) {
                    turned += black[y][x] ? 1 : 0;
                    assertEquals(black[y][x], black[y + CELL][x + CELL], what + ": cells repeat");
                }
            }
            long ours = Fields.flat(new AmMethod(), recipe.withDot(page.spot.standardName()), page.tone, CELL, CELL).count();
            assertEquals(ours, turned, what);
            assertTrue(inOrder(page.spot, black), what + ": a px of lower value turned before one of higher");
        }
    }

    /** Whether no white px has a higher value than a black one. Its cells have their middle at the page's corner; px are taken at their corner. */
    private static boolean inOrder(SpotFunction spot, boolean[][] black) {
        double leastBlack = Double.POSITIVE_INFINITY;
        double mostWhite = Double.NEGATIVE_INFINITY;
        for (int y = 0; y < CELL; y++) {
            for (int x = 0; x < CELL; x++) {
                double u = wrapped(x + 1);
                double w = -wrapped(CELL - 1 - y); // its rows go up
                double value = spot.at(u, w);
                if (Math.abs(spot.at(u * (1 - 1e-9), w * (1 - 1e-9)) - spot.at(u * (1 + 1e-9), w * (1 + 1e-9))) > 1e-3) {
                    continue; // the function jumps there, and rounding decides
                }
                if (black[y][x]) {
                    leastBlack = Math.min(leastBlack, value);
                } else {
                    mostWhite = Math.max(mostWhite, value);
                }
            }
        }
        return leastBlack >= mostWhite - 1e-4; // values are kept in 16 bits there
    }

    private static double wrapped(int px) {
        return (px < CELL / 2 ? px : px - CELL) * 2.0 / CELL;
    }

    /** At 45 degrees and 1200/sqrt(882) lines an inch both lay cells of (21, 21) px without rounding. */
    @Test
    void sameCellsAt45Degrees(@TempDir Path folder) throws Exception {
        ScreeningRecipe recipe = ScreeningRecipe.withDefaults().withAngleDeg(45).withLpi(1200 / Math.sqrt(882));
        assertEquals(new CellGrid(21, 21, 1), CellGrid.of(recipe));
        int side = 126;
        List<Page> pages = List.of(new Page(SpotFunction.ROUND, 0.25, recipe.lpi(), 45), new Page(SpotFunction.ROUND, 0.6, recipe.lpi(), 45));
        List<boolean[][]> rendered = render(folder, pages, side);
        for (int i = 0; i < pages.size(); i++) {
            boolean[][] black = rendered.get(i);
            int turned = 0;
            for (int y = 0; y < side; y++) {
                for (int x = 0; x < side; x++) {
                    turned += black[y][x] ? 1 : 0;
                    assertEquals(black[y][x], black[(y + 21) % side][(x + 21) % side]);
                    assertEquals(black[y][x], black[(y + 21) % side][(x + side - 21) % side]);
                }
            }
            assertEquals(Fields.flat(new AmMethod(), recipe, pages.get(i).tone, side, side).count(), turned);
        }
    }

    private record Page(SpotFunction spot, double tone, double lpi, double angleDeg) {
    }

    /** Black px of each page, {@code sidePx} square at 1200 dpi. */
    private static List<boolean[][]> render(Path folder, List<Page> pages, int sidePx) throws IOException, InterruptedException {
        Path pdf = folder.resolve("halftones.pdf");
        Files.write(pdf, pdf(pages, sidePx));
        List<String> command = List.of("gs", "-q", "-dNOPAUSE", "-dBATCH", "-dSAFER", "-sDEVICE=pbmraw", "-r1200", "-o",
                folder.resolve("page%03d.pbm").toString(), pdf.toString());
        Process process = null;
        try {
            process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(folder.resolve("gs.log").toFile()).start();
        } catch (IOException e) {
            assumeTrue(false, "Ghostscript is not installed");
        }
        assertTrue(process.waitFor(60, TimeUnit.SECONDS), "Ghostscript did not end");
        assertEquals(0, process.exitValue(), Files.readString(folder.resolve("gs.log")));
        List<boolean[][]> rendered = new ArrayList<>();
        for (int page = 1; page <= pages.size(); page++) {
            rendered.add(black(Files.readAllBytes(folder.resolve(String.format(Locale.ROOT, "page%03d.pbm", page))), sidePx));
        }
        return rendered;
    }

    private static boolean[][] black(byte[] pbm, int sidePx) {
        int bytesPerRow = (sidePx + 7) / 8;
        int from = pbm.length - bytesPerRow * sidePx; // the header goes before
        assertTrue(new String(pbm, 0, from, StandardCharsets.US_ASCII).trim().endsWith(sidePx + " " + sidePx), "size of the page");
        boolean[][] black = new boolean[sidePx][sidePx];
        for (int y = 0; y < sidePx; y++) {
            for (int x = 0; x < sidePx; x++) {
                black[y][x] = (pbm[from + y * bytesPerRow + x / 8] >> (7 - x % 8) & 1) == 1;
            }
        }
        return black;
    }

    private static byte[] pdf(List<Page> pages, int sidePx) {
        List<String> objects = new ArrayList<>(List.of("<< /Type /Catalog /Pages 2 0 R >>", ""));
        StringBuilder kids = new StringBuilder();
        String side = String.format(Locale.ROOT, "%.4f", sidePx * 72 / 1200.0);
        for (Page page : pages) {
            String paint = String.format(Locale.ROOT, "/G gs %.4f g 0 0 1000 1000 re f", 1 - page.tone);
            objects.add("<< /Length " + paint.length() + " >>\nstream\n" + paint + "\nendstream");
            String halftone = String.format(Locale.ROOT, "<< /Type /Halftone /HalftoneType 1 /Frequency %.6f /Angle %.4f /SpotFunction /%s >>",
                    page.lpi, page.angleDeg, page.spot.standardName());
            objects.add("<< /Type /Page /Parent 2 0 R /MediaBox [0 0 " + side + " " + side + "] /Contents " + objects.size()
                    + " 0 R /Resources << /ExtGState << /G << /HT " + halftone + " >> >> >> >>");
            kids.append(objects.size()).append(" 0 R ");
        }
        objects.set(1, "<< /Type /Pages /Count " + pages.size() + " /Kids [" + kids + "] >>");
        StringBuilder text = new StringBuilder("%PDF-1.4\n");
        StringBuilder xref = new StringBuilder("xref\n0 " + (objects.size() + 1) + "\n0000000000 65535 f \n");
        for (int i = 0; i < objects.size(); i++) {
            xref.append(String.format(Locale.ROOT, "%010d 00000 n \n", text.length()));
            text.append(i + 1).append(" 0 obj\n").append(objects.get(i)).append("\nendobj\n");
        }
        int start = text.length();
        text.append(xref).append("trailer << /Size ").append(objects.size() + 1).append(" /Root 1 0 R >>\nstartxref\n").append(start)
                .append("\n%%EOF\n");
        return text.toString().getBytes(StandardCharsets.US_ASCII);
    }
}
