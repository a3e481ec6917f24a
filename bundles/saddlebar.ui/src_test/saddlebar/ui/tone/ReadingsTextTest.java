package saddlebar.ui.tone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import saddlebar.model.problem.Refusal;
import saddlebar.stencil.tone.WedgeReading;

class ReadingsTextTest {
    /** Densities 0, 0.30103 and 0.60206 are transmittances 1, 1/2 and 1/4: the middle one covers (1 - 1/2)/(1 - 1/4) = 2/3 (Murray 1936, closed form). */
    @Test
    void densitiesAsTyped() {
        List<WedgeReading> readings = ReadingsText.read("0  0\n 50 %; 0,30103\n\n100\t0.60206\n", ReadingsText.Measure.DENSITY);
        assertEquals(3, readings.size());
        assertEquals(2.0 / 3, readings.get(1).effective(), 1e-5);
        assertEquals(readings.get(1).effective(), ReadingsText.read("0 100\n50 50\n100 25", ReadingsText.Measure.TRANSMITTANCE).get(1).effective(), 1e-5);
        assertEquals(0.66, ReadingsText.read("0 0\n50 66\n100 100", ReadingsText.Measure.COVERAGE).get(1).effective(), 1e-12);
    }

    @Test
    void whatIsNoReadingIsSaidWithItsLine() {
        assertTrue(message("0 0\nabc 0.3").contains("2"));
        assertTrue(message("0 0\n50 0.3\n120 0.6").contains("3"));
        assertTrue(message("0 0\n50 9\n100 0.6").contains("2"));
        assertTrue(assertThrows(Refusal.class, () -> ReadingsText.read("0 0\n50 0.3", ReadingsText.Measure.DENSITY)).getMessage().contains("solid"));
        assertTrue(assertThrows(Refusal.class, () -> ReadingsText.read("50 0.3\n100 0.6", ReadingsText.Measure.DENSITY)).getMessage().contains("bare"));
    }

    private static String message(String text) {
        return assertThrows(Refusal.class, () -> ReadingsText.read(text, ReadingsText.Measure.DENSITY)).getMessage();
    }

    @Test
    void theEmptyFormHasALineForEveryStepAndReadsAsNothing() {
        assertEquals(WedgeReading.STEPS.size(), ReadingsText.empty().split("\n").length);
        assertTrue(ReadingsText.read(ReadingsText.empty(), ReadingsText.Measure.COVERAGE).isEmpty());
        List<WedgeReading> some = List.of(new WedgeReading(0, 0), new WedgeReading(0.5, 0.6412), new WedgeReading(1, 1));
        assertEquals(some, ReadingsText.read(ReadingsText.of(some), ReadingsText.Measure.COVERAGE));
    }
}
