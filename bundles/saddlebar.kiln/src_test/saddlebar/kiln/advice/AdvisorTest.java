package saddlebar.kiln.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import saddlebar.kiln.Studio;
import saddlebar.kiln.fire.Firing;
import saddlebar.kiln.fire.Kiln;
import saddlebar.kiln.fire.Load;
import saddlebar.kiln.fire.Simulation;
import saddlebar.kiln.glass.Glass;
import saddlebar.kiln.paint.PaintFlux;
import saddlebar.kiln.paint.PaintHistory;
import saddlebar.kiln.paint.PaintKind;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.kiln.schedule.Segment;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;

class AdvisorTest {
    private static final PaintFlux TRACE = PaintFlux.of("tracing black", PaintKind.TRACE, 620, 680, Glass.DGG_I);
    private static final PaintFlux STAIN = PaintFlux.of("stain", PaintKind.STAIN, 540, 590, Glass.DGG_I);

    private static Firing fire(Schedule schedule, double mm) {
        return Simulation.run(schedule, Load.of(Glass.floatGlass(), mm), Kiln.small());
    }

    private static Set<String> warnings(Firing firing, PaintFlux paint, PaintHistory.Fired... earlier) {
        return Advisor.on(firing, Optional.ofNullable(paint), List.of(earlier)).stream().filter(p -> p.severity() != Severity.NOTE).map(Problem::code)
                .collect(Collectors.toSet());
    }

    @Test
    void theStartProfileNeedsNoAttention() {
        assertEquals(Set.of(), warnings(fire(Studio.trace650(), 3), TRACE));
    }

    @Test
    void cautionsStandBesideTheAct() {
        String all = Advisor.on(fire(Studio.trace650(), 3), Optional.empty(), List.of()).stream().map(Problem::message)
                .collect(Collectors.joining("\n"));
        for (String word : List.of("Fumes", "unattended", "eye protection", "burns", "cold air on hot glass")) {
            assertTrue(all.contains(word), word + " is missing in\n" + all);
        }
    }

    @Test
    void eachFaultHasItsWarning() {
        assertTrue(warnings(fire(Studio.trace650(), 6), TRACE).contains("ramp-fast"));
        assertTrue(warnings(fire(Studio.trace(700), 3), null).contains("peak-high"));
        assertTrue(warnings(fire(Studio.trace(590), 3), TRACE).contains("paint-underfired"));
        assertTrue(warnings(fire(Studio.trace(700), 3), TRACE).contains("paint-overfired"));
        assertTrue(warnings(fire(new Schedule("s", List.of(new Segment("", 150, 650, 10), new Segment("", 0, 50, 0))), 3), null)
                .contains("anneal-short"));
        Set<String> beyond = warnings(
                fire(new Schedule("s", List.of(new Segment("", 150, 1300, 0), new Segment("", 0, 540, 30), new Segment("", 0, 50, 0))), 3), null);
        assertTrue(beyond.containsAll(Set.of("kiln-max", "kiln-cannot")), beyond.toString());
        Kiln strong = new Kiln("strong", 1200, 60_000, 20_000, 20_000, 10, 10, 0.18);
        Firing shock = Simulation.run(new Schedule("s", List.of(new Segment("", 6000, 500, 0))), Load.of(Glass.floatGlass(), 40), strong);
        assertTrue(warnings(shock, null).containsAll(Set.of("stress-high", "ramp-fast")), warnings(shock, null).toString());
    }

    @Test
    void aScheduleWithoutAnEndIsCutOff() {
        Firing endless = fire(new Schedule("s", List.of(new Segment("", 0.1, 650, 10), new Segment("", 0, 50, 0))), 3);
        assertEquals(Set.of("schedule-long"), warnings(endless, null));
    }

    @Test
    void ordersAndEarlierLayers() {
        Firing trace = fire(Studio.trace650(), 3);
        Firing stain = fire(Studio.trace(560), 3);
        assertTrue(warnings(trace, TRACE, new PaintHistory.Fired("stain", List.of(STAIN), stain.faceCurve())).contains("order-stain"));
        assertFalse(warnings(stain, STAIN, new PaintHistory.Fired("trace", List.of(TRACE), trace.faceCurve())).contains("order-stain"));
        PaintHistory.Fired again = new PaintHistory.Fired("again", List.of(), trace.faceCurve());
        assertTrue(warnings(trace, null, new PaintHistory.Fired("trace", List.of(TRACE), trace.faceCurve()), again, again, again)
                .contains("earlier-layer-burns"));
    }

    @Test
    void aLowFiringSaysSo() {
        List<Problem> advice = Advisor.on(fire(new Schedule("s", List.of(new Segment("", 150, 400, 5))), 3), Optional.empty(), List.of());
        assertTrue(advice.stream().anyMatch(p -> p.code().equals("below-strain")));
        assertTrue(advice.stream().anyMatch(p -> p.code().equals("safety-door") && p.message().contains("at the end of this schedule")),
                advice.toString());
    }
}
