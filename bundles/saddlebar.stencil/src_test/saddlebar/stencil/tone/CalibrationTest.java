package saddlebar.stencil.tone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import saddlebar.model.problem.Refusal;

class CalibrationTest {
    private static final double[] NOMINAL = {0, .05, .1, .2, .3, .4, .5, .6, .7, .8, .9, .95, 1};
    private static final double[] PRINTED = {0, .03, .12, .27, .41, .53, .645, .745, .83, .905, .965, .985, 1};

    /** The classic data of Fritsch and Carlson 1980; values between worked out from their formulas. */
    @Test
    void dataOfThePaper() {
        MonotoneCubic curve = new MonotoneCubic(new double[] {7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20},
                new double[] {0, 2.76429e-5, 4.37498e-2, 0.169183, 0.469428, 0.943740, 0.998636, 0.999919, 0.999994});
        assertEquals(0.111454, curve.at(8.5), 1e-6);
        assertEquals(0.758027, curve.at(9.6), 1e-6);
        assertEquals(0.991433, curve.at(11), 1e-6);
        assertEquals(0.999973, curve.at(17), 1e-6);
        double before = -1;
        for (double x = 7.9; x < 20.1; x += 0.001) {
            assertTrue(curve.at(x) >= before, "falls at " + x);
            before = curve.at(x);
        }
    }

    /** An invented wedge; inverse values worked out from the same formulas. */
    @Test
    void wedge() {
        Calibration calibration = Calibration.of(readings(NOMINAL, PRINTED));
        assertEquals(0.145, calibration.gainAt50(), 1e-9);
        assertEquals(0.08896, calibration.toScreen(0.10), 1e-4);
        assertEquals(0.18616, calibration.toScreen(0.25), 1e-4);
        assertEquals(0.37430, calibration.toScreen(0.50), 1e-4);
        assertEquals(0.60544, calibration.toScreen(0.75), 1e-4);
        assertEquals(0.79267, calibration.toScreen(0.90), 1e-4);
        assertTrue(calibration.problems().isEmpty());
    }

    @Property(tries = 200)
    void thereAndBack(@ForAll @DoubleRange(min = 0, max = 1) double wanted) {
        Calibration calibration = Calibration.of(readings(NOMINAL, PRINTED));
        assertEquals(wanted, calibration.printed(calibration.toScreen(wanted)), 1e-6);
    }

    @Property(tries = 200)
    void identity(@ForAll @DoubleRange(min = 0, max = 1) double wanted) {
        Calibration identity = Calibration.of(readings(NOMINAL, NOMINAL));
        assertEquals(wanted, identity.toScreen(wanted), 1e-8);
        assertEquals(wanted, identity.printed(wanted), 1e-12);
    }

    /** 0.4 and 0.3 at 40 and 50 % are pooled to 0.35: isotonic regression by hand. */
    @Test
    void fallingReadingsArePooledAndTold() {
        Calibration calibration = Calibration.of(readings(new double[] {0, .2, .4, .5, .8, 1}, new double[] {0, .25, .4, .3, .9, 1}));
        assertEquals(0.35, calibration.printed(0.4), 1e-12);
        assertEquals(0.35, calibration.printed(0.45), 1e-12);
        assertEquals(0.35, calibration.printed(0.5), 1e-12);
        assertEquals("wedge-falls", calibration.problems().get(0).code());
        assertTrue(calibration.problems().get(0).message().contains("40 to 50 %"));
    }

    @Property(tries = 200)
    void anyReadingsGiveARisingCurve(@ForAll @Size(min = 3, max = 12) List<@DoubleRange(min = -0.1, max = 1.1) Double> middle) {
        List<WedgeReading> wedge = new ArrayList<>();
        wedge.add(new WedgeReading(0, 0));
        for (int i = 0; i < middle.size(); i++) {
            wedge.add(new WedgeReading((i + 1.0) / (middle.size() + 1), middle.get(i)));
        }
        wedge.add(new WedgeReading(1, 1));
        Calibration calibration = Calibration.of(wedge);
        double before = 0;
        for (double a = 0; a <= 1; a += 1.0 / 128) {
            double printed = calibration.printed(a);
            assertTrue(printed >= before - 1e-12 && printed <= 1 + 1e-12, "at " + a);
            before = printed;
            assertEquals(a, calibration.printed(calibration.toScreen(a)), 1e-6);
        }
        assertEquals(1, calibration.toScreen(1), "a solid stays solid");
    }

    @Test
    void wedgesThatAreRefused() {
        refused(new double[] {0, .3, .6, 1}, new double[] {0, .3, .6, 1});
        refused(new double[] {0, .2, .4, .6, .8}, new double[] {0, .2, .4, .6, .8});
        refused(new double[] {.1, .2, .4, .6, 1}, new double[] {0, .2, .4, .6, 1});
        refused(new double[] {0, .2, .2, .6, 1}, new double[] {0, .2, .3, .6, 1});
        refused(new double[] {0, .2, .4, .6, 1}, new double[] {.2, .3, .4, .6, 1});
    }

    private static void refused(double[] nominal, double[] effective) {
        assertEquals("wedge", assertThrows(Refusal.class, () -> Calibration.of(readings(nominal, effective))).where());
    }

    private static List<WedgeReading> readings(double[] nominal, double[] effective) {
        List<WedgeReading> readings = new ArrayList<>();
        for (int i = 0; i < nominal.length; i++) {
            readings.add(new WedgeReading(nominal[i], effective[i]));
        }
        return readings;
    }
}
