package saddlebar.kiln.search;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

import saddlebar.kiln.fire.Annealing;
import saddlebar.kiln.fire.FireSettings;
import saddlebar.kiln.fire.Firing;
import saddlebar.kiln.fire.Kiln;
import saddlebar.kiln.fire.Load;
import saddlebar.kiln.fire.SegmentRun;
import saddlebar.kiln.fire.Simulation;
import saddlebar.kiln.glass.Vft;
import saddlebar.kiln.paint.HeatWork;
import saddlebar.kiln.paint.PaintFlux;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.kiln.schedule.Segment;
import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;

/**
 * The shortest schedule for a load in a kiln that keeps to limits of tension, core lag, heating rate, heat work and residual tension, found over the
 * simulation itself. The peak of the given schedule stays, unless the slow ramps that thick glass needs give too much heat work even without a soak: then
 * it is lowered. A drying segment stays (target at most 350 degC with a soak). Free are: three heating rates, the peak's soak, the fall to the annealing
 * point, the soak there, two cooling rates.
 * <p>Every limit that a rate touches is kept the better the slower it is, so from slow, safe rates a pattern search raises one after the other
 * as long as all limits are kept and time is won, with ever smaller steps. The peak's soak follows from the heat work each time. Rates end as
 * multiples of 5 K/h,
 * the peak's soak of half minutes, the annealing soak of minutes; the end is checked with the fine step, and slowed where that
 * shows a limit touched. A local search: it proves no minimum, but each result keeps its limits and is not slower than where it began.
 */
public final class ScheduleSearch {
    /** Units of work told over a whole search. */
    public static final long WORK_UNITS = 100;

    private static final double LEAST_RATE = 10;
    private static final double MOST_SOAK_MIN = 600;
    private static final double[] FACTORS = {2, 1.5, 1.2, 1.08, 1.03};
    private static final double DRY_C = 350;
    private static final int MOST_MENDS = 40;
    private static final double TOUCHED = 0.97;
    private static final double ROUNDED_KPH = 5;
    private static final int MOST_STARTS = 30;
    private static final double PEAK_STEP_K = 5;
    private static final double BELOW_STRAIN_K = 30;
    private static final String HEAT_WORK = "heat work";
    private static final String ANNEALING_SOAK = "annealing soak";
    private static final double LOW_C = 150;
    private static final double END_C = 50;

    private final Schedule given;
    private final Load load;
    private final Kiln kiln;
    private final SearchLimits limits;
    private final Work work;
    private final Vft flux;
    private final double wanted;
    private final double dryC;
    private final double dryMin;
    private final double annealC;
    private final double leastSoakMin;
    private double peakC;
    private int runs;

    private ScheduleSearch(Schedule given, Load load, Kiln kiln, SearchLimits limits, Work work) {
        this.given = given;
        this.load = load;
        this.kiln = kiln;
        this.limits = limits;
        this.work = work;
        this.flux = limits.paint().map(PaintFlux::flux).orElse(load.glass().viscosity());
        this.annealC = Math.rint(load.glass().viscosity().annealingC());
        this.leastSoakMin = Math.ceil(Annealing.neededMin(load.glass(), annealC));
        Segment dry = given.segments().stream().filter(s -> s.targetC() <= DRY_C && s.soakMin() > 0).findFirst().orElse(null);
        boolean before = dry != null && given.segments().indexOf(dry) < given.peakIndex();
        this.dryC = before ? dry.targetC() : 300;
        this.dryMin = before ? dry.soakMin() : 10;
        this.wanted = wanted();
        this.peakC = given.peakC();
    }

    /** What is free to change, by place: rates in K/h, soaks in minutes. */
    private enum Part {
        DRY, HEAT, PEAK, PEAK_SOAK, FALL, ANNEAL_SOAK, ANNEAL, COOL
    }

    /** One set of values, in the order of {@link Part}; not changed. */
    private record Free(double... values) {
        double get(Part part) {
            return values[part.ordinal()];
        }

