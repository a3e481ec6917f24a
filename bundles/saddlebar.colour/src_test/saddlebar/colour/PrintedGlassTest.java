package saddlebar.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class PrintedGlassTest {
    private static PaintFilm film(double share) {
        return new PaintFilm("p", Spectrum.flat(share), 10);
    }

    /** Neugebauer by hand: .8 (.65 + .35 x .1) = .548; two inks at one half, .8 x .25 (1 + .1 + .5 + .05) = .33. */
    @Test
    void byHand() {
        Spectrum plain = Spectrum.flat(.8);
        assertEquals(.548, PrintedGlass.of(plain, List.of(new Matt(film(.1), .35))).at(5), 1e-12);
        assertEquals(.33, PrintedGlass.of(plain, List.of(new Matt(film(.1), .5), new Matt(film(.5), .5))).at(5), 1e-12);
    }

    /** Murray 1936: half covered by density 0.60206 on clear glass shows T 0.625, density 0.20412. */
    @Test
    void murrayDavies() {
        PaintFilm solid = film(StrictMath.pow(10, -0.60206));
        Spectrum printed = PrintedGlass.of(Spectrum.flat(1), List.of(new Matt(solid, .5)));
        assertEquals(.625, Light.D65.luminousShare(printed), 1e-6);
        assertEquals(.20412, new PaintFilm("printed", printed, 10).density(Light.D65), 1e-5);
        assertEquals(.60206, solid.density(Light.A), 1e-9);
    }

    /** Demichel's shares of two inks: (1-a)(1-b), a(1-b), (1-a)b, ab. */
    @Test
    void demichel() {
        double[] shares = PrintedGlass.demichel(.3, .6);
        assertEquals(.28, shares[0], 1e-12);
        assertEquals(.12, shares[1], 1e-12);
        assertEquals(.42, shares[2], 1e-12);
        assertEquals(.18, shares[3], 1e-12);
    }

    @Property
    void sharesAddUpAndMarginsAreTheCoverages(@ForAll("coverages") double[] coverages) {
        double[] shares = PrintedGlass.demichel(coverages);
        assertEquals(1, Arrays.stream(shares).sum(), 1e-12);
        for (int ink = 0; ink < coverages.length; ink++) {
            double margin = 0;
            for (int inks = 0; inks < shares.length; inks++) {
                margin += (inks >> ink & 1) * shares[inks];
            }
            assertEquals(coverages[ink], margin, 1e-12);
        }
    }

    @Provide
    Arbitrary<double[]> coverages() {
        return Arbitraries.oneOf(Arbitraries.doubles().between(0, 1), Arbitraries.of(0.0, 1.0)).array(double[].class).ofMaxSize(8);
    }

    /** Without n every paint acts as a factor 1 - a (1 - T): the order of printing does not matter, and more paint is never brighter. */
    @Property
    void factors(@ForAll @DoubleRange(min = 0, max = 1) double a, @ForAll @DoubleRange(min = 0, max = 1) double b, @ForAll @DoubleRange(min = 0,
            max = 1) double t,
            @ForAll @DoubleRange(min = 0, max = 1) double u) {
        Matt one = new Matt(film(t), a);
        Matt two = new Matt(film(u), b);
        double both = PrintedGlass.of(Spectrum.flat(.9), List.of(one, two)).at(0);
        assertEquals(.9 * (1 - a * (1 - t)) * (1 - b * (1 - u)), both, 1e-12);
        assertEquals(both, PrintedGlass.of(Spectrum.flat(.9), List.of(two, one)).at(0), 1e-12);
        assertTrue(both <= PrintedGlass.of(Spectrum.flat(.9), List.of(one)).at(0) + 1e-12);
    }

    @Property
    void yuleNielsenIsDarkerInTheMiddleAndTheSameAtTheEnds(@ForAll @DoubleRange(min = 0, max = 1) double a, @ForAll @DoubleRange(min = 1,
            max = 3) double n) {
        List<Matt> matt = List.of(new Matt(film(.1), a));
        double spread = PrintedGlass.of(Spectrum.flat(1), matt, n).at(0);
        double straight = PrintedGlass.of(Spectrum.flat(1), matt).at(0);
        assertTrue(spread <= straight + 1e-12);
        if (a == 0 || a == 1) {
            assertEquals(straight, spread, 1e-12);
        }
    }

    /** Yule and Nielsen, n = 2: solid density 1.5, tint 0.30 is a coverage of 0.355223 (the formula by hand). */
    @Test
    void yuleNielsenByHand() {
        Matt matt = new Matt(film(StrictMath.pow(10, -1.5)), 0.355223);
        assertEquals(StrictMath.pow(10, -0.30), PrintedGlass.of(Spectrum.flat(1), List.of(matt), 2).at(0), 1e-6);
        Matt straight = new Matt(film(StrictMath.pow(10, -1.5)), 0.515102);
        assertEquals(StrictMath.pow(10, -0.30), PrintedGlass.of(Spectrum.flat(1), List.of(straight)).at(0), 1e-6);
    }

    @Test
    void twiceTheFilmIsTheFilmTwice() {
        PaintFilm film = PaintFilm.coloured("umber", Srgb.parse("#978773").orElseThrow());
        double[] twice = film.transmittance().times(film.transmittance()).toArray();
        double[] thick = film.atThickness(2 * PaintFilm.USUAL_UM).transmittance().toArray();
        for (int band = 0; band < twice.length; band++) {
            assertEquals(twice[band], thick[band], 1e-12);
        }
    }

    @Test
    void gain() {
        assertEquals(.65, Matt.gained(.5, .15), 1e-12);
        assertEquals(0, Matt.gained(0, .15), 0);
        assertEquals(1, Matt.gained(1, .15), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> new Matt(film(.5), 1.01));
        assertThrows(IllegalArgumentException.class, () -> new Matt(film(.5), Double.NaN));
    }

    /** By hand: glass 1, solid .60; .80 needs one half, .60 the solid, .50 is darker than this paint can be. */
    @Test
    void coverageForATransmittance() {
        Spectrum clear = Spectrum.flat(1);
        assertEquals(.5, Matt.coverageFor(clear, film(.6), Light.D65, .8).orElseThrow(), 1e-12);
        assertEquals(1, Matt.coverageFor(clear, film(.6), Light.D65, .6).orElseThrow(), 1e-12);
        assertTrue(Matt.coverageFor(clear, film(.6), Light.D65, .5).isEmpty());
        assertTrue(Matt.coverageFor(Spectrum.flat(.7), film(.6), Light.D65, .8).isEmpty());
        assertTrue(Matt.coverageFor(clear, film(1), Light.D65, 1).isEmpty());
    }

    @Property(tries = 100)
    void coverageThereAndBack(@ForAll @DoubleRange(min = 0, max = 1) double a) {
        Spectrum plain = Glass.coloured("amber", Srgb.parse("#dc8a1c").orElseThrow(), 3).transmittance();
        PaintFilm umber = PaintFilm.coloured("umber", Srgb.parse("#978773").orElseThrow());
        double shown = Light.A.luminousShare(PrintedGlass.of(plain, List.of(new Matt(umber, a))));
        assertEquals(a, Matt.coverageFor(plain, umber, Light.A, shown).orElseThrow(), 1e-9);
    }

    /** Yellow where weak, and the stronger the redder: lemon, amber, orange. The band's middle has the density told. */
    @Test
    void silverStainRunsFromLemonToOrange() {
        double hue = 180;
        for (double density : new double[] {0.3, 1, 2, 4, 6}) {
            Appearance seen = Appearance.of(SilverStain.ofDensity(density).film("stain").transmittance(), Light.D65);
            assertTrue(seen.lab().hueDeg() < hue, "hue " + seen.lab().hueDeg() + " at density " + density);
            hue = seen.lab().hueDeg();
            assertTrue(hue > 45 && hue < 115, "hue " + hue);
        }
        Spectrum band = SilverStain.ofDensity(2).film("stain").transmittance();
        assertEquals(.01, band.at((420 - 380) / 5), 1e-12);
        assertEquals(.01, band.least(), 1e-12);
    }
}
