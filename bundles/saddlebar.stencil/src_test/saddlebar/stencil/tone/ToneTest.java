package saddlebar.stencil.tone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import saddlebar.model.art.GrayBands;
import saddlebar.model.art.GrayCoding;
import saddlebar.model.problem.Refusal;
import saddlebar.stencil.Fields;

class ToneTest {
    /** Murray 1936 and Yule and Nielsen 1951, worked by hand: Ds 1.50, Dt 0.30, D0 0. */
    @Test
    void effectiveCoverage() {
        assertEquals(0.515102, new TintDensity(0, 1.5, 1).effective(0.30), 1e-6);
        assertEquals(0.355223, new TintDensity(0, 1.5, 2).effective(0.30), 1e-6);
        assertEquals(0.30103, TintDensity.density(0.5), 1e-6);
        assertEquals(2, TintDensity.density(0.01), 1e-12);
        // half of a solid with T = 0.25 on clear glass: T = 0.625
        assertEquals(0.20412, new TintDensity(0, 0.60206, 1).tint(0.5), 1e-5);
        assertEquals(0.625, TintDensity.transmittance(new TintDensity(0, 0.60206, 1).tint(0.5)), 1e-6);
    }

    @Test
    void tooPaleToMeasure() {
        assertEquals("wedge", assertThrows(Refusal.class, () -> new TintDensity(0.1, 0.149, 1)).where());
    }

    @Property(tries = 200)
    void tintIsTheInverse(@ForAll @DoubleRange(min = 0, max = 1) double coverage, @ForAll @DoubleRange(min = 1, max = 3) double n) {
        TintDensity densities = new TintDensity(0.04, 1.2, n);
        assertEquals(coverage, densities.effective(densities.tint(coverage)), 1e-12);
    }

    /** A paint that lets 60 % through, on clear glass. */
    @Test
    void palePaint() {
        PaintRange range = new PaintRange(1, 0.6);
        assertEquals(0.5, range.coverage(0.8), 1e-12);
        assertEquals(1, range.coverage(0.6), 1e-12);
        assertTrue(range.reaches(0.6));
        assertFalse(range.reaches(0.5), "this paint cannot go so dark");
        assertEquals(1, range.coverage(0.5));
        assertEquals(0.8, range.transmittance(0.5), 1e-12);
    }

    /** IEC 61966-2-1: code value 188 is 0.503 of white's light. */
    @Test
    void linearLight() {
        assertEquals(0.497, Darkness.of(188, GrayCoding.SRGB_LUMINANCE), 5e-4);
        assertEquals(0, Darkness.of(255, GrayCoding.SRGB_LUMINANCE));
        assertEquals(1, Darkness.of(0, GrayCoding.SRGB_LUMINANCE));
        assertEquals(1 - 10 / 255.0 / 12.92, Darkness.of(10, GrayCoding.SRGB_LUMINANCE), 1e-12);
        assertEquals(0.2, Darkness.of(204, GrayCoding.CODE_VALUES), 1e-12);
    }

    @Test
    void stretchOfAPaleDrawing() {
        Stretch stretch = new Stretch(0.1, 0.3);
        assertEquals(0, stretch.coverage(0.05));
        assertEquals(0.5, stretch.coverage(0.2), 1e-12);
        assertEquals(1, stretch.coverage(0.4));
        assertEquals("from", assertThrows(Refusal.class, () -> new Stretch(0.5, 0.5)).where());
        assertEquals("from", assertThrows(Refusal.class, () -> new Stretch(-0.1, 0.5)).where());
        assertEquals("to", assertThrows(Refusal.class, () -> new Stretch(0, 1.1)).where());
        assertEquals("to", assertThrows(Refusal.class, () -> new Stretch(0, Double.NaN)).where());
    }

    /** 1000 drawn px, codes 154 to 253 ten times each, on much white: 995 of them are not darker than code 154 + 0.5 of its ten. */
    @Test
    void percentileOfWhatIsDrawn() throws IOException {
        GrayHistogram histogram;
        try (GrayBands bands = Fields.gray(100, 100, 9, (x, y) -> y < 10 ? 154 + x : 255)) {
            histogram = GrayHistogram.of(bands);
        }
        assertEquals(1000, histogram.drawnPx());
        assertEquals(9000, histogram.count(255));
        assertEquals((255 - 154) / 255.0, histogram.drawnPercentile(0.995), 1e-12);
        assertEquals((255 - 155) / 255.0, histogram.drawnPercentile(0.99), 1e-12);
        assertEquals(2 / 255.0, histogram.drawnPercentile(0.001), 1e-12);
        assertEquals((255 - 154) / 255.0, Stretch.of(0, OptionalDouble.empty(), histogram).to(), 1e-12);
        assertEquals(0.7, Stretch.of(0, OptionalDouble.of(0.7), histogram).to());
        assertEquals(1, new GrayHistogram(GrayCoding.CODE_VALUES).drawnPercentile(0.995), "nothing drawn");
    }

