package saddlebar.production.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class PaintLookTest {
    /**
     * The equation as it was published tells the covered share from two densities read in transmission, D = -log10 T: a = (1 - 10^-Dtint) /
     * (1 - 10^-Dsolid). What we show must give that share back. Source: Murray, A. (1936). J. Franklin Inst. 221(6), 721-744.
     */
    @Property
    void theShareIsWhatADensitometerWouldFind(@ForAll @DoubleRange(min = 0, max = 1) double covered,
            @ForAll @DoubleRange(min = 0.05, max = 3) double solidDensity) {
        double solid = Math.pow(10, -solidDensity);
        double tintDensity = -Math.log10(new PaintLook(solid, solid, solid).through(1, covered));
        assertEquals(covered, (1 - Math.pow(10, -tintDensity)) / (1 - Math.pow(10, -solidDensity)), 1e-12);
    }

    @Property
    void moreNeverLetsMoreThrough(@ForAll @DoubleRange(min = 0, max = 1) double one, @ForAll @DoubleRange(min = 0, max = 1) double other,
            @ForAll @DoubleRange(min = 0, max = 1) double solid) {
        PaintLook paint = new PaintLook(solid, solid, solid);
        double least = paint.through(0, Math.max(one, other));
        assertTrue(least <= paint.through(0, Math.min(one, other)) && least >= solid - 1e-15);
    }

    /** Mid gray 0.5 in light is code value 188 of 255 in sRGB (IEC 61966-2-1); codes go there and back unchanged. */
    @Test
    void lightAndCodesAreThoseOfSrgb() {
        assertEquals(188, ScreenLight.codeOf((int) Math.round(0.5 * ScreenLight.FULL_LIGHT)));
        assertEquals(0.2140, ScreenLight.light(0.5), 5e-5);
        for (int code = 0; code < 256; code++) {
            assertEquals(code, ScreenLight.codeOf(ScreenLight.lightOf(code)));
        }
    }
}
