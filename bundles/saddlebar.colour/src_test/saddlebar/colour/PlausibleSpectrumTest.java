package saddlebar.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

import saddlebar.model.problem.Refusal;

class PlausibleSpectrumTest {
    /** Every corner, edge and inner point of a grid of the screen's colours: exact, within 0 to 1. */
    @Test
    void exactOverTheScreensGamut() {
        double worst = 0;
        for (int r = 0; r <= 255; r += 51) {
            for (int g = 0; g <= 255; g += 51) {
                for (int b = 0; b <= 255; b += 51) {
                    worst = Math.max(worst, miss(Srgb.ofCodes(r, g, b)));
                }
            }
        }
        assertTrue(worst < 1e-6, "worst " + worst);
    }

    @Property(tries = 150)
    void exactNearTheEdges(@ForAll @IntRange(min = 0, max = 2) int r, @ForAll @IntRange(min = 253, max = 255) int g, @ForAll @IntRange(min = 0,
            max = 255) int b) {
        assertTrue(miss(Srgb.ofCodes(r, g, b)) < 1e-6);
        assertTrue(miss(Srgb.ofCodes(g, g, b)) < 1e-6);
        assertTrue(miss(Srgb.ofCodes(b, r, g)) < 1e-6);
        assertTrue(miss(Srgb.ofCodes(g, g, 255 - r)) < 1e-6);
        assertTrue(miss(Srgb.ofCodes(r, 0, r / 2)) < 1e-6);
    }

    private static double miss(Srgb colour) {
        Spectrum found = PlausibleSpectrum.of("test", colour);
        assertTrue(found.most() <= 1 && found.least() >= 0);
        Xyz back = new Bradford(Light.D65.white(), Srgb.WHITE).adapt(Light.D65.through(found));
        Xyz wanted = colour.xyz();
        return Math.max(Math.abs(back.x() - wanted.x()), Math.max(Math.abs(back.y() - wanted.y()), Math.abs(back.z() - wanted.z())));
    }

    @Test
    void grayIsFlat() {
        Spectrum gray = PlausibleSpectrum.of("gray", Srgb.parse("#808080").orElseThrow());
        assertEquals(gray.least(), gray.most(), 1e-12);
        assertEquals(1, PlausibleSpectrum.of("white", Srgb.parse("#ffffff").orElseThrow()).least(), 1e-9);
        assertEquals(0, PlausibleSpectrum.of("black", Srgb.parse("#000000").orElseThrow()).most(), 1e-9);
    }

    /**
     * Slow and obvious: no other spectrum of the same colour, made by adding what the eye does not see, is smoother in the measure that is made
     * least.
     */
    @Property(tries = 60)
    void noOtherSpectrumOfTheColourIsSmoother(@ForAll @IntRange(min = 20, max = 235) int r, @ForAll @IntRange(min = 20, max = 235) int g,
            @ForAll @IntRange(min = 20, max = 235) int b, @ForAll @IntRange(min = 0, max = 1 << 20) int seed) {
        double[] found = PlausibleSpectrum.of("test", Srgb.ofCodes(r, g, b)).toArray();
        double[] unseen = unseen(new Random(seed));
        for (double size : new double[] {1e-3, -1e-3, 1e-2, -1e-2}) {
            double[] other = found.clone();
            boolean possible = true;
            for (int band = 0; band < other.length; band++) {
                other[band] += size * unseen[band];
                possible &= other[band] > 0 && other[band] < 1;
            }
            if (possible) {
                assertTrue(slopes(other) >= slopes(found) * (1 - 1e-9), slopes(other) + " < " + slopes(found));
            }
        }
    }

    /** A smooth random curve less its part that X, Y, Z see (Gram and Schmidt). */
    private static double[] unseen(Random random) {
        double[] curve = new double[Spectrum.BANDS];
        for (int wave = 1; wave < 7; wave++) {
            double size = random.nextGaussian();
            double phase = 6.28 * random.nextDouble();
            for (int band = 0; band < curve.length; band++) {
                curve[band] += size * Math.sin(wave * band * 0.0393 + phase);
            }
        }
        double[][] rows = Light.D65.weights();
        for (int i = 0; i < 3; i++) {
            for (int k = 0; k < i; k++) {
                remove(rows[i], rows[k]);
            }
            remove(curve, rows[i]);
        }
        for (int i = 0; i < 3; i++) {
            remove(curve, rows[i]);
        }
        return curve;
    }

    private static void remove(double[] from, double[] along) {
        double dot = 0;
        double square = 0;
        for (int i = 0; i < from.length; i++) {
            dot += from[i] * along[i];
            square += along[i] * along[i];
        }
        for (int i = 0; i < from.length; i++) {
            from[i] -= dot / square * along[i];
        }
    }

    private static double slopes(double[] shares) {
        double sum = 0;
        for (int band = 1; band < shares.length; band++) {
            double step = atanh(2 * shares[band] - 1) - atanh(2 * shares[band - 1] - 1);
            sum += step * step;
        }
        return sum;
    }

    private static double atanh(double value) {
        return Math.log((1 + value) / (1 - value)) / 2;
    }

    /**
     * How far off in other lights: measured spectra of strong colours (CIE 013.3, samples 9 to 12) are reduced to their colour in daylight, made a
     * spectrum again, and both seen under a lamp and at dusk. The figures are what the method reaches on them, no promise for glass with narrow
     * bands.
     */
    @ParameterizedTest
    @CsvSource({"red,1,0.9", "yellow,2,0.1", "green,3,1.2", "blue,4,3"})
    void nearMeasuredSpectraInOtherLights(String name, int column, double within) throws IOException {
        Spectrum measured = strongSample(column);
        Spectrum made = PlausibleSpectrum.of(name, Light.D65.through(measured));
        for (Light light : List.of(Light.A, Light.dusk())) {
            Lab truly = Lab.of(light.through(measured), light.white());
            Lab told = Lab.of(light.through(made), light.white());
            double apart = ColourDifference.ciede2000(truly, told);
            assertTrue(apart < within, name + " under " + light.name() + " apart " + apart);
        }
    }

    private static Spectrum strongSample(int column) throws IOException {
        try (var in = new BufferedReader(new InputStreamReader(PlausibleSpectrumTest.class.getResourceAsStream("cie-strong-samples.csv"),
                StandardCharsets.UTF_8))) {
            List<double[]> rows = in.lines().filter(line -> Character.isDigit(line.charAt(0)))
                    .map(line -> Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble).toArray()).toList();
            assertEquals(41, rows.size());
            return Spectrum.sampled("sample", rows.stream().mapToDouble(row -> row[0]).toArray(),
                    rows.stream().mapToDouble(row -> row[column]).toArray());
        }
    }

    /** Fluorescent colours are too bright for their strength: nothing that only takes light away has them. */
    @Test
    void impossibleColoursAreRefused() {
        assertThrows(Refusal.class, () -> Glass.coloured("too good", new Lab(95, 100, 0), 3));
        assertThrows(Refusal.class, () -> Glass.coloured("too bright", new Lab(105, 0, 0), 3));
        assertThrows(Refusal.class, () -> Glass.coloured("dark but strong", new Lab(5, -120, -90), 3));
        Refusal refusal = assertThrows(Refusal.class, () -> Glass.coloured("acid", new Lab(97, -60, 110), 3));
        assertTrue(refusal.getMessage().startsWith("acid: no glass"), refusal.getMessage());
    }
}
