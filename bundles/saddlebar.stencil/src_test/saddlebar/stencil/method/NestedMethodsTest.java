package saddlebar.stencil.method;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import saddlebar.model.problem.Refusal;
import saddlebar.stencil.BitPicture;
import saddlebar.stencil.Fields;
import saddlebar.stencil.ScreeningMethod;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.tone.ToneTable;

/** Methods that decide each px by a threshold of its place, with dots no smaller than asked for: {@code hybrid}, {@code stipple}; and {@code lines}. */
class NestedMethodsTest {
    /** Cells of 30 px, smallest dots of 8 px a side. */
    private static final ScreeningRecipe RECIPE = ScreeningRecipe.withDefaults().withDotMm(0.17).withAngleDeg(0);

    /** No seam: what is painted in a tone is painted in every darker one. */
    @ParameterizedTest
    @ValueSource(strings = {"hybrid", "stipple", "lines"})
    void tonesLieWithinDarkerOnes(String key) {
        ScreeningMethod method = ScreeningMethods.ownMethods().method(key);
        BitPicture before = Fields.flat(method, RECIPE, 0, 400, 300);
        for (int percent = 3; percent <= 99; percent += 4) {
            BitPicture bits = Fields.flat(method, RECIPE, percent / 100.0, 400, 300);
            for (int i = 0; i < bits.words().length; i++) {
                assertEquals(0, before.words()[i] & ~bits.words()[i], key + " at " + percent);
            }
            before = bits;
        }
    }

    /** At 2 % all dots have the smallest size, at 98 % all holes. */
    @ParameterizedTest
    @ValueSource(strings = {"hybrid", "stipple"})
    void noDotIsSmallerThanAskedFor(String key) {
        ScreeningMethod method = ScreeningMethods.ownMethods().method(key);
        BitPicture light = Fields.flat(method, RECIPE, 0.02, 960, 960);
        assertTrue(smallest(light) >= 55, "dot of " + smallest(light) + " px");
        assertEquals(64, Clusters.meanSize(light), 8);
        assertEquals(0.02, light.count() / 921600.0, 0.002);
        BitPicture dark = inverse(Fields.flat(method, RECIPE, 0.98, 960, 960));
        assertTrue(smallest(dark) >= 55, "hole of " + smallest(dark) + " px");
        assertEquals(64, Clusters.meanSize(dark), 8);
    }

    /** The middle of hybrid is am, px by px. */
    @Test
    void theMiddleIsAm() {
        ScreeningRecipe recipe = RECIPE.withAngleDeg(22.5);
        for (double tone : new double[] {0.2, 0.5, 0.8}) {
            assertEquals(Fields.flat(new AmMethod(), recipe, tone, 300, 200), Fields.flat(new HybridMethod(), recipe, tone, 300, 200));
        }
    }

    /** Scattered dots stand far apart: little power below half their principal frequency. Limit our own; chance would have 1. */
    @Test
    void stipplesStandApart() {
        BitPicture bits = Fields.flat(new StippleMethod(), RECIPE.withLpi(75).withDotMm(0.1), 0.05, 512, 512);
        double dotsAPx = Clusters.count(bits) / (512.0 * 512);
        double low = Spectrum.of(bits).meanBelow(Math.sqrt(dotsAPx) / 2) / (bits.count() / (double) Clusters.count(bits));
        assertTrue(low < 0.3, "power " + low);
    }

    @Test
    void dotsTooLargeForTheirPlace() {
        assertThrows(Refusal.class, () -> Fields.flat(new HybridMethod(), RECIPE.withDotMm(0.5), 0.5, 64, 64));
        assertThrows(Refusal.class, () -> Fields.flat(new HybridMethod(), RECIPE.withDot("Rhomboid"), 0.5, 64, 64));
        assertThrows(Refusal.class, () -> Fields.flat(new StippleMethod(), RECIPE.withDotMm(0.5), 0.5, 64, 64));
    }

    /** Straight lines of 25 px: of 50 % coverage 12 or 13 px of every 25 in a column. */
    @Test
    void straightLines() {
        BitPicture bits = Fields.flat(new LinesMethod(), RECIPE.withMethod("lines").withLpi(48), 0.5, 100, 250);
        for (int x = 0; x < 100; x += 9) {
            int painted = 0;
            for (int y = 0; y < 250; y++) {
                painted += bits.get(x, y) ? 1 : 0;
            }
            assertEquals(125, painted, 5);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"straight", "rings", "rings:-0.2,0.1", "waves:8,3"})
    void everyCourseKeepsTheTone(String course) {
        for (double tone : new double[] {0.05, 0.25, 0.5, 0.75, 0.95}) {
            BitPicture bits = Fields.flat(new LinesMethod(), RECIPE.withCourse(course), tone, 900, 900);
            assertEquals(tone, bits.count() / 810000.0, 0.01, course);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "zigzag", "rings:1", "rings:a,b", "waves", "waves:0,1", "waves:5,6", "straight:1"})
    void coursesThatAreNone(String course) {
        assertThrows(Refusal.class, () -> RECIPE.withCourse(course));
    }

    /**
     * A picture of a round hill, darkest in the middle: its contours are rings. At most places the lines' phase must change along the radius and not
     * along the ring; and lines keep their distance.
     */
    @Test
    void linesFollowTheArtwork() throws IOException {
        ScreeningRecipe recipe = RECIPE.withCourse("artwork").withLpi(40);
        LinesMethod lines = new LinesMethod();
        assertTrue(lines.looksAhead(recipe));
        assertThrows(Refusal.class, () -> lines.start(recipe, ToneTable.linear(), 100, 100));
        ContourPhase phase = ContourPhase.of(Fields.gray(100, 100, 100, (x, y) -> (int) Math.min(255, 5 * Math.hypot(x - 50, y - 50))), 50, recipe);
        double along = 0;
        double across = 0;
        int near = 0;
        int places = 0;
        for (int degrees = 20; degrees < 160; degrees += 5) { // above and below; at the sides two courses of lines meet
            for (int r = 300; r <= 800; r += 100) {
                double c = Math.cos(Math.toRadians(degrees));
                double s = Math.sin(Math.toRadians(degrees));
                double x = 1200 + r * c;
                double y = 1200 + r * s;
                double radial = (phase.at(x + 20 * c, y + 20 * s) - phase.at(x - 20 * c, y - 20 * s)) / 40;
                double ring = (phase.at(x - 20 * s, y + 20 * c) - phase.at(x + 20 * s, y - 20 * c)) / 40;
                across += Math.abs(radial);
                along += Math.abs(ring);
                near += Math.abs(Math.hypot(radial, ring) * 30 - 1) < 0.2 ? 1 : 0;
                places++;
            }
        }
        assertTrue(across > 2 * along, across + " across against " + along + " along");
        assertTrue(near > 0.7 * places, near + " of " + places + " keep their distance");
    }

    private static BitPicture inverse(BitPicture bits) {
        BitPicture inverse = new BitPicture(bits.widthPx(), bits.heightPx());
        for (int y = 0; y < bits.heightPx(); y++) {
            for (int x = 0; x < bits.widthPx(); x++) {
                inverse.set(x, y, !bits.get(x, y));
            }
        }
        return inverse;
    }

    /** Px of the smallest cluster that does not touch the picture's edge. */
    private static int smallest(BitPicture bits) {
        return Clusters.sizesInside(bits).stream().mapToInt(Integer::intValue).min().orElseThrow();
    }
}
