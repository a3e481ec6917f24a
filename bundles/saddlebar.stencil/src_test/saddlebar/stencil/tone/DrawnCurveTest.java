package saddlebar.stencil.tone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;

import saddlebar.model.art.GrayCoding;
import saddlebar.model.problem.Refusal;

class DrawnCurveTest {
    @Test
    void wordsAreReadBack() {
        DrawnCurve curve = DrawnCurve.parse("0.5:0.38  0.25:0.2").orElseThrow();
        assertEquals("0:0 0.25:0.2 0.5:0.38 1:1", curve.words());
        assertEquals(curve, DrawnCurve.parse(curve.words()).orElseThrow());
        assertEquals(0.38, curve.toScreen(0.5), 1e-12);
        assertTrue(DrawnCurve.parse("  ").isEmpty());
        assertTrue(DrawnCurve.parse(null).isEmpty());
    }

    @Test
    void whatIsNoCurveIsRefusedInWords() {
        for (String bad : new String[] {"0.5", "a:b", "0.5:1.2", "0.2:0.9 0.5:0.4", "0.5:0.4 0.5:0.5", "1:2:3"}) {
            assertTrue(assertThrows(Refusal.class, () -> DrawnCurve.parse(bad), bad).getMessage().startsWith("curve"), bad);
        }
    }

    /** The curve says what is wanted, the calibration what to screen for it: one after the other, by hand. */
    @Test
    void curveComesBeforeCalibration() {
        Calibration gain = Calibration.modelled(0.15);
        DrawnCurve curve = DrawnCurve.parse("0.5:0.3").orElseThrow();
        Stretch whole = new Stretch(0, OptionalDouble.of(1).getAsDouble());
        ToneTable both = ToneTable.of(GrayCoding.CODE_VALUES, whole, Optional.of(curve), Optional.of(gain), EndLimits.NONE);
        for (int code : new int[] {1, 60, 127, 128, 200, 254}) {
            double drawn = (255 - code) / 255.0;
            assertEquals(gain.toScreen(curve.toScreen(drawn)), both.coverage(code), 1e-12);
        }
        ToneTable none = ToneTable.of(GrayCoding.CODE_VALUES, whole, Optional.empty(), Optional.of(gain), EndLimits.NONE);
        assertEquals(ToneTable.of(GrayCoding.CODE_VALUES, whole, Optional.of(gain), EndLimits.NONE), none);
    }
}