        Free with(Part part, double value) {
            double[] copy = values.clone();
            copy[part.ordinal()] = value;
            return new Free(copy);
        }

        Free each(DoubleUnaryOperator change, Part... parts) {
            double[] copy = values.clone();
            for (Part part : parts) {
                copy[part.ordinal()] = change.applyAsDouble(copy[part.ordinal()]);
            }
            return new Free(copy);
        }
    }

    /** In the order of the segments of {@link #schedule}. */
    private static final Part[] RATES = {Part.DRY, Part.HEAT, Part.PEAK, Part.FALL, Part.ANNEAL, Part.COOL};
    private static final List<Part> ORDER = List.of(Part.COOL, Part.ANNEAL, Part.DRY, Part.HEAT, Part.PEAK, Part.FALL, Part.ANNEAL_SOAK);

    private record Tried(Free free, Firing firing, double hours) {
    }

    /**
     * @param given a schedule with the wanted peak; its heat work is kept too if it suits the paint
     * @throws Refusal if no schedule within the limits could be found, saying which limit stands in the way
     */
    public static FoundSchedule shortest(Schedule given, Load load, Kiln kiln, SearchLimits limits, Work work) {
        return new ScheduleSearch(given, load, kiln, limits, work).search();
    }

    /** The heat work of the given schedule on the painted face; the nearest that matures the paint if it does not suit it. */
    private double wanted() {
        runs++;
        double phi = HeatWork.of(Simulation.run(given, load, kiln, FireSettings.FINE, work).faceCurve(), flux);
        if (limits.paint().isEmpty()) {
            return phi;
        }
        PaintFlux paint = limits.paint().get();
        return Math.max(paint.leastPhi() * (1 + limits.workShare()), Math.min(paint.mostPhi() * (1 - limits.workShare()), phi));
    }

    private FoundSchedule search() {
        if (given.peakC() > kiln.maxC() - 5) {
            throw new Refusal(given.name(),
                    String.format(java.util.Locale.ROOT, "its peak of %.0f degC is too near the %.0f degC that the kiln is made for",
                            given.peakC(), kiln.maxC()),
                    "lower the peak");
        }
        if (given.peakC() < annealC + 10) {
            throw new Refusal(given.name(),
                    String.format(java.util.Locale.ROOT, "its peak of %.0f degC is not above the annealing point of the glass, %.0f degC",
                            given.peakC(), annealC),
                    "a firing that low has nothing to gain from this search");
        }
        double slow = Math.min(60, limits.heatingKPerH());
        Free start = new Free(slow, slow, 4 * slow, 1, 4 * slow, 1.5 * leastSoakMin, 20, 40);
        Tried best = safe(start);
        long told = 0;
        for (int round = 0; round < FACTORS.length; round++) {
            boolean won = true;
            for (int pass = 0; won && pass < 6; pass++) {
                won = false;
                for (Part part : ORDER) {
                    Tried better = faster(best, part, FACTORS[round]);
                    won |= better != best;
                    best = better;
                }
            }
            long due = WORK_UNITS * 9 / 10 * (round + 1) / FACTORS.length;
            work.advance(due - told);
            work.say(String.format(java.util.Locale.ROOT, "%.1f h, %.1f kWh", best.hours, best.firing.energy().kWh()));
            told = due;
        }
        FoundSchedule found = checked(rounded(best.free));
        work.advance(WORK_UNITS - told);
        return found;
    }

    /** Slower and slower until all limits are kept. */
    private Tried safe(Free start) {
        Free free = start;
        String why = "";
        for (int i = 0; i < MOST_STARTS; i++) {
            Tried tried = tryOut(free);
            why = broken(tried.firing);
            if (why.isEmpty()) {
                return tried;
            }
            if (why.equals(HEAT_WORK) && peakC > annealC + 2 * PEAK_STEP_K) { // even without a soak it is too much
                peakC -= PEAK_STEP_K;
            } else {
                free = free.each(rate -> Math.max(LEAST_RATE, rate * 0.7), RATES).each(soak -> Math.min(MOST_SOAK_MIN, soak * 1.4), Part.ANNEAL_SOAK);
            }
        }
        throw new Refusal(given.name(), "no schedule keeps to the limits: " + why, "ease that limit, change the peak, or fire thinner glass");
    }

