package saddlebar.stencil.tone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;

import org.junit.jupiter.api.Test;

import saddlebar.model.problem.Refusal;

class MeasuredWedgeTest {
    /** Closed form: half of a solid of transmittance 1/4 on clear glass shows 0.625, density 0.20412; Murray, J. Franklin Inst. 221, 1936. */
    @Test
    void halfOfASolid() {
        List<MeasuredStep> steps = List.of(MeasuredStep.ofTransmittance(0, 1), new MeasuredStep(0.4, 0.20412), MeasuredStep.ofTransmittance(1, 0.25));
        assertEquals(0.5, MeasuredWedge.readings(steps, 1).get(1).effective(), 1e-5);
        assertEquals(0.60206, steps.get(2).density(), 5e-6);
    }

    @Test
    void endsThatAreMissing() {
        assertThrows(Refusal.class, () -> MeasuredWedge.readings(List.of(new MeasuredStep(0.5, 0.3), new MeasuredStep(1, 0.6)), 1));
        assertThrows(Refusal.class, () -> MeasuredWedge.readings(List.of(new MeasuredStep(0, 0.05), new MeasuredStep(0.5, 0.3)), 1));
        assertThrows(Refusal.class, () -> MeasuredWedge.readings(List.of(new MeasuredStep(0, 0.05), new MeasuredStep(1, 0.08)), 1)); // too pale
    }

    @Test
    void aDrawnCurveGoesThroughItsPoints() {
        DrawnCurve curve = DrawnCurve.through(List.of(new DrawnCurve.Point(0.5, 0.37), new DrawnCurve.Point(0.2, 0.14), new DrawnCurve.Point(0.8, 0.68)));
        assertEquals(0.37, curve.toScreen(0.5), 1e-12);
        assertEquals(0, curve.toScreen(0));
        assertEquals(1, curve.toScreen(1));
        double before = 0;
        for (int i = 0; i <= 1000; i++) {
            assertEquals(Math.max(before, curve.toScreen(i / 1000.0)), curve.toScreen(i / 1000.0));
            before = curve.toScreen(i / 1000.0);
        }
        assertEquals(0.37, curve.asCalibration().toScreen(0.5), 1e-6);
        assertEquals(5, curve.points().size());
    }

    @Test
    void curvesThatFall() {
        assertThrows(Refusal.class, () -> DrawnCurve.through(List.of(new DrawnCurve.Point(0.3, 0.5), new DrawnCurve.Point(0.5, 0.4))));
        assertThrows(Refusal.class, () -> DrawnCurve.through(List.of(new DrawnCurve.Point(0.3, 0.5), new DrawnCurve.Point(0.3, 0.6))));
        assertThrows(Refusal.class, () -> new DrawnCurve.Point(0.3, 1.2));
    }

    /** A measured calibration taken as points comes back. */
    @Test
    void measuredThenDrawn() {
        Calibration measured = Calibration.modelled(0.14);
        DrawnCurve curve = DrawnCurve.of(measured, 10);
        for (double wanted : new double[] {0.1, 0.3, 0.55, 0.9}) {
            assertEquals(measured.toScreen(wanted), curve.toScreen(wanted), 0.004);
        }
    }
}
