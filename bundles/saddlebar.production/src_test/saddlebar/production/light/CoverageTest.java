package saddlebar.production.light;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.Random;

import org.junit.jupiter.api.Test;

class CoverageTest {
    private static final RectMm AREA = new RectMm(10, 20, 8, 4);

    private static int[] row(Coverage coverage, double mmPerPx, double yMm, int count) {
        int[] row = new int[count];
        coverage.sampleRow(coverage.levelFor(mmPerPx), AREA.leftMm() + mmPerPx / 2, mmPerPx, yMm, row, count);
        return row;
    }

    @Test
    void pixelForPixelItIsThePictureItself() {
        byte[] picture = new byte[32];
        new Random(1).nextBytes(picture);
        Coverage coverage = new Coverage(AREA, 8, 4, picture);
        for (int y = 0; y < 4; y++) {
            int[] expected = new int[8];
            for (int x = 0; x < 8; x++) {
                expected[x] = picture[8 * y + x] & 0xff;
            }
            assertArrayEquals(expected, row(coverage, 1, 20.5 + y, 8));
        }
    }

    @Test
    void fromFarAHalfToneIsItsMeanNotAChanceChoice() {
        byte[] dots = new byte[64 * 32];
        for (int i = 0; i < dots.length; i++) {
            dots[i] = (byte) ((i + i / 64) % 2 == 0 ? 255 : 0);
        }
        Coverage coverage = new Coverage(AREA, 64, 32, dots);
        for (int value : row(coverage, 1, 22.5, 8)) {
            assertEquals(128, value, 2);
        }
    }

    @Test
    void evenToneStaysEvenAtEveryScaleToTheEdge() {
        byte[] even = new byte[50 * 30];
        Arrays.fill(even, (byte) 90);
        Coverage coverage = new Coverage(AREA, 50, 30, even);
        for (double mmPerPx : new double[] {0.01, 0.16, 0.3, 1, 2}) {
            for (int value : row(coverage, mmPerPx, 20 + mmPerPx / 2, (int) (8 / mmPerPx))) {
                assertEquals(90, value);
            }
        }
    }

    @Test
    void outsideNothingLies() {
        Coverage coverage = new Coverage(AREA, 2, 2, new byte[] {-1, -1, -1, -1});
        int[] row = new int[4];
        coverage.sampleRow(0, 0, 1, 22, row, 4);
        assertArrayEquals(new int[4], row);
        coverage.sampleRow(0, 12, 1, 40, row, 4);
        assertArrayEquals(new int[4], row);
    }

    @Test
    void thePictureMustFitItsSize() {
        assertThrows(IllegalArgumentException.class, () -> new Coverage(AREA, 3, 3, new byte[8]));
    }
}