    private Tried faster(Tried best, Part part, double factor) {
        double now = best.free.get(part);
        double next = part == Part.ANNEAL_SOAK ? Math.max(leastSoakMin, now / factor) : Math.min(Segment.MOST_RATE / 4, now * factor);
        if (part == Part.DRY || part == Part.HEAT) {
            next = Math.min(next, limits.heatingKPerH());
        }
        if (next == now) {
            return best;
        }
        Tried tried = tryOut(best.free.with(part, next));
        boolean shorter = tried.hours < best.hours - 0.005;
        return shorter && broken(tried.firing).isEmpty() ? tried : best;
    }

    /** Runs a schedule, its peak's soak fitted to the heat work. */
    private Tried tryOut(Free free) {
        Free fitted = free;
        Firing firing = run(fitted, FireSettings.COARSE);
        for (int i = 0; i < 4; i++) {
            double phi = HeatWork.of(firing.faceCurve(), flux);
            if (Math.abs(phi / wanted - 1) < limits.workShare() / 4) {
                break;
            }
            double soak = Math.max(0, Math.min(MOST_SOAK_MIN,
                    fitted.get(Part.PEAK_SOAK) + HeatWork.equivalentSoakS(wanted - phi, Math.min(peakC, firing.faceCurve().peakC()), flux) / 60));
            if (soak == fitted.get(Part.PEAK_SOAK)) {
                break;
            }
            fitted = fitted.with(Part.PEAK_SOAK, soak);
            firing = run(fitted, FireSettings.COARSE);
        }
        return new Tried(fitted, firing, firing.hoursToOpen());
    }

    private Firing run(Free free, FireSettings settings) {
        work.checkpoint();
        runs++;
        return Simulation.run(schedule(free), load, kiln, settings, work);
    }

    private Schedule schedule(Free free) {
        double strain = Math.rint(load.glass().viscosity().strainC());
        List<Segment> segments = new ArrayList<>();
        segments.add(new Segment("dry and warm", free.get(Part.DRY), dryC, dryMin));
        segments.add(new Segment("heat", free.get(Part.HEAT), Math.min(peakC, strain + 20), 0));
        segments.add(new Segment("peak", free.get(Part.PEAK), peakC, free.get(Part.PEAK_SOAK)));
        segments.add(new Segment("fall", free.get(Part.FALL), annealC, free.get(Part.ANNEAL_SOAK)));
        segments.add(new Segment("anneal", free.get(Part.ANNEAL), strain - BELOW_STRAIN_K, 0));
        segments.add(new Segment("cool", free.get(Part.COOL), LOW_C, 0));
        segments.add(new Segment("shut", 0, END_C, 0));
        return new Schedule(given.name(), segments);
    }

    /** The first limit that is broken, in words; empty if none. */
    private String broken(Firing firing) {
        List<String> all = touched(firing, 1);
        return all.isEmpty() ? "" : all.get(0);
    }

