package saddlebar.stencil.quality;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.junit.jupiter.api.Test;

import saddlebar.stencil.BitPicture;
import saddlebar.stencil.Fields;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.mesh.Eye;

class ToneQualityTest {
    private static final ScreeningRecipe FINE = ScreeningRecipe.withDefaults().withDotMm(0.021);

    private static BitPicture chance(int side, double g, long seed) {
        Random random = new Random(seed);
        BitPicture bits = new BitPicture(side, side);
        for (int i = 0; i < side * side; i++) {
            bits.set(i % side, i / side, random.nextDouble() < g);
        }
        return bits;
    }

    private static BitPicture screened(String method, double g, int side) {
        return Fields.flat(ScreeningMethods.ownMethods().method(method), FINE, g, side, side);
    }

    /** Independent chance: power 1 at every frequency and no direction: -10 lg(windows) dB on average, -12.04 for 16 (Ulichney 1988). */
    @Test
    void chanceHasPowerOne() {
        Spectrum spectrum = Spectrum.of(chance(256, 0.25, 1), 64);
        assertEquals(16, spectrum.windows());
        assertEquals(1, spectrum.meanBetween(0, 1), 0.05);
        double[] radial = spectrum.radial();
        double anisotropy = 0;
        for (int ring = 4; ring < radial.length; ring++) {
            assertEquals(1, radial[ring], 0.2);
            anisotropy += spectrum.anisotropyDb(ring) / (radial.length - 4);
        }
        assertEquals(-12.04, anisotropy, 1);
    }

    /** Principal frequency of blue noise of dots 0.254 mm apart: 0.4921, 0.9843, 1.9685 c/mm at 1/64, 1/16, 1/4 (closed form, Ulichney 1987). */
    @Test
    void principalFrequency() {
        assertEquals(0.4921, Spectrum.principalFrequency(1.0 / 64) / 0.254, 5e-5);
        assertEquals(0.9843, Spectrum.principalFrequency(1.0 / 16) / 0.254, 5e-5);
        assertEquals(1.9685, Spectrum.principalFrequency(1.0 / 4) / 0.254, 5e-5);
        assertEquals(0.5, Spectrum.principalFrequency(0.4)); // a square grid has no higher one along its axes; Lau and Ulichney, HPL-2004-232
        assertEquals(Spectrum.principalFrequency(0.1), Spectrum.principalFrequency(0.9), 1e-12);
    }

    @Test
    void blueNoiseIsQuietChanceIsNot() {
        Eye eye = new Eye(1);
        for (double g : new double[] {1.0 / 16, 1.0 / 8, 1.0 / 4}) {
            ToneQuality blue = ToneQuality.of(screened("bluenoise", g, 256), g, 1200, 1, eye, 64);
            ToneQuality white = ToneQuality.of(chance(256, g, 2), g, 1200, 1, eye, 64);
            assertEquals(0, blue.toneError(), 1e-9);
            assertTrue(blue.lowPower() < 0.2 && white.lowPower() > 0.7, blue.lowPower() + ", " + white.lowPower());
            assertTrue(blue.grain() < white.grain() / 2, blue.grain() + " against " + white.grain());
        }
    }

    /** From farther off the same dots are less grainy. */
    @Test
    void grainFallsWithDistance() {
        BitPicture bits = screened("diffusion", 0.2, 256);
        double before = 1;
        for (double metres : new double[] {0.3, 1, 3}) {
            double grain = ToneQuality.of(bits, 0.2, 1200, 1, new Eye(metres), 256).grain();
            assertTrue(grain < before, metres + " m: " + grain);
            before = grain;
        }
    }

    /** A fault that comes again every 16 px is found, with its period. */
    @Test
    void worstRepeat() {
        BitPicture bits = screened("bluenoise", 0.25, 256);
        for (int y = 0; y < 256; y++) {
            for (int x = 0; x < 256; x += 16) {
                bits.set(x, y, true);
            }
        }
        ToneQuality quality = ToneQuality.of(bits, 0.25, 1200, 1, new Eye(1), 64);
        assertEquals(16 * 25.4 / 1200, quality.repeatMm(), 1e-9);
        assertTrue(quality.repeatPower() > 5);
        assertTrue(quality.anisotropyDb() > 0);
    }

    @Test
    void noDots() {
        assertThrows(IllegalArgumentException.class, () -> Spectrum.of(new BitPicture(64, 64), 64));
        assertThrows(IllegalArgumentException.class, () -> Spectrum.of(chance(64, 0.5, 1), 48));
    }
}
