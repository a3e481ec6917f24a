package saddlebar.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class GlassTest {
    /**
     * Fresnel at n = 1.52: 0.042580 a face, 0.918318 for a clear sheet; 0.60 at 3 mm is 0.69145 at 2 and 0.52064 at 4 (arithmetic of the formula by
     * hand).
     */
    @Test
    void thickness() {
        Glass glass = Glass.measured("tint", Spectrum.flat(.60), 3);
        assertEquals(.042580, glass.faceLoss(), 5e-7);
        assertEquals(.918318, glass.clearLimit(), 5e-7);
        assertEquals(.69145, glass.atThickness(2).transmittance().at(40), 1e-5);
        assertEquals(.52064, glass.atThickness(4).transmittance().at(0), 1e-5);
    }

    @Property
    void thereAndBack(@ForAll @DoubleRange(min = 0.01, max = 1) double share, @ForAll @DoubleRange(min = 1, max = 12) double mm) {
        Glass glass = Glass.measured("g", Spectrum.flat(share), 3);
        assertEquals(share, glass.atThickness(mm).atThickness(3).transmittance().at(7), 1e-12);
        double other = glass.atThickness(mm).transmittance().at(7);
        assertTrue(mm >= 3 ? other <= share + 1e-15 : other >= share - 1e-15);
    }

    /** Two sheets of 1.5 mm fused are one of 3 mm; with air between, the inner faces cost (1-R)/(1+R) once more. */
    @Property
    void layers(@ForAll @DoubleRange(min = 0.01, max = 0.9) double share) {
        Glass three = Glass.measured("g", Spectrum.flat(share), 3);
        Glass thin = three.atThickness(1.5);
        assertEquals(share, GlassLayers.fused(List.of(thin, thin)).at(3), 1e-12);
        assertEquals(share * three.clearLimit(), GlassLayers.withAir(List.of(thin, thin)).at(3), 1e-12);
        assertEquals(share, GlassLayers.fused(List.of(three)).at(3), 1e-12);
        assertEquals(share, GlassLayers.withAir(List.of(three)).at(3), 0);
    }

    /** A deep blue twice as thick: the wavelengths decide, the three channels alone come out another colour. Neutral glass is the same both ways. */
    @Test
    void channelsAreOnlyAnApproximation() {
        Srgb blue = Srgb.parse("#4585b6").orElseThrow();
        Lab spectral = Appearance.of(Glass.coloured("blue", blue, 3).atThickness(9).transmittance(), Light.D65).lab();
        Lab channels = new ChannelGlass(blue, 3, Glass.SODA_LIME_INDEX).atThickness(9).lab();
        double apart = ColourDifference.ciede2000(spectral, channels);
        assertTrue(apart > 2 && apart < 15, "apart by " + apart);
        Srgb gray = Srgb.parse("#909090").orElseThrow();
        Lab thick = Appearance.of(Glass.coloured("gray", gray, 3).atThickness(9).transmittance(), Light.D65).lab();
        assertEquals(0, ColourDifference.ciede2000(thick, new ChannelGlass(gray, 3, Glass.SODA_LIME_INDEX).atThickness(9).lab()), 1e-6);
    }

    @Test
    void aReadingBrighterThanClearGlassIsKept() {
        Glass white = Glass.coloured("paper white", Srgb.parse("#ffffff").orElseThrow(), 3);
        assertEquals(1, white.atThickness(6).transmittance().at(11), 1e-12);
    }
}
