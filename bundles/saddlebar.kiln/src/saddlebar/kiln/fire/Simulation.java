package saddlebar.kiln.fire;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import saddlebar.kiln.plate.Face;
import saddlebar.kiln.plate.MaxwellPlate;
import saddlebar.kiln.plate.Slab;
import saddlebar.kiln.plate.SlabStack;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.kiln.schedule.Segment;
import saddlebar.model.work.Work;

/**
 * Runs a schedule in a kiln with a load: the controller follows the schedule as far as elements and lining let it and waits at each target until
 * the kiln stands there; glass and shelf follow by radiation and convection; the glass relaxes. All shelves are taken to be full.
 * <p>The heat that the load takes enters the kiln's balance one step late, and what that misses is carried into the next step, so nothing
 * is lost. The same input gives the same figures. Belongs to one thread, one object a run.
 */
public final class Simulation {
    /** Convection of still kiln air on a face, W/(m2 K): handbook range 5 to 10, from memory; radiation does most. */
    private static final double CONVECTION = 8;
    /** How near to its target a kiln must be. */
    private static final double NEAR_K = 0.5;
    /** Slower than this, it will not get there. */
    private static final double STALLED_K_PER_H = 1;
    private static final double STALL_LOOK_S = 900;
    /** Rests of a ramp shorter than this are no step of their own. */
    private static final double TINY_S = 1e-6;
    private static final int CHECK_EVERY = 4096;

    private final Schedule schedule;
    private final Load load;
    private final Kiln kiln;
    private final FireSettings settings;
    private final Work work;
    private final KilnState state;
    private final SlabStack stack;
    private final MaxwellPlate plate;
    private final Trace trace = new Trace();
    private double nowS;
    private double loadW;
    private double carryJ;
    private int steps;

    private Simulation(Schedule schedule, Load load, Kiln kiln, FireSettings settings, Work work) {
        this.schedule = schedule;
        this.load = load;
        this.kiln = kiln;
        this.settings = settings;
        this.work = work;
        this.state = new KilnState(kiln, Schedule.START_C, Schedule.START_C);
        List<Slab> slabs = List.of(Slab.of(load.glass(), load.thicknessMm(), settings.glassNodes(), load.shelf().contactWPerM2K()),
                load.shelf().slab(settings.shelfNodes()));
        this.stack = new SlabStack(slabs, new Face(CONVECTION, load.glass().emissivity()), new Face(CONVECTION, load.shelf().emissivity()),
                Schedule.START_C);
        this.plate = new MaxwellPlate(load.glass(), settings.glassNodes(), Schedule.START_C, load.hold());
    }

    public static Firing run(Schedule schedule, Load load, Kiln kiln) {
        return run(schedule, load, kiln, FireSettings.FINE, Work.UNWATCHED);
    }

    /** @param work asked whether to stop; no units are told */
    public static Firing run(Schedule schedule, Load load, Kiln kiln, FireSettings settings, Work work) {
        return new Simulation(schedule, load, kiln, settings, work).firing();
    }

    private Firing firing() {
        record();
        List<SegmentRun> runs = new ArrayList<>();
        for (int i = 0; i < schedule.segments().size(); i++) {
            runs.add(segment(i));
        }
        EnergyAccount energy = new EnergyAccount(state.electricJ(), kiln.chamberJPerK() * (state.chamberC() - Schedule.START_C),
                kiln.liningJPerK() * (state.liningC() - Schedule.START_C), kiln.shelfM2() * stack.contentJPerM2(0, stack.nodes()), state.lostJ());
        double residual = Arrays.stream(plate.settledMpa()).max().orElseThrow() / MaxwellPlate.GRADIENT_SHARE;
        Annealing annealing = Annealing.of(load.glass(), trace.curve(Trace.Quantity.CORE_C), Math.max(0, residual));
        return new Firing(schedule, load, kiln, trace, runs, energy, annealing, isOver());
    }

    private SegmentRun segment(int index) {
        Segment segment = schedule.segments().get(index);
        double startS = nowS;
        double startC = state.chamberC();
        double target = Math.min(segment.targetC(), kiln.maxC()); // no controller goes beyond it
        double rampS = segment.fullRate() ? 0 : Math.abs(target - startC) / segment.rateKPerH() * 3600;
        double lookS = nowS + STALL_LOOK_S;
        double lookC = startC;
        boolean reached = Math.abs(startC - target) < 1e-9;
        while (!reached && !isOver()) {
            double into = nowS - startS;
            double dt = into < rampS - TINY_S ? Math.min(settings.stepS(), rampS - into) : settings.stepS();
            boolean ramping = into + dt < rampS - TINY_S;
            step(dt, ramping ? startC + (target - startC) * (into + dt) / rampS : target);
            reached = !ramping && Math.abs(state.chamberC() - target) <= NEAR_K;
            if (!ramping && nowS >= lookS) {
                double rate = (state.chamberC() - lookC) / (nowS - lookS + STALL_LOOK_S) * 3600;
                if (!reached && Math.abs(rate) < STALLED_K_PER_H) {
                    break;
                }
                lookS = nowS + STALL_LOOK_S;
                lookC = state.chamberC();
            } else if (ramping) {
                lookS = nowS + STALL_LOOK_S;
                lookC = state.chamberC();
            }
        }
        double rampEndS = nowS;
        double reachedC = state.chamberC();
        double soakEndS = nowS + segment.soakMin() * 60;
        while (nowS < soakEndS - TINY_S && !isOver()) {
            step(Math.min(settings.stepS(), soakEndS - nowS), target);
        }
        boolean cooledEnough = target < startC && reachedC < 80; // below that the kiln may be opened
        return new SegmentRun(index, startS, rampEndS, nowS, startC, reachedC, reached && target == segment.targetC() || cooledEnough);
    }

    private boolean isOver() {
        return nowS >= settings.mostHours() * 3600;
    }

    private void step(double dt, double wishC) {
        if (++steps % CHECK_EVERY == 0) {
            work.checkpoint();
        }
        double before = state.chamberC();
        double assumedW = loadW + carryJ / dt;
        if (carryJ < 0 && wishC >= before) {
            // what an earlier step counted too much comes back as power not spent: it must not heat the kiln beyond what is asked
            assumedW = Math.max(assumedW, Math.min(loadW, state.idleLoadW(dt, wishC)));
        }
        state.advance(dt, wishC, assumedW);
        stack.advance(dt, before, state.chamberC());
        double takenJ = kiln.shelfM2() * (stack.topJPerM2() + stack.bottomJPerM2());
        carryJ = takenJ - assumedW * dt;
        loadW = takenJ / dt;
        plate.advance(dt, stack);
        nowS += dt;
        record();
    }

    private void record() {
        int glass = settings.glassNodes();
        double top = stack.temperatureC(0);
        double lag = 0;
        for (int i = 1; i < glass; i++) {
            lag = Math.max(lag, Math.abs(stack.temperatureC(i) - top));
        }
        trace.add(nowS, state.chamberC(), top, stack.temperatureC(glass / 2), stack.temperatureC(glass - 1), lag, plate.stressMpa(0),
                plate.stressMpa(glass / 2), plate.mostTensionMpa(), state.powerW());
    }
}
