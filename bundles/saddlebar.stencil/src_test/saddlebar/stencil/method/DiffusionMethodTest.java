package saddlebar.stencil.method;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import saddlebar.model.art.GrayBands;
import saddlebar.stencil.BitBands;
import saddlebar.stencil.BitPicture;
import saddlebar.stencil.DiffusionFilter;
import saddlebar.stencil.Fields;
import saddlebar.stencil.ScreenedBands;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.ScreeningRecipe.Edge;
import saddlebar.stencil.ScreeningRecipe.Scan;
import saddlebar.stencil.tone.ToneTable;

/**
 * The fields of bits were worked out in plain arithmetic from the filter's published weights (Floyd and Steinberg 1976), error carried in
 * double, weights outside the field dropped.
 */
class DiffusionMethodTest {
    /** One device px a dot. */
    private static final ScreeningRecipe FINE = ScreeningRecipe.withDefaults().withMethod("diffusion").withDotMm(0.021);
    private final DiffusionMethod diffusion = new DiffusionMethod();

    @Test
    void quarterSerpentine() {
        assertEquals("00000000 10101010 00000001 01010100", Fields.text(Fields.flat(diffusion, FINE, 0.25, 8, 4)));
    }

    @Test
    void halfIsTheSameInBothScans() {
        String expected = "10101010 01010101 10101010 01010101";
        assertEquals(expected, Fields.text(Fields.flat(diffusion, FINE, 0.5, 8, 4)));
        assertEquals(expected, Fields.text(Fields.flat(diffusion, FINE.withScan(Scan.RASTER), 0.5, 8, 4)));
    }

    @Test
    void ramp() {
        ToneTable tone = Fields.tone(IntStream.range(0, 16).mapToDouble(x -> (15.5 - x) / 16).toArray());
        assertEquals("0000010101111111 0001000101010111 0000010101101111 0001001010111111",
                Fields.text(Fields.screened(diffusion, FINE.withScan(Scan.RASTER), tone, 16, 4, 4, (x, y) -> 15 - x)));
        assertEquals("0000010101111111 0001000101010111 0000101010111111 0010000101101011",
                Fields.text(Fields.screened(diffusion, FINE, tone, 16, 4, 4, (x, y) -> 15 - x)));
    }

    @ParameterizedTest
    @CsvSource({"0.0625, 0.06094", "0.25, 0.24953", "0.5, 0.50000", "0.75, 0.75047"})
    void flatFieldsKeepTheirTone(double coverage, double worked) {
        double mean = Fields.flat(diffusion, FINE, coverage, 256, 256).count() / 65536.0;
        assertEquals(coverage, mean, 0.002);
        assertEquals(worked, mean, 5e-6);
    }

    @ParameterizedTest
    @ValueSource(strings = {"jarvis-judice-ninke", "stucki", "ostromoukhov"})
    void otherFiltersKeepTheToneToo(String filter) {
        for (double coverage : new double[] {0.1, 0.25, 1.0 / 3, 0.5, 0.8}) {
            for (Edge edge : Edge.values()) {
                double mean = Fields.flat(diffusion, FINE.withFilter(filter).withEdge(edge), coverage, 256, 256).count() / 65536.0;
                assertEquals(coverage, mean, 0.005, filter + " " + edge);
            }
        }
    }

    /** With weights shared at the edge nothing is lost but below the last row: half of the 0.0016 that dropping costs. */
    @Test
    void sharedEdgesKeepTheToneCloser() {
        double mean = Fields.flat(diffusion, FINE.withEdge(Edge.SHARED), 1.0 / 16, 256, 256).count() / 65536.0;
        assertEquals(1.0 / 16, mean, 0.0008);
    }

    /** Rows of the published table: Ostromoukhov 2001, appendix. */
    @Test
    void publishedTable() {
        List<Spread> table = TonalSpreads.published();
        assertEquals(128, table.size());
        assertArrayEquals(new int[] {13, 0, 5}, table.get(0).weight());
        assertArrayEquals(new int[] {3, 2, 1}, table.get(22).weight());
        assertArrayEquals(new int[] {36, 26, 15}, table.get(44).weight());
        assertArrayEquals(new int[] {1, 1, 0}, table.get(64).weight());
        assertArrayEquals(new int[] {4, 1, 1}, table.get(127).weight());
        assertTrue(table.stream().allMatch(row -> Arrays.stream(row.weight()).allMatch(weight -> weight >= 0)));
        Spread[] levels = TonalSpreads.byLevel();
        assertEquals(levels[0], levels[255]);
        assertEquals(levels[127], levels[128]);
    }

