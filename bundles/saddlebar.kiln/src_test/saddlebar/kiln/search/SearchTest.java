package saddlebar.kiln.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicLong;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import saddlebar.kiln.Studio;
import saddlebar.kiln.fire.Firing;
import saddlebar.kiln.fire.Kiln;
import saddlebar.kiln.fire.KilnRun;
import saddlebar.kiln.fire.Load;
import saddlebar.kiln.fire.Simulation;
import saddlebar.kiln.glass.Glass;
import saddlebar.kiln.paint.HeatWork;
import saddlebar.kiln.paint.PaintFlux;
import saddlebar.kiln.paint.PaintKind;
import saddlebar.kiln.schedule.HeatCurve;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.kiln.schedule.Segment;
import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;

class SearchTest {
    private static final Kiln KILN = Kiln.small();
    private static final PaintFlux TRACE = PaintFlux.of("trace", PaintKind.TRACE, 620, 680, Glass.DGG_I);

    private static Load load(double mm) {
        return Load.of(Glass.floatGlass(), mm);
    }

    @ParameterizedTest
    @ValueSource(doubles = {3, 6, 10})
    void keepsAllLimits(double mm) {
        SearchLimits limits = SearchLimits.usual(load(mm), Optional.of(TRACE));
        FoundSchedule found = ScheduleSearch.shortest(Studio.trace650(), load(mm), KILN, limits, Work.UNWATCHED);
        Firing again = Simulation.run(found.schedule(), load(mm), KILN); // from outside: the schedule alone, simulated anew
        assertTrue(again.tensionMaxMpa() <= limits.tensionMpa());
        assertTrue(again.coreLagMaxK() <= limits.coreLagK());
        assertTrue(again.annealing().annealed(), again.annealing().toString());
        assertTrue(again.annealing().residualMpa() <= limits.residualMpa());
        assertTrue(again.segments().stream().allMatch(run -> run.reached()));
        assertEquals(1, HeatWork.of(again.faceCurve(), TRACE.flux()) / found.wanted(), limits.workShare() + 1e-9);
        assertEquals(PaintFlux.Maturity.MATURE, TRACE.at(found.heatWork()));
        for (Segment segment : found.schedule().segments().subList(0, 2)) {
            assertTrue(segment.rateKPerH() <= limits.heatingKPerH() + 1e-9);
        }
        assertEquals(10, found.schedule().segments().get(0).soakMin(), "the medium still burns off");
        assertEquals(650, found.schedule().peakC());
        assertTrue(found.schedule().segments().stream().allMatch(s -> s.rateKPerH() == Math.rint(s.rateKPerH() * 2) / 2),
                "rates that a controller takes");
    }

    @Test
    void isNotLongerThanAScheduleThatKeepsTheLimits() {
        Firing given = Simulation.run(Studio.trace650(), load(3), KILN);
        FoundSchedule found = ScheduleSearch.shortest(Studio.trace650(), load(3), KILN, SearchLimits.usual(load(3), Optional.empty()),
                Work.UNWATCHED);
        assertTrue(found.firing().hoursToOpen() <= given.hoursToOpen(), found.firing().hoursToOpen() + " h against " + given.hoursToOpen());
    }

    /** All rates of a coarse grid, each tried: none that keeps the limits is shorter by more than the grid is fine. */
    @Test
    void againstTryingEverythingOnAGrid() {
        Load load = load(10);
        SearchLimits limits = SearchLimits.usual(load, Optional.empty()).withHeatingKPerH(120);
        FoundSchedule found = ScheduleSearch.shortest(Studio.trace650(), load, KILN, limits, Work.UNWATCHED);
        double best = Double.POSITIVE_INFINITY;
        List<Segment> parts = found.schedule().segments();
        for (double heat : new double[] {60, 90, 120}) {
            for (double peak : new double[] {100, 220}) {
                for (double anneal : new double[] {80, 120, 160, 220}) {
                    for (double soak : new double[] {5, 10, 15}) {
                        Schedule tried = new Schedule("t",
                                List.of(parts.get(0).withRate(heat), parts.get(1).withRate(heat), parts.get(2).withRate(peak).withSoak(soak),
                                        parts.get(3), parts.get(4).withRate(anneal), parts.get(5).withRate(300), parts.get(6)));
                        Firing firing = Simulation.run(tried, load, KILN, saddlebar.kiln.fire.FireSettings.COARSE, Work.UNWATCHED);
                        boolean kept = firing.tensionMaxMpa() <= limits.tensionMpa() && firing.coreLagMaxK() <= limits.coreLagK()
                                && firing.annealing().annealed() && Math.abs(firing.heatWork(Glass.DGG_I) / found.wanted() - 1) <= limits.workShare();
                        best = kept ? Math.min(best, firing.hoursToOpen()) : best;
                    }
                }
            }
        }
        assertTrue(best < Double.POSITIVE_INFINITY, "the grid holds schedules that keep the limits");
        assertTrue(found.firing().hoursToOpen() <= best + 0.15, found.firing().hoursToOpen() + " h against " + best);
    }