    /** Round dots of 163 um: (pi/4)(d/P)^2 = 0.0518 at 40 lines an inch, 0.0655 at 45. */
    @Test
    void endLimits() {
        assertEquals(0.0518, EndLimits.roundDotCoverage(163, 40), 1e-4);
        assertEquals(0.0655, EndLimits.roundDotCoverage(163, 45), 1e-4);
        EndLimits ends = new EndLimits(0.06, 0.9, EndLimits.Soft.NEAREST);
        assertEquals(0, ends.held(0));
        assertEquals(0, ends.held(0.029));
        assertEquals(0.06, ends.held(0.031));
        assertEquals(0.5, ends.held(0.5));
        assertEquals(0.9, ends.held(0.94));
        assertEquals(1, ends.held(0.96));
        assertEquals(1, ends.held(1));
        assertEquals(0, new EndLimits(0.06, 0.9, EndLimits.Soft.CUT).held(0.059));
        assertEquals(0.06, new EndLimits(0.06, 0.9, EndLimits.Soft.LIFTED).held(0.001));
        assertEquals(0, new EndLimits(0.06, 0.9, EndLimits.Soft.LIFTED).held(0));
        EndLimits mesh = EndLimits.ofRoundDots(163, 150, 40);
        assertEquals(0.0518, mesh.least(), 1e-4);
        assertEquals(1 - 0.0438, mesh.most(), 1e-4);
        assertEquals("lpi", assertThrows(Refusal.class, () -> EndLimits.ofRoundDots(163, 150, 140)).where());
    }

    @Test
    void linearTable() {
        ToneTable linear = ToneTable.linear();
        assertEquals(1, linear.coverage(0));
        assertEquals(0, linear.coverage(255));
        assertEquals(51 / 255.0, linear.coverage(204), 1e-12);
        assertEquals(127, linear.codesAbove(128 / 255.0)); // codes 0 to 126 cover 129/255 and more
        assertEquals(255, linear.codesAbove(0));
        assertEquals(0, linear.codesAbove(1));
    }

    @Test
    void tablesThatWouldPrintOnWhiteOrTurnBack() {
        double[] white = new double[256];
        Arrays.fill(white, 0.5);
        assertThrows(IllegalArgumentException.class, () -> ToneTable.of(white));
        double[] turning = new double[256];
        turning[7] = 0.5;
        assertThrows(IllegalArgumentException.class, () -> ToneTable.of(turning));
        assertThrows(IllegalArgumentException.class, () -> ToneTable.of(new double[255]));
    }

    /** Stretch, gain and limits together: the code that should show 50 % is screened at what prints as 50 %. */
    @Test
    void theWholeWay() {
        Calibration gain = Calibration.modelled(0.15);
        ToneTable table = ToneTable.of(GrayCoding.CODE_VALUES, new Stretch(0, 0.4), Optional.of(gain), new EndLimits(0.05, 0.95,
                EndLimits.Soft.NEAREST));
        assertEquals(1, table.coverage(153), 1e-12); // darkness 0.4
        assertEquals(gain.toScreen(0.5), table.coverage(204), 1e-12); // darkness 0.2
        assertEquals(0.5, gain.printed(table.coverage(204)), 1e-8);
        assertEquals(0, table.coverage(255));
    }

    @Property(tries = 200)
    void neverTurnsBack(@ForAll @DoubleRange(min = 0, max = 0.45) double from, @ForAll @DoubleRange(min = 0.5, max = 1) double to,
            @ForAll EndLimits.Soft soft, @ForAll @DoubleRange(min = 0, max = 0.25) double gain, @ForAll GrayCoding coding) {
        ToneTable.of(coding, new Stretch(from, to), Optional.of(Calibration.modelled(gain)), new EndLimits(0.07, 0.9, soft)); // checks itself
    }
}
