package saddlebar.colour.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.concurrent.CancellationException;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

import saddlebar.model.work.Work;

class LightSpreadTest {
    private static LinearPicture random(int width, int height, long seed) {
        var random = new Random(seed);
        float[] rgb = new float[3 * width * height];
        for (int i = 0; i < rgb.length; i++) {
            rgb[i] = random.nextInt(4) == 0 ? random.nextFloat() : 0;
        }
        return new LinearPicture(width, height, rgb);
    }

    private static double light(LinearPicture picture, int channel) {
        double sum = 0;
        for (int i = channel; i < picture.rgb().length; i += 3) {
            sum += picture.rgb()[i];
        }
        return sum;
    }

    @Property(tries = 60)
    void noLightIsLostAndTheGivenPictureStays(@ForAll @IntRange(min = 1, max = 40) int width, @ForAll @IntRange(min = 1, max = 40) int height,
            @ForAll @DoubleRange(min = 0, max = 30) double radius, @ForAll @IntRange(min = 0, max = 9999) int seed) {
        LinearPicture picture = random(width, height, seed);
        float[] before = picture.rgb().clone();
        LinearPicture after = new LightSpread(.2, .5, 1, radius).spread(picture, Work.UNWATCHED);
        assertArrayEquals(before, picture.rgb());
        for (int channel = 0; channel < 3; channel++) {
            assertEquals(light(picture, channel), light(after, channel), 1e-4 * (1 + light(picture, channel)));
        }
    }

    /** One bright px: the variance of what is laid round it is that of the two bell curves, s^2 and 9 s^2 in equal parts, along x and along y. */
    @Test
    void spreadsAsFarAsTold() {
        int side = 401;
        double radius = 8;
        float[] rgb = new float[3 * side * side];
        rgb[3 * (200 * side + 200) + 2] = 1;
        LinearPicture after = new LightSpread(0, 0, 1, radius).spread(new LinearPicture(side, side, rgb), Work.UNWATCHED);
        double sum = 0;
        double overX = 0;
        double overY = 0;
        for (int y = 0; y < side; y++) {
            for (int x = 0; x < side; x++) {
                double value = after.at(x, y, 2);
                sum += value;
                overX += value * (x - 200) * (x - 200);
                overY += value * (y - 200) * (y - 200);
                assertEquals(value, after.at(400 - x, y, 2), 1e-6);
                assertEquals(0, after.at(x, y, 0), 0);
            }
        }
        assertEquals(1, sum, 1e-4);
        assertEquals((1 + 9) * radius * radius / 2, overX, 0.02 * 320);
        assertEquals(overX, overY, 0.1);
    }

    /** The steps to whole px cost little: three means of odd width come within 0.35 px of any wanted deviation above 2. */
    @Property
    void runningMeansComeNear(@ForAll @DoubleRange(min = 2, max = 300) double deviation) {
        double variance = 0;
        for (int half : LightSpread.halfWidths(deviation)) {
            variance += half * (half + 1) / 3.0;
        }
        assertEquals(deviation, Math.sqrt(variance), 0.35);
    }

    @Test
    void flatStaysFlatAndNoneChangesNothing() {
        float[] rgb = new float[3 * 50 * 20];
        java.util.Arrays.fill(rgb, .37f);
        LinearPicture flat = new LinearPicture(50, 20, rgb);
        assertArrayEquals(rgb, LightSpread.usual(12).spread(flat, Work.UNWATCHED).rgb(), 1e-5f);
        LinearPicture any = random(30, 30, 1);
        assertArrayEquals(any.rgb(), LightSpread.NONE.spread(any, Work.UNWATCHED).rgb());
    }

    /** Blue light creeps further over a dark bar than red. */
    @Test
    void blueEatsIntoTheLead() {
        int width = 60;
        float[] rgb = new float[3 * width];
        for (int x = 0; x < width; x++) {
            for (int channel = 0; channel < 3; channel++) {
                rgb[3 * x + channel] = x < 28 || x > 31 ? 1 : 0;
            }
        }
        LinearPicture after = LightSpread.usual(3).spread(new LinearPicture(width, 1, rgb), Work.UNWATCHED);
        assertTrue(after.at(30, 0, 2) > after.at(30, 0, 0) && after.at(30, 0, 0) > 0);
    }

    @Test
    void stopsWhenAsked() {
        Work stopped = new Work() {
            @Override
            public void advance(long units) {
                throw new AssertionError("tells no units");
            }

            @Override
            public void checkpoint() {
                throw new CancellationException();
            }
        };
        assertThrows(CancellationException.class, () -> LightSpread.usual(3).spread(random(9, 9, 2), stopped));
    }
}
