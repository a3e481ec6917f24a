package saddlebar.kiln.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import saddlebar.kiln.fire.Annealing;
import saddlebar.kiln.fire.Firing;
import saddlebar.kiln.fire.Load;
import saddlebar.kiln.fire.SegmentRun;
import saddlebar.kiln.fire.Trace;
import saddlebar.kiln.glass.Glass;
import saddlebar.kiln.paint.FiringOrder;
import saddlebar.kiln.paint.PaintFlux;
import saddlebar.kiln.paint.PaintHistory;
import saddlebar.kiln.paint.PaintKind;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.kiln.schedule.Segment;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;

/**
 * Advice on a schedule before it is fired, each with its reason in figures. Limits without a published source say so in docs/algorithms/kiln.md:
 * they are studio rules, and a test piece in one's own kiln is worth more.
 */
public final class Advisor {
    /** Working tension of painted, hand-cut edges: target, no source; 45 MPa is the characteristic strength of whole faces (EN 572). */
    public static final double WORKING_MPA = 7;
    /** Difference in the plane that an annealed pane bears by a handbook. */
    private static final double IN_PLANE_K = 40;
    private static final double RATE_SLACK = 1.02;
    private static final double ABOVE_STRAIN_K = 20;
    private static final double BELOW_SOFTENING_K = 40;
    private static final double OPEN_C = 80;
    private static final double VENT_C = 350;

    private final Firing firing;
    private final Optional<PaintFlux> paint;
    private final List<PaintHistory.Fired> earlier;
    private final List<Problem> found = new ArrayList<>();

    private Advisor(Firing firing, Optional<PaintFlux> paint, List<PaintHistory.Fired> earlier) {
        this.firing = firing;
        this.paint = paint;
        this.earlier = earlier;
    }

    /**
     * @param firing  simulated
     * @param paint   new on the glass in this firing, if known
     * @param earlier what the piece went through before, in order
     * @return worst first
     */
    public static List<Problem> on(Firing firing, Optional<PaintFlux> paint, List<PaintHistory.Fired> earlier) {
        Advisor advisor = new Advisor(firing, paint, earlier);
        advisor.reach();
        advisor.heating();
        advisor.peak();
        advisor.paints();
        advisor.annealing();
        advisor.stress();
        advisor.safety();
        advisor.found.sort(Problem.WORST_FIRST);
        return List.copyOf(advisor.found);
    }

    private void warn(String code, String where, String words, Object... values) {
        found.add(Problem.of(code, Severity.WARNING, where, String.format(Locale.ROOT, words, values)));
    }

    private void note(String code, String where, String words, Object... values) {
        found.add(Problem.of(code, Severity.NOTE, where, String.format(Locale.ROOT, words, values)));
    }

    private String where(int index) {
        String name = firing.schedule().segments().get(index).name();
        return "segment " + (index + 1) + (name.isBlank() || name.equals(String.valueOf(index + 1)) ? "" : " (" + name + ")");
    }

    private void reach() {
        Schedule schedule = firing.schedule();
        if (schedule.peakC() > firing.kiln().maxC()) {
            warn("kiln-max", where(schedule.peakIndex()), "%.0f degC is above the %.0f degC that this kiln is made for; lower the target.",
                    schedule.peakC(),
                    firing.kiln().maxC());
        }
        if (firing.cutOff()) {
            warn("schedule-long", "", "After %.0f h it is not over and was looked at no further; check its rates and soaks.", firing.hours());
        }
        for (SegmentRun run : firing.segments()) {
            Segment segment = schedule.segments().get(run.index());
            if (firing.cutOff() && run.endS() >= 3600 * firing.hours() - 1) {
                break;
            }
            if (!run.reached()) {
                warn("kiln-cannot", where(run.index()), "This kiln does not come to %.0f degC, it stays at %.0f; change the target.",
                        segment.targetC(), run.reachedC());
            } else if (!segment.fullRate() && Math.abs(run.meanRateKPerH()) < 0.9 * segment.rateKPerH()
                    && Math.abs(segment.targetC() - run.startC()) > 5) {
                note("kiln-lags", where(run.index()), "The kiln manages %.0f K/h in place of %.0f K/h by its figures; the segment takes %.1f h.",
                        Math.abs(run.meanRateKPerH()), segment.rateKPerH(), (run.rampEndS() - run.startS()) / 3600);
            }
        }
    }

    private void heating() {
        Load load = firing.load();
        double most = load.practiceRateKPerH();
        double until = load.glass().viscosity().strainC() + ABOVE_STRAIN_K;
        for (SegmentRun run : firing.segments()) {
            Segment segment = firing.schedule().segments().get(run.index());
            double rate = Math.abs(run.meanRateKPerH());
            if (segment.targetC() > run.startC() + 5 && run.startC() < until - 50 && rate > RATE_SLACK * most) {
                warn("ramp-fast", where(run.index()),
                        "%.0f K/h is faster than %.0f K/h, usual practice below %.0f degC for pieces of %.0f mm, %s mm thick: edges heat before "
                                + "middles and cold glass cracks; slow it.",
                        rate, most, until, load.largestMm(), saddlebar.model.units.Units.plain(load.thicknessMm()));
            }
        }
    }