    @Test
    void tighterLimitsTakeLonger() {
        SearchLimits usual = SearchLimits.usual(load(10), Optional.empty());
        double free = ScheduleSearch.shortest(Studio.trace650(), load(10), KILN, usual, Work.UNWATCHED).firing().hoursToOpen();
        double careful = ScheduleSearch.shortest(Studio.trace650(), load(10), KILN, usual.withResidualMpa(0.1), Work.UNWATCHED).firing()
                .hoursToOpen();
        double slow = ScheduleSearch.shortest(Studio.trace650(), load(10), KILN, usual.withHeatingKPerH(40), Work.UNWATCHED).firing().hoursToOpen();
        assertTrue(careful > free && slow > free, free + " " + careful + " " + slow);
    }

    @Test
    void refusesWhatCannotBeKept() {
        Refusal tension = assertThrows(Refusal.class, () -> ScheduleSearch.shortest(Studio.trace650(), load(3), KILN,
                SearchLimits.usual(load(3), Optional.empty()).withCoreLagK(0.02), Work.UNWATCHED));
        assertTrue(tension.getMessage().contains("core lag"), tension.getMessage());
        assertThrows(Refusal.class,
                () -> ScheduleSearch.shortest(Studio.trace(520), load(3), KILN, SearchLimits.usual(load(3), Optional.empty()), Work.UNWATCHED));
        assertThrows(Refusal.class,
                () -> ScheduleSearch.shortest(Studio.trace(899), load(3), KILN, SearchLimits.usual(load(3), Optional.empty()), Work.UNWATCHED));
    }

    @Test
    void unitsOfWorkAddUp() {
        AtomicLong told = new AtomicLong();
        ScheduleSearch.shortest(Studio.trace650(), load(3), KILN, SearchLimits.usual(load(3), Optional.empty()), new Work() {
            @Override
            public void advance(long units) {
                told.addAndGet(units);
            }

            @Override
            public void checkpoint() {
                // nobody stops
            }
        });
        assertEquals(ScheduleSearch.WORK_UNITS, told.get());
    }

    /** Rosenbrock's valley and Powell's singular function, both used by Nelder and Mead (1965) themselves. */
    @Test
    void simplexSearchOnTheFunctionsOfItsPaper() {
        double[] valley = SimplexSearch.least(x -> 100 * Math.pow(x[1] - x[0] * x[0], 2) + Math.pow(1 - x[0], 2), new double[] {-1.2, 1}, 0.5, 2000,
                1e-16);
        assertArrayEquals(new double[] {1, 1}, valley, 1e-5);
        double[] powell = SimplexSearch.least(x -> Math.pow(x[0] + 10 * x[1], 2) + 5 * Math.pow(x[2] - x[3], 2) + Math.pow(x[1] - 2 * x[2], 4)
                + 10 * Math.pow(x[0] - x[3], 4), new double[] {3, -1, 0, 1}, 1, 5000, 1e-18);
        assertArrayEquals(new double[4], powell, 0.02);
    }

    /** A kiln unlike the table's, its log with noise and another schedule as the question: learnt from one firing, it foretells the other. */
    @Test
    void aKilnIsLearntFromItsLog() {
        Kiln truth = new Kiln("truth", 1000, 3200, 19_000, 27_000, 11, 4.4, 0.1764);
        Schedule full = new Schedule("full", List.of(new Segment("", 0, 660, 20), new Segment("", 0, 120, 0)));
        HeatCurve run = KilnRun.of(full, truth, 20, 30, 12 * 3600);
        Random chance = new Random(11);
        double[] t = new double[run.points()];
        double[] c = new double[run.points()];
        for (int i = 0; i < t.length; i++) {
            t[i] = run.timeS(i);
            c[i] = run.temperatureC(i) + chance.nextGaussian();
        }
        KilnLearning.Learnt learnt = KilnLearning.from(KILN, List.of(new KilnLearning.Lesson(full, HeatCurve.of(t, c))), Work.UNWATCHED);
        assertTrue(learnt.afterK() < 2.5, learnt.toString());
        assertTrue(learnt.beforeK() > 5 * learnt.afterK(), learnt.toString());
        Schedule other = new Schedule("other", List.of(new Segment("", 400, 580, 30), new Segment("", 0, 300, 0)));
        HeatCurve told = KilnRun.of(other, learnt.kiln(), 20, 30, 10 * 3600);
        HeatCurve real = KilnRun.of(other, truth, 20, 30, 10 * 3600);
        for (double s = 0; s < 8 * 3600; s += 600) {
            assertEquals(real.at(s), told.at(s), 8, s + " s");
        }
    }
}
