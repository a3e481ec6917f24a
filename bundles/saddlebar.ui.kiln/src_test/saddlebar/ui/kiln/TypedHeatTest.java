package saddlebar.ui.kiln;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import saddlebar.production.kiln.RecordedFiring;

class TypedHeatTest {
    @Test
    void asPeopleTypeIt() {
        assertEquals(OptionalDouble.of(150), TypedHeat.RATE.read("150 K/h"));
        assertEquals(150, TypedHeat.RATE.read("270 F/h").getAsDouble(), 1e-9);
        assertEquals(150, TypedHeat.RATE.read("2,5 K/min").getAsDouble(), 1e-9);
        assertEquals(OptionalDouble.of(0), TypedHeat.RATE.read("  "));
        assertEquals(OptionalDouble.of(540), TypedHeat.TEMPERATURE.read("540 \u00b0C"));
        assertEquals(648.889, TypedHeat.TEMPERATURE.read("1200 F").getAsDouble(), 1e-3);
        assertEquals(OptionalDouble.of(90), TypedHeat.TIME.read("1:30"));
        assertEquals(OptionalDouble.of(90), TypedHeat.TIME.read("1,5 h"));
        assertEquals(OptionalDouble.of(0), TypedHeat.TIME.read(""));
        for (String bad : new String[] {"hot", "540 K", "12 min", "", "5 5"}) {
            assertEquals(OptionalDouble.empty(), TypedHeat.TEMPERATURE.read(bad), bad);
        }
        assertEquals(OptionalDouble.empty(), TypedHeat.RATE.read("150 C"));
        assertEquals(OptionalDouble.empty(), TypedHeat.TIME.read("1:75"));
        assertEquals(Optional.of(new RecordedFiring.Witness("A1", 652)), Typed.witness("A1 652"));
        assertEquals("back left", Typed.witness("back left: 1206 F").orElseThrow().place());
        assertEquals(Optional.empty(), Typed.witness("652"));
        assertEquals(Optional.empty(), Typed.witness("A1 2000"));
        assertEquals(OptionalDouble.of(9.4), Typed.kWh("9,4 kWh"));
        assertEquals(OptionalDouble.empty(), Typed.kWh("-1"));
    }

    /** What is shown can be typed again, in both languages. */
    @Property
    void whatIsShownIsRead(@ForAll @DoubleRange(min = 20, max = 1400) double value) {
        double tenth = Math.rint(value * 10) / 10;
        for (TypedHeat kind : TypedHeat.values()) {
            for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
                assertTrue(Math.abs(kind.read(kind.words(tenth, locale)).orElseThrow() - tenth) < 1e-9, kind.words(tenth, locale));
            }
        }
    }
}
