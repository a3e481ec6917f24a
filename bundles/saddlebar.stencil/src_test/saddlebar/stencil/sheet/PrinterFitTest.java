package saddlebar.stencil.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;

import org.junit.jupiter.api.Test;

import saddlebar.model.problem.Refusal;
import saddlebar.stencil.BitPicture;

class PrinterFitTest {
    /** A printer of known scale and skew: the four distances by plain geometry, and back. */
    @Test
    void measuredDistancesGiveScaleAndSkew() {
        PrinterFit printer = new PrinterFit(1.004, 0.997, 0.003);
        double[][] marks = {printer.printed(0, 0), printer.printed(200, 0), printer.printed(200, 250), printer.printed(0, 250)};
        PrinterFit found = PrinterFit.measured(200, 250, distance(marks[0], marks[1]), distance(marks[0], marks[3]), distance(marks[0], marks[2]),
                distance(marks[3], marks[1]));
        assertEquals(1.004, found.acrossScale(), 1e-9);
        assertEquals(0.997, found.downScale(), 1e-9);
        assertEquals(0.003, found.skew(), 1e-9);
    }

    private static double distance(double[] a, double[] b) {
        return Math.hypot(a[0] - b[0], a[1] - b[1]);
    }

    /** A compensated file, printed, puts every dot where the plain one wanted it, to a px. */
    @Test
    void whatComesOutIsTrue() throws IOException {
        PrinterFit printer = new PrinterFit(1.01, 0.99, 0.005);
        BitPicture plain = new BitPicture(1000, 800);
        int[][] dots = {{100, 100}, {800, 50}, {430, 700}, {900, 640}};
        for (int[] dot : dots) {
            for (int i = 0; i < 25; i++) {
                plain.set(dot[0] + i % 5 - 2, dot[1] + i / 5 - 2, true);
            }
        }
        BitPicture file = BitPicture.of(new CompensatedBands(plain.bands(), printer, false));
        for (int[] dot : dots) {
            double sumX = 0;
            double sumY = 0;
            int count = 0;
            for (int y = Math.max(0, dot[1] - 40); y < Math.min(800, dot[1] + 40); y++) {
                for (int x = Math.max(0, dot[0] - 40); x < Math.min(1000, dot[0] + 40); x++) {
                    if (file.get(x, y)) {
                        double[] printed = printer.printed(x + 0.5, y + 0.5);
                        sumX += printed[0];
                        sumY += printed[1];
                        count++;
                    }
                }
            }
            assertTrue(count >= 16 && count <= 36, count + " px");
            assertEquals(dot[0] + 0.5, sumX / count, 1);
            assertEquals(dot[1] + 0.5, sumY / count, 1);
        }
    }

    @Test
    void aTruePrinterChangesNothing() throws IOException {
        BitPicture plain = new BitPicture(130, 40);
        for (int i = 0; i < 130 * 40; i += 7) {
            plain.set(i % 130, i / 130, true);
        }
        assertEquals(plain, BitPicture.of(new CompensatedBands(plain.bands(), PrinterFit.TRUE, true)));
    }

    @Test
    void fittedToThePage() {
        assertThrows(Refusal.class, () -> PrinterFit.measured(200, 250, 180, 225, 288, 288));
    }
}
