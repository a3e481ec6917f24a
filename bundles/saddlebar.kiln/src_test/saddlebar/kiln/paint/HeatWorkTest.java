package saddlebar.kiln.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import saddlebar.kiln.glass.Glass;
import saddlebar.kiln.glass.Vft;
import saddlebar.kiln.paint.PaintFlux.Maturity;
import saddlebar.kiln.schedule.HeatCurve;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.kiln.schedule.Segment;
import saddlebar.model.problem.Severity;

class HeatWorkTest {
    private static final Vft V = Glass.DGG_I;

    private static Schedule schedule(double peak, double soak) {
        return new Schedule("s", List.of(new Segment("", 150, 520, 0), new Segment("", 300, peak, soak), new Segment("", 300, 560, 0)));
    }

    private static double phi(double peak, double soak) {
        return HeatWork.of(schedule(peak, soak).asWritten(), V);
    }

    /** Worked out outside of this program from the constants of DGG I. */
    @Test
    void whatTenAndTwentyKelvinDo() {
        double at650 = V.logEta(650);
        assertEquals(11.67, V.temperatureC(at650 - Math.log10(2)) - 650, 0.01);
        double local = Math.log(2) / (Math.log(10) * V.b() / Math.pow(650 - V.t0C(), 2));
        assertEquals(11.34, local, 0.01);
        assertEquals(1.816, V.fluidity(660) / V.fluidity(650), 0.001);
        assertEquals(3.206, V.fluidity(670) / V.fluidity(650), 0.001);
    }

    /** 150 K/h to 520, 300 K/h to 650, 10 min, 300 K/h down to 560: ratios worked out outside of this program in steps of 1 s. */
    @Test
    void ratiosOfSchedules() {
        double base = phi(650, 10);
        assertEquals(1.849, phi(660, 10) / base, 0.0185);
        assertEquals(3.324, phi(670, 10) / base, 0.033);
        assertEquals(0.525, phi(640, 10) / base, 0.00525);
        assertEquals(1.622, phi(650, 20) / base, 0.0162);
    }

    /** Gauss's points against the sum of a hundred thousand short steps. */
    @Test
    void integralAgainstManySteps() {
        HeatCurve curve = schedule(650, 10).asWritten();
        int n = 100_000;
        double slow = 0;
        double dt = curve.endS() / n;
        for (int i = 0; i < n; i++) {
            slow += dt * V.fluidity(curve.at((i + 0.5) * dt));
        }
        assertEquals(1, HeatWork.of(curve, V) / slow, 1e-4);
        assertEquals(600, HeatWork.equivalentSoakS(600 * V.fluidity(640), 640, V), 1e-6);
        assertEquals(640, HeatWork.equivalentC(600 * V.fluidity(640), 600, V), 1e-6);
    }

    @Property(tries = 150)
    void moreHeatIsNeverLessHeatWork(@ForAll @DoubleRange(min = 560, max = 800) double peak, @ForAll @DoubleRange(min = 0, max = 60) double soak,
            @ForAll @DoubleRange(min = 0.01, max = 50) double hotter, @ForAll @DoubleRange(min = 0.1, max = 60) double longer) {
        assertTrue(phi(peak + hotter, soak) > phi(peak, soak));
        assertTrue(phi(peak, soak + longer) > phi(peak, soak));
        double slower = HeatWork.of(new Schedule("s", List.of(new Segment("", 100, 520, 0), new Segment("", 200, peak, soak))).asWritten(), V);
        double faster = HeatWork.of(new Schedule("s", List.of(new Segment("", 100, 520, 0), new Segment("", 400, peak, soak))).asWritten(), V);
        assertTrue(slower >= faster);
    }

    @Test
    void aFluxIsMatureInTheMiddleOfItsRange() {
        PaintFlux trace = PaintFlux.of("trace", PaintKind.TRACE, 620, 680, V);
        assertEquals(7, trace.flux().logEta(650), 1e-9);
        assertEquals(Maturity.MATURE, trace.at(PaintFlux.SOAK_S * trace.flux().fluidity(650)));
        assertEquals(Maturity.UNDERFIRED, trace.at(PaintFlux.SOAK_S * trace.flux().fluidity(619)));
        assertEquals(Maturity.BURNT, trace.at(PaintFlux.SOAK_S * trace.flux().fluidity(681)));
    }

