package saddlebar.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import saddlebar.ui.easel.RulerScale.Unit;

class LengthsTest {
    /** An inch is 25.4 mm by definition (international yard and pound agreement of 1959). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"470 mm | 470", "470 | 470", "47 cm | 470", "0.47 m | 470", "18 1/2 in | 469.9", "18.5\" | 469.9",
            "18½\" | 469.9", "18 1/2 Zoll | 469.9", "1/4 inch | 6.35", "12,5 mm | 12.5", "3/8in | 9.525", ".5 mm | 0.5"})
    void lengthsAsPeopleTypeThem(String typed, double mm) {
        assertEquals(mm, new TypedLength(Unit.MM).mm(typed).orElseThrow(), 1e-9);
    }

    @Test
    void withoutAUnitItIsInTheChosenOne() {
        assertEquals(25.4, new TypedLength(Unit.INCH).mm("1").orElseThrow(), 1e-12);
        assertEquals(1, new TypedLength(Unit.MM).mm("1").orElseThrow(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "mm", "abc", "12 kg", "1/0 in", "1 2 3", "-4 mm", "4 mm mm", "/2", "NaN", "1e3"})
    void whatIsNoLengthIsNone(String typed) {
        assertTrue(new TypedLength(Unit.MM).mm(typed).isEmpty(), typed);
    }

    @Test
    void writtenInTheChosenUnitAndLanguage() {
        Lengths metric = new Lengths(Unit.MM, Locale.ENGLISH);
        assertEquals("469.9 mm", metric.words(469.9));
        assertEquals("560 × 840 mm", metric.size(560, 840));
        assertEquals("150.8 cm²", metric.area(15080));
        assertEquals("469,9 mm", new Lengths(Unit.MM, Locale.GERMAN).words(469.9));
        Lengths inches = new Lengths(Unit.INCH, Locale.ENGLISH);
        assertEquals("18.5 in", inches.words(469.9));
        assertEquals("1 sq in", inches.area(25.4 * 25.4));
    }
}
