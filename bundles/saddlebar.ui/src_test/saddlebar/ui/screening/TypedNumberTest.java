package saddlebar.ui.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;

import org.junit.jupiter.api.Test;

class TypedNumberTest {
    private static double read(TypedNumber kind, String typed) {
        return kind.read(typed).orElseThrow(() -> new AssertionError(typed + " was not understood"));
    }

    @Test
    void valuesAreReadWithTheirUnits() {
        assertEquals(40, read(TypedNumber.RULING, "40"), 1e-12);
        assertEquals(40.64, read(TypedNumber.RULING, "16 lines/cm"), 1e-12);
        assertEquals(22.5, read(TypedNumber.ANGLE, "22,5°"), 1e-12);
        assertEquals(0.3, read(TypedNumber.SHARE, "30 %"), 1e-12);
        assertEquals(0.254, read(TypedNumber.FINE_LENGTH, "254 µm"), 1e-12);
        assertEquals(0.254, read(TypedNumber.FINE_LENGTH, "1/100 in"), 1e-12);
        assertEquals(1.524, read(TypedNumber.DISTANCE, "5 ft"), 1e-12);
    }

    @Test
    void whatIsNoValueIsNotGuessed() {
        for (String typed : new String[] {"", "forty", "40 mm", "4 0", "1/0 in", "--3"}) {
            assertTrue(TypedNumber.RULING.read(typed).isEmpty(), typed);
        }
        assertTrue(TypedNumber.FINE_LENGTH.read("1/0 in").isEmpty());
    }

    @Test
    void whatIsShownCanBeTyped() {
        for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
            for (TypedNumber kind : TypedNumber.values()) {
                assertEquals(0.125, read(kind, kind.words(0.125, locale)), 1e-12, kind.words(0.125, locale));
            }
        }
    }
}
