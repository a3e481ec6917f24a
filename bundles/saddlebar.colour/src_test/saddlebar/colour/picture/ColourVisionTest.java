package saddlebar.colour.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.api.Test;

import saddlebar.colour.ColourDifference;
import saddlebar.colour.Srgb;

class ColourVisionTest {
    /** The model keeps what is without colour (Machado, Oliveira, Fernandes 2009): a wrong digit in a row of the matrix would tint gray. */
    @ParameterizedTest
    @EnumSource
    void grayStaysGray(ColourVision eye) {
        for (int code = 0; code <= 255; code += 15) {
            Srgb gray = Srgb.ofCodes(code, code, code);
            Srgb seen = eye.seen(gray);
            assertEquals(gray.red(), seen.red(), 3e-6);
            assertEquals(gray.green(), seen.green(), 3e-6);
            assertEquals(gray.blue(), seen.blue(), 3e-6);
        }
    }

    /**
     * Another model: Vienot, Brettel, Mollon, Digital video colourmaps for checking the legibility of displays by dichromats, Color Res. Appl. 24,
     * 1999, replaces the lacking cone's answer from the other two (RGB to LMS and the two replacements as printed there, from memory). The models
     * differ in detail but agree in what a red-green blind eye sees: within 16 in CIEDE2000 where ordinary eyes see the same colours up to 60 away
     * from that.
     */
    @ParameterizedTest
    @CsvSource({"#c04030,PROTANOPE", "#408040,PROTANOPE", "#e0c040,PROTANOPE", "#3060b0,PROTANOPE", "#c04030,DEUTERANOPE", "#408040,DEUTERANOPE",
            "#e0c040,DEUTERANOPE",
            "#3060b0,DEUTERANOPE"})
    void likeTheModelOf1999(String hex, ColourVision eye) {
        Srgb colour = Srgb.parse(hex).orElseThrow();
        Srgb other = vienot(colour, eye);
        double apart = ColourDifference.ciede2000(eye.seen(colour).lab(), other.clipped().lab());
        assertTrue(apart < 16, hex + " " + eye + " apart " + apart);
    }

    private static Srgb vienot(Srgb c, ColourVision eye) {
        double l = 17.8824 * c.red() + 43.5161 * c.green() + 4.11935 * c.blue();
        double m = 3.45565 * c.red() + 27.1554 * c.green() + 3.86714 * c.blue();
        double s = 0.0299566 * c.red() + 0.184309 * c.green() + 1.46709 * c.blue();
        if (eye == ColourVision.PROTANOPE) {
            l = 2.02344 * m - 2.52581 * s;
        } else {
            m = 0.494207 * l + 1.24827 * s;
        }
        return new Srgb(0.080944 * l - 0.130504 * m + 0.116721 * s, -0.0102485 * l + 0.0540194 * m - 0.113615 * s, -0.000365294 * l - 0.00412163 * m
                + 0.693513 * s);
    }

    /** Ruby and dark green that ordinary eyes tell apart at once come together for the red-green blind; blue and yellow do not. */
    @Test
    void redAndGreenComeTogether() {
        Srgb red = Srgb.parse("#b0603c").orElseThrow();
        Srgb green = Srgb.parse("#7d7c2c").orElseThrow();
        double usual = ColourDifference.ciede2000(red.lab(), green.lab());
        double deutan = ColourDifference.ciede2000(ColourVision.DEUTERANOPE.seen(red).lab(), ColourVision.DEUTERANOPE.seen(green).lab());
        assertTrue(deutan < usual / 2.5, usual + " to " + deutan);
        Srgb blue = Srgb.parse("#4060c0").orElseThrow();
        Srgb yellow = Srgb.parse("#d0c040").orElseThrow();
        double still = ColourDifference.ciede2000(ColourVision.DEUTERANOPE.seen(blue).lab(), ColourVision.DEUTERANOPE.seen(yellow).lab());
        assertTrue(still > 40, "still " + still);
    }

    /**
     * The rows of the paper's table for full severity (Machado, Oliveira, Fernandes 2009, as ten public transcriptions of it agree), found back from what the
     * eyes make of gray with a little of one channel more: the rows add up to 1, so gray stays and the rest is the matrix's column.
     */
    @ParameterizedTest
    @CsvSource({"PROTANOPE,0.152286 1.052583 -0.204868 0.114503 0.786281 0.099216 -0.003882 -0.048116 1.051998",
            "DEUTERANOPE,0.367322 0.860646 -0.227968 0.280085 0.672501 0.047413 -0.011820 0.042940 0.968881",
            "TRITANOPE,1.255528 -0.076749 -0.178779 -0.078411 0.930809 0.147602 0.004733 0.691367 0.303900"})
    void asThePaperPrintsThem(ColourVision eye, String printed) {
        double[] rows = Arrays.stream(printed.split(" ")).mapToDouble(Double::parseDouble).toArray();
        double more = 0.25;
        for (int column = 0; column < 3; column++) {
            Srgb seen = eye.seen(new Srgb(0.5 + (column == 0 ? more : 0), 0.5 + (column == 1 ? more : 0), 0.5 + (column == 2 ? more : 0)));
            assertEquals(rows[column], (seen.red() - 0.5) / more, 5e-6);
            assertEquals(rows[3 + column], (seen.green() - 0.5) / more, 5e-6);
            assertEquals(rows[6 + column], (seen.blue() - 0.5) / more, 5e-6);
        }
    }

    /** Red is dark to those without long-wave cones. */
    @Test
    void redIsDarkToProtanopes() {
        Srgb red = Srgb.parse("#ff0000").orElseThrow();
        assertTrue(ColourVision.PROTANOPE.seen(red).lab().l() < red.lab().l() - 10);
    }

    @ParameterizedTest
    @EnumSource
    void pictureAndColourAgree(ColourVision eye) {
        Srgb colour = Srgb.parse("#b0603c").orElseThrow();
        var picture = new LinearPicture(1, 1, new float[] {(float) colour.red(), (float) colour.green(), (float) colour.blue()});
        LinearPicture seen = eye.seen(picture);
        assertEquals(eye.seen(colour).red(), seen.at(0, 0, 0), 1e-6);
        assertEquals(eye.seen(colour).blue(), seen.at(0, 0, 2), 1e-6);
    }
}
