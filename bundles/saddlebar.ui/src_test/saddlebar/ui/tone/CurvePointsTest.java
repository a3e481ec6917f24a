package saddlebar.ui.tone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.junit.jupiter.api.Test;

import saddlebar.model.problem.Refusal;
import saddlebar.stencil.tone.Calibration;
import saddlebar.stencil.tone.DrawnCurve;

class CurvePointsTest {
    @Test
    void typedPerCentIsKeptAsShares() {
        CurvePoints points = CurvePoints.typed("25:20  50:37,5");
        assertEquals("0:0 0.25:0.2 0.5:0.375 1:1", points.words());
        assertEquals("0:0  25:20  50:37.5  100:100", points.typed());
        assertEquals(points.words(), CurvePoints.typed(points.typed()).words());
        assertEquals("", CurvePoints.typed(" ").words());
        assertEquals("", CurvePoints.typed("50:50").words(), "a straight line is no curve");
        for (String bad : new String[] {"50", "a:b", "50:140", "20:80 50:40"}) {
            assertThrows(Refusal.class, () -> CurvePoints.typed(bad), bad);
        }
    }

    @Test
    void aPointIsFoundAddedAndTakenAway() {
        CurvePoints points = CurvePoints.of("").added(0.5, 0.3);
        assertEquals(3, points.points().size());
        assertEquals(1, points.near(0.52, 0.31, 0.04).orElseThrow());
        assertTrue(points.near(0.7, 0.3, 0.04).isEmpty());
        assertEquals("", points.removed(1).words());
        assertEquals(points, points.removed(0), "the ends stay");
        assertEquals(points, points.added(0.5001, 0.4), "no room beside a point");
    }

    /** However points are dragged, the curve never falls and stays in its square. */
    @Test
    void noDragMakesTheCurveFall() {
        Random chance = new Random(3);
        for (int round = 0; round < 200; round++) {
            CurvePoints points = CurvePoints.of("");
            for (int step = 0; step < 30; step++) {
                int size = points.points().size();
                points = chance.nextInt(3) == 0
                        ? points.added(chance.nextDouble(), chance.nextDouble())
                        : points.moved(chance.nextInt(size), 3 * chance.nextDouble() - 1, 3 * chance.nextDouble() - 1);
                DrawnCurve curve = DrawnCurve.through(points.points());
                double before = 0;
                for (int i = 0; i <= 100; i++) {
                    double here = curve.toScreen(i / 100.0);
                    assertTrue(here >= before - 1e-12 && here <= 1 + 1e-12);
                    before = here;
                }
            }
        }
    }

    @Test
    void aCalibrationBecomesPoints() {
        Calibration gain = Calibration.modelled(0.15);
        CurvePoints points = CurvePoints.of(gain);
        assertEquals(5, points.points().size());
        assertEquals(gain.toScreen(0.5), points.points().get(2).screened(), 1e-9);
    }
}
