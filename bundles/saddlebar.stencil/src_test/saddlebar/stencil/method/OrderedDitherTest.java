package saddlebar.stencil.method;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import saddlebar.stencil.BitPicture;
import saddlebar.stencil.Fields;
import saddlebar.stencil.tone.ToneTable;

/**
 * The threshold engine on the matrices of Bayer, An optimum method for two-level rendition of continuous-tone pictures, IEEE ICC 1973:
 * M(2n) = [[4M, 4M+2], [4M+3, 4M+1]], threshold (M + 1/2)/n^2.
 */
class OrderedDitherTest {
    private static int[] bayer(int n) {
        if (n == 1) {
            return new int[] {0};
        }
        int half = n / 2;
        int[] quarter = bayer(half);
        int[] matrix = new int[n * n];
        int[] added = {0, 2, 3, 1};
        for (int i = 0; i < n * n; i++) {
            int x = i % n;
            int y = i / n;
            matrix[i] = 4 * quarter[y % half * half + x % half] + added[y / half * 2 + x / half];
        }
        return matrix;
    }

    @Test
    void publishedMatrices() {
        assertArrayEquals(new int[] {0, 8, 2, 10, 12, 4, 14, 6, 3, 11, 1, 9, 15, 7, 13, 5}, bayer(4));
        int[] eight = bayer(8);
        assertArrayEquals(new int[] {0, 32, 8, 40, 2, 34, 10, 42}, Arrays.copyOf(eight, 8));
        assertArrayEquals(new int[] {63, 31, 55, 23, 61, 29, 53, 21}, Arrays.copyOfRange(eight, 56, 64));
    }

    /** Every px of a random picture, whatever its width: painted where coverage is above the threshold. */
    @Property(tries = 50)
    void everyPx(@ForAll @IntRange(min = 1, max = 300) int width, @ForAll @IntRange(min = 0, max = 100_000) int seed) {
        int[] matrix = bayer(8);
        byte[] codes = Fields.noise(width * 20, seed);
        BitPicture bits = new BitPicture(width, 20);
        new ThresholdScreener(new RankedTile(8, 8, 0, matrix).thresholds(ToneTable.linear()), width).screen(codes, 20, bits.words());
        for (int i = 0; i < codes.length; i++) {
            int x = i % width;
            int y = i / width;
            double coverage = (255 - (codes[i] & 255)) / 255.0;
            assertEquals(coverage > (matrix[y % 8 * 8 + x % 8] + 0.5) / 64, bits.get(x, y));
        }
    }

    /** Bricks that are shifted from course to course: period 5, two rows, each course starting 3 thresholds on. */
    @Property(tries = 20)
    void shiftedBricks(@ForAll @IntRange(min = 1, max = 200) int width) {
        byte[] thresholds = {10, 20, 30, 40, 50, 60, 70, 80, 90, 100};
        byte[] codes = new byte[width * 30];
        Arrays.fill(codes, (byte) 45);
        BitPicture bits = new BitPicture(width, 30);
        new ThresholdScreener(new ThresholdTile(5, 2, 3, thresholds), width).screen(codes, 30, bits.words());
        for (int y = 0; y < 30; y++) {
            for (int x = 0; x < width; x++) {
                assertEquals(45 < thresholds[y % 2 * 5 + (x + y / 2 * 3) % 5], bits.get(x, y));
            }
        }
    }
}
