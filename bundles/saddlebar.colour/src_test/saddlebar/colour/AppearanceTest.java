package saddlebar.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AppearanceTest {
    /** A sheet of which only the screen colour is known comes out in daylight as it was told. */
    @ParameterizedTest
    @ValueSource(strings = {"#f4f7f4", "#ecbb45", "#8b4225", "#1e2f60", "#4c9d89", "#d28a8f", "#ff0000", "#00ff00", "#0000ff", "#ffffff", "#000000"})
    void daylightGivesBackTheColour(String hex) {
        Glass glass = Glass.coloured("glass", Srgb.parse(hex).orElseThrow(), 3);
        Appearance seen = Appearance.of(glass.transmittance(), Light.D65);
        assertEquals(hex, seen.screen().shown().hex());
        assertEquals(0, ColourDifference.ciede2000(seen.lab(), Srgb.parse(hex).orElseThrow().lab()), 0.01); // the two whites differ by 0.02
    }

    /** Neutral glass is neutral in every light to an eye that is used to it, and shows the light's own colour to one that is not. */
    @Test
    void theEyeGetsUsedToTheLight() {
        for (Light light : List.of(Light.D65, Light.A, Light.dusk(), Light.daylight(5003))) {
            Appearance seen = Appearance.of(Spectrum.flat(.5), light);
            assertEquals(.5, seen.transmittance(), 1e-12);
            assertEquals(0, seen.lab().chroma(), 1e-9);
            Srgb shown = seen.screen().shown();
            assertEquals(shown.red(), shown.blue(), 1e-9);
            assertEquals(.5, shown.green(), 1e-9);
        }
        Srgb lamp = Appearance.of(Spectrum.flat(.5), Light.A).unadapted().shown();
        assertTrue(lamp.red() > lamp.green() && lamp.green() > lamp.blue());
        Srgb dusk = Appearance.of(Spectrum.flat(.5), Light.dusk()).unadapted().shown();
        assertTrue(dusk.red() < dusk.green() && dusk.green() < dusk.blue());
    }

    /** Blue glass loses light under a lamp, amber gains: a lamp has little blue. */
    @Test
    void lampsStarveBlueGlass() {
        Spectrum blue = Glass.coloured("blue", Srgb.parse("#1e2f60").orElseThrow(), 3).transmittance();
        Spectrum amber = Glass.coloured("amber", Srgb.parse("#dc8a1c").orElseThrow(), 3).transmittance();
        assertTrue(Appearance.of(blue, Light.A).transmittance() < Appearance.of(blue, Light.D65).transmittance());
        assertTrue(Appearance.of(amber, Light.A).transmittance() > Appearance.of(amber, Light.D65).transmittance());
    }
}
