package saddlebar.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class ScreenAndLabTest {
    /** CIE D65 to which the published Lab values of the primaries refer. */
    private static final Xyz WHITE = new Xyz(95.047, 100, 108.883);

    /** Primaries of IEC 61966-2-1 and their CIELAB, values as commonly published for sRGB. */
    @ParameterizedTest
    @CsvSource({"255,0,0,53.23,80.11,67.22", "0,255,0,87.74,-86.18,83.18", "0,0,255,32.30,79.20,-107.86", "128,128,128,53.585,0,0"})
    void labOfThePrimaries(int r, int g, int b, double l, double a, double bb) {
        Lab lab = Lab.of(Srgb.ofCodes(r, g, b).xyz(), WHITE);
        assertEquals(l, lab.l(), 0.006);
        assertEquals(a, lab.a(), 0.006);
        assertEquals(bb, lab.b(), 0.018); // blue's b* by the four-digit matrix is 0.01 off
    }

    @Test
    void xyzOfRed() {
        Xyz red = Srgb.ofCodes(255, 0, 0).xyz();
        assertEquals(41.24, red.x(), 1e-9);
        assertEquals(21.26, red.y(), 1e-9);
        assertEquals(1.93, red.z(), 1e-9);
        assertEquals(21.586, Srgb.ofCodes(128, 128, 128).xyz().y(), 0.001);
    }

    /** Gray 188 is linear 0.503, darkness 0.497 (IEC 61966-2-1). */
    @Test
    void grayIsTakenAsLight() {
        assertEquals(0.503, Srgb.ofCodes(188, 188, 188).green(), 0.0005);
    }

    @Property
    void codeThereAndBack(@ForAll @IntRange(min = 0, max = 255) int r, @ForAll @IntRange(min = 0, max = 255) int g, @ForAll @IntRange(min = 0,
            max = 255) int b) {
        String hex = String.format("#%02x%02x%02x", r, g, b);
        Srgb colour = Srgb.parse(hex).orElseThrow();
        assertEquals(hex, colour.hex());
        assertEquals(hex, Srgb.of(colour.xyz()).hex());
        assertEquals(hex, Srgb.of(colour.lab().xyz(Srgb.WHITE)).hex());
        ScreenColour shown = ScreenColour.of(colour.xyz());
        assertFalse(shown.outOfGamut());
        assertEquals(hex, shown.shown().hex());
    }

    @Test
    void whatIsNoColour() {
        for (String text : new String[] {"", "#12345", "#1234567", "123456", "#12345g", "#+12345", "# 12345", "#１２３４５６"}) {
            assertTrue(Srgb.parse(text).isEmpty(), text);
        }
    }

    /** Lightness and hue stay, chroma goes, and a little more chroma could not be shown. */
    @Property
    void outOfGamutLosesChromaOnly(@ForAll @DoubleRange(min = 2, max = 98) double l, @ForAll @DoubleRange(min = 0, max = 360) double hueDeg) {
        double h = Math.toRadians(hueDeg);
        Lab strong = new Lab(l, 150 * Math.cos(h), 150 * Math.sin(h));
        ScreenColour screen = ScreenColour.of(strong.xyz(Srgb.WHITE));
        assertTrue(screen.outOfGamut());
        assertTrue(screen.chromaShare() > 0 && screen.chromaShare() < 1, "share " + screen.chromaShare());
        Lab shown = screen.shown().lab();
        assertEquals(l, shown.l(), 0.1);
        assertEquals(screen.chromaShare() * 150, shown.chroma(), 0.6);
        if (shown.chroma() > 5) {
            assertEquals(0, Math.sin(Math.toRadians(shown.hueDeg() - hueDeg)), 0.05);
        }
        double more = screen.chromaShare() * 1.001;
        assertFalse(Srgb.of(new Lab(l, more * strong.a(), more * strong.b()).xyz(Srgb.WHITE)).isShowable());
    }

    @Test
    void brighterThanWhiteIsWhite() {
        ScreenColour screen = ScreenColour.of(new Lab(110, 5, 5).xyz(Srgb.WHITE));
        assertTrue(screen.outOfGamut());
        assertEquals("#ffffff", screen.shown().hex());
    }

    /**
     * The primaries that ICC profiles of sRGB carry for D50 (0.9642 1 0.8249): IEC 61966-2-1 through linear Bradford; digits from memory of such
     * profiles.
     */
    @ParameterizedTest
    @CsvSource({"255,0,0,.4361,.2225,.0139", "0,255,0,.3851,.7169,.0971", "0,0,255,.1431,.0606,.7141"})
    void bradfordGivesTheProfilePrimaries(int r, int g, int b, double x, double y, double z) {
        Xyz adapted = new Bradford(Srgb.WHITE, new Xyz(96.42, 100, 82.49)).adapt(Srgb.ofCodes(r, g, b).xyz());
        assertEquals(x, adapted.x() / 100, 3e-4);
        assertEquals(y, adapted.y() / 100, 3e-4);
        assertEquals(z, adapted.z() / 100, 3e-4);
    }

    @Property
    void bradfordThereAndBack(@ForAll @DoubleRange(min = 0, max = 100) double x, @ForAll @DoubleRange(min = 0, max = 100) double y,
            @ForAll @DoubleRange(min = 0, max = 100) double z) {
        Xyz there = new Bradford(Light.D65.white(), Light.A.white()).adapt(new Xyz(x, y, z));
        Xyz back = new Bradford(Light.A.white(), Light.D65.white()).adapt(there);
        assertEquals(x, back.x(), 1e-9);
        assertEquals(y, back.y(), 1e-9);
        assertEquals(z, back.z(), 1e-9);
    }
}
