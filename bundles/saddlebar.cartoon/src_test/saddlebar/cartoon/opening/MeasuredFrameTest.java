package saddlebar.cartoon.opening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;

class MeasuredFrameTest {
    /** Sides 300 and 400, diagonals 500: square to the last digit. */
    @Test
    void pythagoras() {
        FrameFit fit = new MeasuredFrame(300, 400, 300, 400, 500, 500).fit();
        assertEquals(0, fit.outOfSquareDeg(), 1e-9);
        assertEquals(0, fit.outOfSquareMm(), 1e-8);
        assertEquals(0, fit.disagreementMm(), 1e-10);
        assertEquals(120_000, fit.shape().areaMm2(), 1e-6);
        assertEquals(List.of(), fit.problems());
    }

    /**
     * A rhombus of side 500 with diagonals 600 and 800: angles 2 atan(3/4) and its rest to 180, area 600 x 800 / 2; the end of a side stands 500 cos
     * off square.
     */
    @Test
    void rhombus() {
        FrameFit fit = new MeasuredFrame(500, 500, 500, 500, 800, 600).fit();
        double sharp = Math.toDegrees(2 * Math.atan2(3, 4));
        assertEquals(sharp, fit.cornersDeg()[0], 1e-8);
        assertEquals(180 - sharp, fit.cornersDeg()[1], 1e-8);
        assertEquals(240_000, fit.shape().areaMm2(), 1e-5);
        assertEquals(500 * Math.cos(Math.toRadians(sharp)), fit.outOfSquareMm(), 1e-6);
        assertEquals(200, fit.diagonalsDifferMm(), 1e-8);
        assertEquals("out-of-square", fit.problems().get(0).code());
    }

    /** Bretschneider's formula: area = sqrt(4 p^2 q^2 - (b^2 + d^2 - a^2 - c^2)^2) / 4 from sides a b c d and diagonals p q, for whatever frame. */
    @Property
    void anyFrameIsFoundAgain(@ForAll @DoubleRange(min = -80, max = 80) double x1, @ForAll @DoubleRange(min = -80, max = 80) double y1,
            @ForAll @DoubleRange(min = -80, max = 80) double x2, @ForAll @DoubleRange(min = -80, max = 80) double y2, @ForAll @DoubleRange(min = -80,
                    max = 80) double x3) {
        double[][] c = {{x1, 900 + y1}, {600 + x2, 900 + y2}, {600 + x3, 0}, {0, 0}}; // top left, top right, bottom right, bottom left; y up
        double top = length(c[0], c[1]);
        double right = length(c[1], c[2]);
        double bottom = length(c[2], c[3]);
        double left = length(c[3], c[0]);
        double falling = length(c[0], c[2]);
        double rising = length(c[3], c[1]);
        FrameFit fit = new MeasuredFrame(top, right, bottom, left, falling, rising).fit();
        assertTrue(fit.disagreementMm() < 1e-7);
        double squares = right * right + left * left - top * top - bottom * bottom;
        double area = Math.sqrt(4 * falling * falling * rising * rising - squares * squares) / 4;
        assertEquals(area, fit.shape().areaMm2(), 1e-3);
        assertEquals(360, Arrays.stream(fit.cornersDeg()).sum(), 1e-8);
        assertEquals(c[1][0] - c[3][0], fit.topRight().xMm() - fit.bottomLeft().xMm(), 1e-5);
        assertEquals(c[1][1] - c[3][1], fit.bottomLeft().yMm() - fit.topRight().yMm(), 1e-5);
        assertEquals(0, fit.bottomLeft().yMm() - fit.bottomRight().yMm(), 1e-12);
    }

    private static double length(double[] a, double[] b) {
        return Math.hypot(a[0] - b[0], a[1] - b[1]);
    }

    /** One diagonal misread by 10 mm: told, and spread over all six so that no measure is missed by the whole. */
    @Test
    void disagreementIsTold() {
        FrameFit fit = new MeasuredFrame(600, 900, 600, 900, Math.hypot(600, 900) + 10, Math.hypot(600, 900)).fit();
        assertTrue(fit.disagreementMm() > 0.5 && fit.disagreementMm() < 10, "rms " + fit.disagreementMm());
        assertTrue(Arrays.stream(fit.missesMm()).map(Math::abs).max().orElseThrow() < 6);
        FrameFit worse = new MeasuredFrame(600, 900, 600, 900, Math.hypot(600, 900) + 20, Math.hypot(600, 900) + 20).fit();
        assertTrue(worse.problems().stream().map(Problem::code).toList().contains("measures-disagree"));
    }

    /** Least squares: no small change of a corner makes the squares of the misses less. */
    @Test
    void leastSquaresAreLeast() {
        FrameFit fit = new MeasuredFrame(604, 898, 597, 903, 1090, 1077).fit();
        double least = Arrays.stream(fit.missesMm()).map(m -> m * m).sum();
        double[] measured = {604, 898, 597, 903, 1090, 1077};
        for (int which = 0; which < 5; which++) {
            for (double step : new double[] {1e-3, -1e-3}) {
                double[] tl = {fit.topLeft().xMm(), fit.topLeft().yMm()};
                double[] tr = {fit.topRight().xMm(), fit.topRight().yMm()};
                double[] br = {fit.bottomRight().xMm(), fit.bottomRight().yMm()};
                double[] bl = {fit.bottomLeft().xMm(), fit.bottomLeft().yMm()};
                double[][] moved = {tl, tl, tr, tr, br};
                moved[which][which % 2] += step;
                double[] now = {length(tl, tr), length(tr, br), length(br, bl), length(bl, tl), length(tl, br), length(bl, tr)};
                double squares = 0;
                for (int i = 0; i < 6; i++) {
                    squares += (now[i] - measured[i]) * (now[i] - measured[i]);
                }
                assertTrue(squares >= least, which + " " + step);
            }
        }
    }

    @Test
    void impossibleMeasuresAreRefused() {
        Refusal refusal = assertThrows(Refusal.class, () -> new MeasuredFrame(600, 900, 600, 900, 1600, 1080).fit());
        assertTrue(refusal.getMessage().contains("make no triangle"), refusal.getMessage());
        assertThrows(IllegalArgumentException.class, () -> new MeasuredFrame(600, 900, 600, 900, Double.NaN, 1080));
    }

    @Test
    void readingsOfOneSize() {
        SizeReadings even = new SizeReadings("width", List.of(601.0, 600.0, 602.0));
        assertEquals(600, even.leastMm(), 0);
        assertTrue(even.problem().isEmpty());
        assertEquals("size-varies", new SizeReadings("width", List.of(601.0, 590.0)).problem().orElseThrow().code());
    }
}
