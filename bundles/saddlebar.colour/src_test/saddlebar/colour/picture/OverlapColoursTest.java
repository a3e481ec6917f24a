package saddlebar.colour.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import saddlebar.colour.Appearance;
import saddlebar.colour.Glass;
import saddlebar.colour.Light;
import saddlebar.colour.Matt;
import saddlebar.colour.PaintFilm;
import saddlebar.colour.PrintedGlass;
import saddlebar.colour.Spectrum;
import saddlebar.colour.Srgb;

class OverlapColoursTest {
    private static final List<PaintFilm> FILMS = List.of(PaintFilm.coloured("a", Srgb.parse("#1c1512").orElseThrow()),
            PaintFilm.coloured("b", Srgb.parse("#6b4f3f").orElseThrow()), PaintFilm.coloured("c", Srgb.parse("#e0a030").orElseThrow()));
    private static final Spectrum PALE = Glass.coloured("pale", Srgb.parse("#b8c8c0").orElseThrow(), 3).transmittance();

    private static float[] mixed(OverlapColours colours, double... covered) {
        float[] shares = new float[covered.length];
        for (int i = 0; i < covered.length; i++) {
            shares[i] = (float) covered[i];
        }
        float[] work = new float[3 << covered.length];
        colours.mix(shares, 0, 1, work);
        return new float[] {work[0], work[1], work[2]};
    }

    /** Mixing the overlaps' colours is the same as Neugebauer's mixing of the spectra (the slow way), for colours that the screen can show. */
    @Property(tries = 60)
    void mixesAsTheSpectraDo(@ForAll @Size(3) List<@DoubleRange(min = 0, max = 1) Double> covered) {
        for (Light light : List.of(Light.D65, Light.A, Light.dusk())) {
            List<Matt> matts = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                matts.add(new Matt(FILMS.get(i), covered.get(i)));
            }
            Srgb slow = Appearance.of(PrintedGlass.of(PALE, matts), light).screen().shown();
            float[] fast = mixed(OverlapColours.of(PALE, FILMS, light, true), covered.get(0), covered.get(1), covered.get(2));
            // float shares and a chroma that overlaps of deep stain lose on the way to the screen
            assertArrayEquals(new double[] {slow.red(), slow.green(), slow.blue()}, new double[] {fast[0], fast[1], fast[2]}, 2e-3);
        }
    }

    /** The worked example of the design for one matt in each channel: .8 with paint .1 at .35 is .548; two matts .1 and .5 at one half: .33. */
    @Test
    void channelsMixByHand() {
        double[] glass = {0.8, 0.8, 0.8};
        assertEquals(0.548, mixed(OverlapColours.ofChannels(glass, List.of(new double[] {0.1, 0.1, 0.1})), 0.35)[0], 1e-6);
        assertEquals(0.33, mixed(OverlapColours.ofChannels(glass, List.of(new double[] {0.1, 0.1, 0.1}, new double[] {0.5, 0.5, 0.5})), 0.5, 0.5)[1], 1e-6);
    }

    @Test
    void bareGlassIsItsColourInDaylight() {
        Srgb seen = OverlapColours.of(Glass.coloured("g", Srgb.parse("#4585b6").orElseThrow(), 3).transmittance(), FILMS, Light.D65, true).bare();
        assertEquals("#4585b6", seen.hex());
    }

    /** To an eye that comes from daylight a lamp behind gray glass is yellow; to one that is used to it, gray. (Clear glass would be too bright a yellow.) */
    @Test
    void theEyeGetsUsedToTheLamp() {
        Spectrum gray = Spectrum.flat(0.3);
        Srgb used = OverlapColours.of(gray, List.of(), Light.A, true).bare();
        Srgb fresh = OverlapColours.of(gray, List.of(), Light.A, false).bare();
        assertEquals(used.red(), used.blue(), 1e-3);
        assertTrue(fresh.blue() < fresh.red() / 2, fresh.toString());
    }

    /** A glass that lets through a narrow band of green only is stronger than any sRGB screen. */
    @Test
    void aNarrowGreenIsMarked() {
        Spectrum narrow = Spectrum.each(band -> Math.abs(Spectrum.nmOf(band) - 520) <= 15 ? 0.9 : 0.001);
        assertTrue(OverlapColours.of(narrow, List.of(), Light.D65, true).outOfGamut());
        assertFalse(OverlapColours.of(PALE, List.of(), Light.D65, true).outOfGamut());
    }

    @Test
    void tooManyPaintsAreOurFault() {
        List<PaintFilm> nine = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            nine.add(FILMS.get(0));
        }
        assertThrows(IllegalArgumentException.class, () -> OverlapColours.of(PALE, nine, Light.D65, true));
    }
}
