package saddlebar.stencil.quality;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import saddlebar.stencil.BitPicture;
import saddlebar.stencil.Fields;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.mesh.Eye;

/**
 * Tone and spectrum of every method at every twentieth tone, by the measures of Ulichney (Digital Halftoning, 1987) and Lau, Arce and Gallagher (Proc. IEEE
 * 86(12), 1998). Limits on power are our own, in shares of what dots of that size by chance would have; for bluenoise the 0.20 of the screening rules.
 */
class MethodQualityTest {
    private static final int SIDE = 512;
    private static final int WINDOW = 256;
    /** 16 px at 1200 dpi. */
    private static final double LPI = 75;

    /**
     * Pitch: of what repeats or scatters, in px. Low power: mean below half the principal frequency of dots of that pitch, over that of chance of such dots,
     * whose power is their area. Anisotropy: dB, the most over annuli; 4 windows of chance have -6; a
     * checkerboard, which diffusion makes of one half, has no power in them.
     */
    @ParameterizedTest
    @CsvSource({"am, 0.021, 16, 0.002, 0.001, 10, 30", "hybrid, 0.085, 16, 0.002, 0.002, 10, 30", "lines, 0.021, 16, 0.002, 0.02, 10, 30",
            "stipple, 0.085, 16, 0.01, 0.1, -7, 1", "diffusion, 0.021, 1, 0.002, 0.10, -Infinity, 30", "bluenoise, 0.021, 1, 0.002, 0.20, 5, 30",
            "greennoise, 0.021, 1.9, 0.002, 0.15, -7, 6"})
    void atEveryTwentiethTone(String method, double dotMm, double pitchPx, double toneError, double lowPower, double leastDb, double mostDb) {
        ScreeningRecipe recipe = ScreeningRecipe.withDefaults().withMethod(method).withLpi(LPI).withDotMm(dotMm);
        StringBuilder table = new StringBuilder();
        boolean holds = true;
        for (int percent = 5; percent <= 95; percent += 5) {
            double asked = percent / 100.0;
            BitPicture bits = Fields.flat(ScreeningMethods.ownMethods().method(method), recipe, asked, SIDE, SIDE);
            ToneQuality quality = ToneQuality.of(bits, asked, 1200, pitchPx, new Eye(1), WINDOW);
            double low = quality.lowPower() / (pitchPx * pitchPx);
            boolean fine = Math.abs(quality.toneError()) <= toneError && low <= lowPower && quality.anisotropyDb() >= leastDb
                    && quality.anisotropyDb() <= mostDb;
            holds &= fine;
            table.append(String.format("%n%d %%: tone %+.4f, low power %.4f, anisotropy %.1f dB, grain at 1 m %.4f%s", percent, quality.toneError(), low,
                    quality.anisotropyDb(), quality.grain(), fine ? "" : "  <--"));
        }
        assertTrue(holds, method + table);
    }

    /** The principal frequency of clusters of M dots is that of dots over the root of M: 0.25 for M = 4 and g = 0.25 (Lau, Arce, Gallagher 1998). */
    @ParameterizedTest
    @CsvSource({"3, 0.25", "4, 0.25", "6, 0.25", "4, 0.15"})
    void clustersStandAtTheirPrincipalFrequency(double clusterDots, double coverage) {
        ScreeningRecipe recipe = ScreeningRecipe.withDefaults().withMethod("greennoise").withDotMm(0.021).withClusterDots(clusterDots);
        BitPicture bits = Fields.flat(ScreeningMethods.ownMethods().method("greennoise"), recipe, coverage, SIDE, SIDE);
        double[] radial = Spectrum.of(bits, 64).radial();
        int peak = 0;
        for (int ring = 1; ring < radial.length; ring++) {
            peak = radial[ring] > radial[peak] ? ring : peak;
        }
        double expected = Math.sqrt(coverage / clusterDots);
        assertEquals(expected, (peak + 0.5) / 64, 0.25 * expected + 1.0 / 64, "peak of power");
    }
}