    @Test
    void weightsOfThePapers() {
        Spread jarvis = Spread.of(DiffusionFilter.JARVIS_JUDICE_NINKE);
        assertEquals(48, jarvis.divisor());
        assertArrayEquals(new int[] {7, 5, 3, 5, 7, 5, 3, 1, 3, 5, 3, 1}, jarvis.weight());
        assertArrayEquals(new int[] {1, 2, -2, -1, 0, 1, 2, -2, -1, 0, 1, 2}, jarvis.dx());
        assertArrayEquals(new int[] {0, 0, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2}, jarvis.dy());
        Spread stucki = Spread.of(DiffusionFilter.STUCKI);
        assertEquals(42, stucki.divisor());
        assertArrayEquals(new int[] {8, 4, 2, 4, 8, 4, 2, 1, 2, 4, 2, 1}, stucki.weight());
    }

    /**
     * The fast way in ints against a slow way in double, written apart from it, on random pictures; up to the first px that lies so near to one
     * half that rounding decides, after which the pictures may part.
     */
    @Property(tries = 100)
    void intsGiveTheBitsOfDoubles(@ForAll @IntRange(min = 1, max = 150) int width, @ForAll @IntRange(min = 1, max = 40) int height,
            @ForAll @IntRange(min = 0, max = 100_000) int seed, @ForAll Scan scan) {
        byte[] codes = Fields.noise(width * height, seed);
        BitPicture bits = Fields.screened(diffusion, FINE.withScan(scan), ToneTable.linear(),
                width, height, height, (x, y) -> codes[y * width + x]);
        double[][] value = new double[height + 1][width + 2];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                value[y][x + 1] += 1 - (codes[y * width + x] & 255) / 255.0;
            }
        }
        for (int y = 0; y < height; y++) {
            int step = scan == Scan.SERPENTINE && y % 2 == 1 ? -1 : 1;
            for (int x = step == 1 ? 1 : width; x >= 1 && x <= width; x += step) {
                if (Math.abs(value[y][x] - 0.5) < 1e-6) {
                    return;
                }
                boolean paints = value[y][x] >= 0.5;
                assertEquals(paints, bits.get(x - 1, y), "at " + (x - 1) + ", " + y);
                double error = value[y][x] - (paints ? 1 : 0);
                value[y][x + step] += error * 7 / 16;
                value[y + 1][x - step] += error * 3 / 16;
                value[y + 1][x] += error * 5 / 16;
                value[y + 1][x + step] += error / 16;
            }
        }
    }

    /** Dots of 12 px: what is painted comes in whole dots. */
    @Test
    void wholeDots() {
        BitPicture bits = Fields.flat(diffusion, FINE.withDotMm(0.254), 0.25, 96, 96);
        assertEquals(0, bits.count() % 144);
        assertTrue(bits.count() > 0);
        for (int y = 0; y < 96; y++) {
            for (int x = 0; x < 96; x++) {
                assertEquals(bits.get(x / 12 * 12, y / 12 * 12), bits.get(x, y));
            }
        }
    }

    /** Coarse dots of a picture are the fine dots of its averages, where the averages are exact code values. */
    @Property(tries = 50)
    void dotsOfAverages(@ForAll @IntRange(min = 1, max = 30) int dots, @ForAll @IntRange(min = 2, max = 20) int dotPx,
            @ForAll @IntRange(min = 0, max = 100_000) int seed) {
        byte[] codes = Fields.noise(dots * 9, seed);
        ScreeningRecipe coarse = FINE.withDotMm(dotPx * 25.4 / 1200);
        BitPicture fine = Fields.screened(diffusion, FINE, ToneTable.linear(), dots, 9, 9, (x, y) -> codes[y * dots + x]);
        BitPicture bits = Fields.screened(diffusion, coarse, ToneTable.linear(),
                dots * dotPx, 9 * dotPx, 5, (x, y) -> codes[y / dotPx * dots + x / dotPx]);
        for (int y = 0; y < bits.heightPx(); y++) {
            for (int x = 0; x < bits.widthPx(); x++) {
                assertEquals(fine.get(x / dotPx, y / dotPx), bits.get(x, y));
            }
        }
    }

    @Test
    void saysHowLargeDotsComeOut() {
        assertEquals(0.254, diffusion.actual(FINE.withDotMm(0.254)).dotMm().getAsDouble(), 1e-9);
        assertTrue(diffusion.advice(FINE.withDotMm(0.254)).isEmpty());
        assertEquals("dot-moved", diffusion.advice(FINE.withDotMm(0.03)).get(0).code());
    }

    /** Two rows at a time, and on several threads: the bits of one row after the other. */
    @Property(tries = 30)
    void rowsSideBySide(@ForAll @IntRange(min = 1, max = 4000) int width, @ForAll @IntRange(min = 1, max = 70) int height,
            @ForAll @IntRange(min = 1, max = 3) int threads, @ForAll @IntRange(min = 0, max = 100_000) int seed) throws IOException {
        byte[] codes = Fields.noise(width * height, seed);
        ScreeningRecipe raster = FINE.withScan(Scan.RASTER);
        BitPicture plain = new BitPicture(width, height);
        FloydSteinbergRows rows = new FloydSteinbergRows(width, false);
        int[] coverage = new int[width];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                coverage[x] = (int) Math.round((255 - (codes[y * width + x] & 255)) / 255.0 * RowDecider.ONE);
            }
            rows.decide(coverage, plain.words(), y * plain.wordsPerRow());
        }
        try (GrayBands gray = Fields.gray(width, height, height, (x, y) -> codes[y * width + x]);
                BitBands bits = new ScreenedBands(gray, ToneTable.linear(), diffusion, raster, threads)) {
            assertEquals(plain, BitPicture.of(bits));
        }
    }

    /** The other filters in ints against the general way in doubles, up to the first px that rounding decides. */
    @ParameterizedTest
    @ValueSource(strings = {"jarvis-judice-ninke", "stucki", "ostromoukhov"})
    void intsGiveTheBitsOfDoublesForOtherFilters(String filter) {
        for (int seed = 0; seed < 30; seed++) {
            int width = 1 + seed * 7 % 90;
            byte[] codes = Fields.noise(width * 40, seed);
            for (Scan scan : Scan.values()) {
                ScreeningRecipe recipe = FINE.withFilter(filter).withScan(scan);
                Spread[] spreads = filter.equals("ostromoukhov") ? TonalSpreads.byLevel() : new Spread[] {Spread.of(recipe.diffusionFilter())};
                SpreadRows slow = new SpreadRows(width, spreads, scan == Scan.SERPENTINE, Edge.DROPPED);
                BitPicture expected = new BitPicture(width, 40);
                int[] coverage = new int[width];
                for (int y = 0; y < 40; y++) {
                    for (int x = 0; x < width; x++) {
                        coverage[x] = (int) Math.round((255 - (codes[y * width + x] & 255)) / 255.0 * RowDecider.ONE);
                    }
                    slow.decide(coverage, expected.words(), y * expected.wordsPerRow());
                }
                BitPicture bits = Fields.screened(diffusion, recipe, ToneTable.linear(), width, 40, 40, (x, y) -> codes[y * width + x]);
                assertEquals(expected, bits, filter + " " + scan + " seed " + seed);
            }
        }
    }

    /** A shaded rectangle that ends within dots ends there to the px; a speck of white within it makes no hole. */
    @Test
    void edgesOfShadesAreThoseOfTheDevice() {
        ScreeningRecipe coarse = FINE.withDotMm(0.254);
        BitPicture bits = Fields.screened(diffusion, coarse, ToneTable.linear(), 200, 120, 7,
                (x, y) -> x >= 31 && x < 150 && y >= 17 && y < 101 ? x == 80 && y == 50 ? 255 : 60 : 255);
        boolean[] edge = new boolean[4];
        for (int y = 0; y < 120; y++) {
            for (int x = 0; x < 200; x++) {
                boolean inside = x >= 31 && x < 150 && y >= 17 && y < 101;
                assertTrue(inside || !bits.get(x, y), "painted outside at " + x + ", " + y);
                edge[0] |= x == 31 && bits.get(x, y);
                edge[1] |= x == 149 && bits.get(x, y);
                edge[2] |= y == 17 && bits.get(x, y);
                edge[3] |= y == 100 && bits.get(x, y);
            }
        }
        assertArrayEquals(new boolean[] {true, true, true, true}, edge);
        assertEquals(bits.get(79, 50), bits.get(80, 50));
        BitPicture line = Fields.screened(diffusion, coarse, ToneTable.linear(), 200, 24, 24, (x, y) -> x >= 50 && x < 70 ? 0 : 220);
        for (int x = 50; x < 70; x++) {
            assertTrue(line.get(x, 13), "a solid line within a shade is whole at " + x);
        }
    }
}
