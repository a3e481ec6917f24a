package saddlebar.colour;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LightTest {
    /**
     * White points of CIE 015: D65 95.047 100 108.883, A 109.850 100 35.585; the 5 nm table over 380 to 780 nm gives these a little lower. E: 100
     * each by definition.
     */
    @ParameterizedTest
    @CsvSource({"D65,95.043,108.880,.31272,.32903", "A,109.849,35.583,.44758,.40745", "E,100.001,100.001,.33333,.33333"})
    void whitePoints(String name, double x, double z, double cx, double cy) {
        Light light = name.equals("D65") ? Light.D65 : name.equals("A") ? Light.A : Light.E;
        Xyz white = light.white();
        assertEquals(x, white.x(), 0.001);
        assertEquals(100, white.y(), 1e-9);
        assertEquals(z, white.z(), 0.001);
        assertEquals(cx, white.chromaticityX(), 1e-5);
        assertEquals(cy, white.chromaticityY(), 1e-5);
    }

    /**
     * D65 is the daylight of 6500 x 1.4388/1.4380 K: the formula gives the standard's own table (ISO/CIE 11664-2), which comes from another file
     * here.
     */
    @Test
    void formulaGivesTheTableOfD65() {
        assertArrayEquals(Light.D65.power().toArray(), Light.daylight(6500 * 1.4388 / 1.4380).power().toArray(), 0.001);
    }

    /** Chromaticities of D50, D55, D75 as CIE 015 prints them (from memory), at 5003, 5503 and 7504 K: nominal x 1.4388/1.4380. */
    @ParameterizedTest
    @CsvSource({"5003,.3457,.3585", "5503,.3324,.3474", "7504,.2990,.3149"})
    void otherDaylights(double cctK, double x, double y) {
        Xyz white = Light.daylight(cctK).white();
        assertEquals(x, white.chromaticityX(), 1.5e-4);
        assertEquals(y, white.chromaticityY(), 1.5e-4);
    }

    @Test
    void duskIsBluerThanNorthLight() {
        assertTrue(Light.dusk().white().chromaticityX() < Light.D65.white().chromaticityX());
        assertTrue(Light.dusk().white().z() > Light.D65.white().z());
    }

    @Test
    void daylightKeepsToItsRange() {
        assertThrows(IllegalArgumentException.class, () -> Light.daylight(3999));
        assertThrows(IllegalArgumentException.class, () -> Light.daylight(25_001));
        assertThrows(IllegalArgumentException.class, () -> Light.daylight(Double.NaN));
    }
}
