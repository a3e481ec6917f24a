package saddlebar.stencil.method;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import saddlebar.stencil.BitPicture;
import saddlebar.stencil.Fields;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.ScreeningRecipe.Scan;
import saddlebar.stencil.tone.ToneTable;

class NoiseMethodsTest {
    private static final ScreeningRecipe FINE = ScreeningRecipe.withDefaults().withDotMm(0.021);

    @Test
    void theShippedArrayIsWhatItsMakerMakes() {
        assertArrayEquals(VoidAndCluster.ranks(BlueNoiseMethod.SIDE, BlueNoiseMethod.SIGMA_DOTS, BlueNoiseMethod.SEED), BlueNoiseRanks.of(64));
    }

    /** Takes some seconds, so only where {@code -Dsaddlebar.slow=true} asks for it. */
    @Test
    @EnabledIfSystemProperty(named = "saddlebar.slow", matches = "true")
    void theLargeShippedArrayIsWhatItsMakerMakes() {
        assertArrayEquals(VoidAndCluster.ranks(128, BlueNoiseMethod.SIGMA_DOTS, BlueNoiseMethod.SEED), BlueNoiseRanks.of(128));
    }

    @ParameterizedTest
    @ValueSource(ints = {64, 128})
    void ranksAreAPermutation(int side) {
        int[] ranks = BlueNoiseRanks.of(side);
        Arrays.sort(ranks);
        assertArrayEquals(IntStream.range(0, side * side).toArray(), ranks);
    }

    @Test
    void theLargeArrayIsQuietToo() {
        for (int denominator : new int[] {32, 16, 8, 4}) {
            double g = 1.0 / denominator;
            BitPicture bits = Fields.flat(new BlueNoiseMethod(), FINE.withNoiseSide(128), g, 128, 128);
            assertEquals(16384 / denominator, bits.count());
            double low = Spectrum.of(bits).meanBelow(Spectrum.principalFrequency(g) / 2);
            assertTrue(low <= 0.20, "at " + g + ": " + low);
        }
    }

    /** Closed form: k of n^2. */
    @Test
    void exactTone() {
        BlueNoiseMethod blue = new BlueNoiseMethod();
        for (int k = 0; k <= 4096; k += k < 64 || k > 4032 ? 1 : 61) {
            assertEquals(k, Fields.flat(blue, FINE, k / 4096.0, 64, 64).count());
        }
    }

    /**
     * Mean power below half the principal frequency, over g (1 - g): low for blue noise. Limit 0.20 is our own; an independent computation of
     * the same method gave 0.13, 0.08, 0.06, 0.07, and 0.94 to 0.99 for white noise.
     */
    @Test
    void lowFrequenciesAreQuiet() {
        BlueNoiseMethod blue = new BlueNoiseMethod();
        for (int denominator : new int[] {32, 16, 8, 4}) {
            double g = 1.0 / denominator;
            BitPicture bits = Fields.flat(blue, FINE, g, 64, 64);
            double low = Spectrum.of(bits).meanBelow(Spectrum.principalFrequency(g) / 2);
            assertTrue(low <= 0.20, "at " + g + ": " + low);
        }
    }

    /** Levien's feedback off: plain error diffusion, bit for bit. */
    @Property(tries = 40)
    void noClumpIsErrorDiffusion(@ForAll @IntRange(min = 1, max = 150) int width, @ForAll @IntRange(min = 0, max = 100_000) int seed,
            @ForAll Scan scan) {
        byte[] codes = Fields.noise(width * 20, seed);
        ScreeningRecipe recipe = FINE.withScan(scan).withClump(0);
        assertEquals(Fields.screened(new DiffusionMethod(), recipe, ToneTable.linear(), width, 20, 20, (x, y) -> codes[y * width + x]),
                Fields.screened(new GreenNoiseMethod(), recipe, ToneTable.linear(), width, 20, 20, (x, y) -> codes[y * width + x]));
    }

    /** Principal frequency of green noise, Lau, Arce and Gallagher 1998: sqrt(g/M)/R; M = 4, R = 1, g = 1/4 gives 1/4. */
    @Test
    void principalFrequencies() {
        assertEquals(0.25, Spectrum.principalFrequency(0.25) / Math.sqrt(4), 1e-12);
        // blue noise of dots 0.254 mm apart: 0.4921, 0.9843, 1.9685 c/mm at 1/64, 1/16, 1/4
        assertEquals(0.4921, Spectrum.principalFrequency(1.0 / 64) / 0.254, 5e-5);
        assertEquals(0.9843, Spectrum.principalFrequency(1.0 / 16) / 0.254, 5e-5);
        assertEquals(1.9685, Spectrum.principalFrequency(1.0 / 4) / 0.254, 5e-5);
    }

    @Test
    void clumpsGrowWithTheFeedbackAndToneStays() {
        GreenNoiseMethod green = new GreenNoiseMethod();
        double before = 0;
        for (double h : new double[] {0, 0.5, 1, 1.5, 2}) {
            BitPicture bits = Fields.flat(green, FINE.withClump(h), 0.25, 256, 256);
            double size = Clusters.meanSize(bits);
            assertEquals(0.25, bits.count() / 65536.0, 0.003, "tone at h = " + h);
            assertTrue(size > before, "cluster of " + size + " px at h = " + h);
            before = size;
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.5, 3, 4.5, 6})
    void clustersOfTheSizeAskedFor(double dots) {
        BitPicture bits = Fields.flat(new GreenNoiseMethod(), FINE.withClusterDots(dots), 0.25, 256, 256);
        assertEquals(1, Clusters.meanSize(bits) / dots, 0.2);
    }

    /** Most power of clumped dots lies about their principal frequency, sqrt(g/M) with M the clusters' mean size; little below half of it. */
    @Test
    void clumpsStandApartEvenly() {
        BitPicture bits = Fields.flat(new GreenNoiseMethod(), FINE.withClump(1), 0.1, 256, 256);
        double principal = Spectrum.principalFrequency(0.1) / Math.sqrt(Clusters.meanSize(bits));
        Spectrum spectrum = Spectrum.of(bits);
        double low = spectrum.meanBelow(principal / 2);
        double peak = spectrum.meanBetween(principal * 0.85, principal * 1.25);
        assertTrue(low < 0.2, "low " + low);
        assertTrue(peak > 1.2 && peak > spectrum.meanBetween(principal * 1.25, 0.5) && peak > 5 * low, "peak " + peak);
    }

    /** White noise has power 1 all over: independent random bits. */
    @Test
    void whiteNoiseHasPowerOne() {
        byte[] codes = Fields.noise(256 * 256, 7);
        BitPicture bits = new BitPicture(256, 256);
        for (int i = 0; i < codes.length; i++) {
            bits.set(i % 256, i / 256, (codes[i] & 255) < 64);
        }
        assertEquals(1, Spectrum.of(bits).meanBelow(1), 0.05);
    }
}