    /** 300 K/h up, 10 min, 240 K/h down: what the trade calls a firing to 650 degC does as much as about 20 min at it. */
    @Test
    void anOrdinaryFiringIsTwentyMinutesAtItsPeak() {
        PaintFlux trace = PaintFlux.of("trace", PaintKind.TRACE, 620, 680, V);
        HeatCurve firing = new Schedule("s", List.of(new Segment("", 300, 650, 10), new Segment("", 240, 400, 0))).asWritten();
        assertEquals(PaintFlux.SOAK_S, HeatWork.equivalentSoakS(HeatWork.of(firing, trace.flux()), 650, trace.flux()), 120);
    }

    private static HeatCurve soaked(double degC, double minutes) {
        return HeatCurve.of(new double[] {0, 60 * minutes}, new double[] {degC, degC});
    }

    @Test
    void heatWorkAddsUpOverTheFiringsOfAPiece() {
        PaintFlux trace = PaintFlux.of("trace", PaintKind.TRACE, 620, 680, V);
        PaintFlux matt = PaintFlux.of("matt", PaintKind.MATT, 610, 670, V);
        PaintHistory twice = PaintHistory.of(
                List.of(new PaintHistory.Fired("1", List.of(trace), soaked(650, 10)), new PaintHistory.Fired("2", List.of(matt), soaked(650, 10))));
        assertEquals(2 * 600 * trace.flux().fluidity(650), twice.layers().get(0).phi(), 1e-12);
        assertEquals(600 * matt.flux().fluidity(650), twice.layers().get(1).phi(), 1e-12);
        assertEquals(0.5, twice.layers().get(0).lastShare(), 1e-9);
        assertTrue(twice.cautions().stream().allMatch(p -> p.severity() == Severity.NOTE),
                "trace and matt alike is everyday practice: " + twice.cautions());
        PaintHistory often = PaintHistory
                .of(List.of(new PaintHistory.Fired("1", List.of(trace), soaked(650, 10)), new PaintHistory.Fired("2", List.of(), soaked(650, 45)),
                        new PaintHistory.Fired("3", List.of(matt), soaked(650, 40))));
        assertTrue(often.cautions().stream().anyMatch(p -> p.code().equals("earlier-layer-burns") && p.where().equals("trace")),
                often.cautions().toString());
        PaintHistory cool = PaintHistory.of(List.of(new PaintHistory.Fired("1", List.of(trace), soaked(600, 10))));
        assertEquals("paint-underfired", cool.cautions().get(0).code());
        PaintHistory hot = PaintHistory.of(List.of(new PaintHistory.Fired("1", List.of(trace), soaked(700, 10))));
        assertEquals("paint-overfired", hot.cautions().get(0).code());
    }

    @Test
    void firingsThatAPieceStillBears() {
        PaintFlux trace = PaintFlux.of("trace", PaintKind.TRACE, 620, 680, V);
        for (int firings = 1; firings < 4; firings++) {
            List<PaintHistory.Fired> all = new java.util.ArrayList<>();
            all.add(new PaintHistory.Fired("1", List.of(trace), soaked(650, 10)));
            for (int i = 1; i < firings; i++) {
                all.add(new PaintHistory.Fired("n", List.of(), soaked(650, 10)));
            }
            int more = PaintHistory.of(all).layers().get(0).moreSuch();
            for (int i = 0; i < more; i++) {
                all.add(new PaintHistory.Fired("n", List.of(), soaked(650, 10)));
            }
            assertEquals(Maturity.MATURE, PaintHistory.of(all).layers().get(0).maturity());
            all.add(new PaintHistory.Fired("n", List.of(), soaked(650, 10)));
            assertEquals(Maturity.BURNT, PaintHistory.of(all).layers().get(0).maturity());
        }
    }

    /** Common practice, no source: hottest first, stain last. */
    @Test
    void orderOfFirings() {
        PaintFlux trace = PaintFlux.of("trace", PaintKind.TRACE, 620, 680, V);
        PaintFlux enamel = PaintFlux.of("enamel", PaintKind.ENAMEL, 600, 650, V);
        PaintFlux stain = PaintFlux.of("stain", PaintKind.STAIN, 540, 590, V);
        assertEquals(List.of(trace, enamel, stain), FiringOrder.best(List.of(stain, enamel, trace)));
        assertEquals(List.of(),
                FiringOrder.check(List.of(new FiringOrder.Step(trace, 650), new FiringOrder.Step(trace, 650), new FiringOrder.Step(enamel, 620),
                        new FiringOrder.Step(stain, 560))));
        assertEquals("order-stain", FiringOrder.check(List.of(new FiringOrder.Step(stain, 560), new FiringOrder.Step(trace, 650))).get(0).code());
        assertEquals("order-hotter", FiringOrder.check(List.of(new FiringOrder.Step(enamel, 620), new FiringOrder.Step(trace, 650))).get(0).code());
    }
}