    /** @param share 1 asks for limits that are broken, less for those that are nearly touched */
    private List<String> touched(Firing firing, double share) {
        List<String> all = new ArrayList<>();
        for (SegmentRun run : firing.segments()) {
            if (!run.reached() && share == 1) {
                all.add("the kiln does not come to " + Math.round(firing.schedule().segments().get(run.index()).targetC()) + " degC");
            }
        }
        if (firing.tensionMaxMpa() > share * limits.tensionMpa()) {
            all.add("tension while heating and cooling");
        }
        if (firing.coreLagMaxK() > share * limits.coreLagK()) {
            all.add("core lag");
        }
        for (int i = 0; i < 2; i++) {
            if (firing.schedule().segments().get(i).rateKPerH() > share * limits.heatingKPerH() * 1.0001) {
                all.add("heating rate below the strain point");
                break;
            }
        }
        if (firing.annealing().residualMpa() > share * limits.residualMpa()) {
            all.add("tension that stays");
        }
        double soak = firing.annealing().soakMin() / firing.annealing().neededMin();
        if (share == 1 ? !firing.annealing().soaked() : soak < 2 - share + 0.05) {
            all.add(ANNEALING_SOAK);
        }
        double off = Math.abs(HeatWork.of(firing.faceCurve(), flux) / wanted - 1);
        if (share == 1 && off > limits.workShare()) {
            all.add(HEAT_WORK);
        }
        return all;
    }

    private static Free rounded(Free free) {
        return free.each(ScheduleSearch::down, RATES).each(soak -> Math.rint(soak * 2) / 2, Part.PEAK_SOAK).each(Math::ceil, Part.ANNEAL_SOAK);
    }

    private static double down(double rate) {
        return rate < 2 * ROUNDED_KPH ? Math.max(0.5, Math.floor(rate * 2) / 2) : Math.floor(rate / ROUNDED_KPH + 1e-9) * ROUNDED_KPH;
    }

    /** With the fine step; where a limit is broken, slower by a step until none is. */
    private FoundSchedule checked(Free from) {
        Free free = from;
        String why = "";
        for (int i = 0; i < MOST_MENDS; i++) {
            Firing firing = run(free, FireSettings.FINE);
            why = broken(firing);
            if (why.isEmpty()) {
                Free honest = asTheKilnGoes(free, firing);
                Firing freeFall = honest == free ? firing : run(honest, FireSettings.FINE);
                return found(broken(freeFall).isEmpty() ? freeFall : firing);
            }
            double phi = HeatWork.of(firing.faceCurve(), flux);
            double more = HeatWork.equivalentSoakS(wanted - phi, Math.min(peakC, firing.faceCurve().peakC()), flux) / 60;
            boolean slower = !why.equals(HEAT_WORK);
            free = free.each(soak -> Math.max(0, Math.min(MOST_SOAK_MIN, Math.rint((soak + more) * 4) / 4)), Part.PEAK_SOAK);
            if (why.equals(ANNEALING_SOAK)) {
                free = free.each(soak -> soak + 1, Part.ANNEAL_SOAK);
            } else if (slower) {
                free = free.each(rate -> down(rate * 0.95), RATES);
            }
        }
        throw new Refusal(given.name(), "no schedule keeps to the limits: " + why, "ease that limit, change the peak, or fire thinner glass");
    }

    private FoundSchedule found(Firing firing) {
        List<String> held = new ArrayList<>(touched(firing, TOUCHED));
        List<Segment> asked = firing.schedule().segments();
        if (firing.segments().stream().anyMatch(run -> lags(run, asked.get(run.index())))) {
            held.add("what the kiln can do");
        }
        return new FoundSchedule(firing.schedule(), firing, HeatWork.of(firing.faceCurve(), flux), wanted, runs, held);
    }

    /** Falls that the kiln cannot follow are written as free falls; the same object if there are none. */
    private static Free asTheKilnGoes(Free free, Firing firing) {
        Free honest = free;
        for (SegmentRun run : firing.segments()) {
            Part part = run.index() < RATES.length ? RATES[run.index()] : null;
            if ((part == Part.FALL || part == Part.COOL) && honest.get(part) > 0 && Math.abs(run.meanRateKPerH()) < TOUCHED * honest.get(part)) {
                honest = honest.with(part, 0);
            }
        }
        return honest;
    }

    private static boolean lags(SegmentRun run, Segment segment) {
        return segment.fullRate() || Math.abs(run.meanRateKPerH()) < 0.97 * segment.rateKPerH();
    }
}