    private void peak() {
        Glass glass = firing.load().glass();
        double limit = glass.viscosity().softeningC() - BELOW_SOFTENING_K;
        double peak = firing.faceCurve().peakC();
        int at = firing.schedule().peakIndex();
        if (peak > limit) {
            warn("peak-high", where(at),
                    "The glass comes to %.0f degC; above %.0f degC (softening point less 40) cut edges round and the shelf marks it; lower the peak.",
                    peak, limit);
        }
        double behind = firing.schedule().peakC() - peak;
        if (behind > 5) {
            note("glass-behind", where(at), "The painted face comes only to %.0f degC, %.0f K behind the kiln; soak longer.", peak, behind);
        }
    }

    private void paints() {
        List<PaintHistory.Fired> all = new ArrayList<>(earlier);
        all.add(new PaintHistory.Fired(firing.schedule().name(), paint.map(List::of).orElse(List.of()), firing.faceCurve()));
        found.addAll(PaintHistory.of(all).cautions());
        List<FiringOrder.Step> steps = new ArrayList<>();
        for (PaintHistory.Fired fired : all) {
            fired.newLayers().forEach(layer -> steps.add(new FiringOrder.Step(layer, fired.curve().peakC())));
        }
        found.addAll(FiringOrder.check(steps));
        if (paint.isPresent() && paint.get().kind() == PaintKind.STAIN) {
            note("stain-last", paint.get().name(), "Stain is fired last of all and lowest (common practice).");
        }
    }

    private void annealing() {
        Annealing annealing = firing.annealing();
        Glass glass = firing.load().glass();
        double strain = glass.viscosity().strainC();
        double point = glass.viscosity().annealingC();
        if (!annealing.heated()) {
            note("below-strain", "", "The glass stays below its strain point of %.0f degC: this firing anneals nothing and spoils nothing.", strain);
            return;
        }
        if (!annealing.soaked()) {
            warn("anneal-short", "",
                    "On its way down the glass stays %.0f min near %.0f degC and needs %.0f; soak at %.0f degC for at least %.0f min.",
                    annealing.soakMin(), annealing.soakC(), annealing.neededMin(), point, Annealing.neededMin(glass, point));
        }
        if (annealing.residualMpa() > Annealing.LIMIT_MPA) {
            warn("anneal-fast", "", "%.2f MPa of tension would stay in the glass, more than %.1f; cool more slowly from %.0f to %.0f degC.",
                    annealing.residualMpa(),
                    Annealing.LIMIT_MPA, point, strain - 30);
        }
        if (annealing.annealed()) {
            note("annealed", "", "Annealed: %.0f min near %.0f degC, %.2f MPa stays.", annealing.soakMin(), annealing.soakC(),
                    annealing.residualMpa());
        }
    }

    private void stress() {
        double tension = firing.tensionMaxMpa();
        if (tension > WORKING_MPA) {
            warn("stress-high", "",
                    "The difference through the glass stretches it by %.1f MPa, more than the %.0f MPa that painted cut edges are trusted with; "
                            + "slow the ramps.",
                    tension, WORKING_MPA);
        }
        double perK = firing.load().glass().youngPa() * firing.load().glass().expansionPerK() / 1e6;
        note("in-plane", "",
                "A piece half on a cold prop or near an element takes %.2f MPa for each K between its parts: keep pieces off the edges of the "
                        + "shelf; %.0f K breaks a pane.",
                perK, IN_PLANE_K);
    }

    private void safety() {
        Schedule schedule = firing.schedule();
        boolean vent = schedule.segments().stream().anyMatch(s -> s.targetC() <= VENT_C && s.soakMin() > 0);
        note("safety-fumes", "", vent
                ? "Fumes: open the vent until the medium is burnt off and air the room; paints may hold lead or cadmium."
                : "Fumes: no segment waits below 350 degC for the medium to burn off; add 10 min at 300 degC with the vent open, and air the "
                        + "room; paints may hold lead or cadmium.");
        note("safety-peak", "", "Never leave the kiln unattended near its peak; look in only with eye protection made for kilns, gloves on: burns.");
        double last = schedule.segments().get(schedule.segments().size() - 1).targetC();
        double soakEnd = firing.trace().value(Trace.Quantity.KILN_C, firing.trace().size() - 1);
        note("safety-door", "", "Keep it shut until it is below %.0f degC (%s): cold air on hot glass cracks it.", OPEN_C,
                soakEnd > OPEN_C || last > OPEN_C
                        ? String.format(Locale.ROOT, "at the end of this schedule it still stands at %.0f", soakEnd)
                        : String.format(Locale.ROOT, "after about %.1f h", firing.hoursToOpen()));
    }
}
