package saddlebar.kiln.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import saddlebar.kiln.glass.Vft;
import saddlebar.kiln.paint.HeatWork;
import saddlebar.kiln.schedule.HeatCurve;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;

/**
 * A log held against its schedule.
 *
 * @param heatWork         Phi of the log, 1/Pa
 * @param scheduledWork    Phi of the schedule as written
 * @param overshootK       highest logged less highest scheduled, 0 if lower
 * @param minutesNearPeak  minutes hotter than the scheduled peak less 5 K
 * @param lagS             how much later the log's curve lies than the schedule's, by cross-correlation; a late start of the firing is in it
 * @param segments         ramps and soaks
 * @param unknownShare     heat work that gaps and a cut-off end may hide, as a share of the scheduled
 * @param verdict          what it comes to
 * @param cautions         what a person should look at
 */
public record LogReview(double heatWork, double scheduledWork, double overshootK, double minutesNearPeak, double lagS, List<SegmentFit> segments,
        double unknownShare, Verdict verdict, List<Problem> cautions) {
    /** Heat work beyond these shares of the scheduled is hot or cold (studio targets, no source). */
    public static final double HOT = 2;
    public static final double COLD = 0.5;
    private static final double OK_LOW = 0.7;
    private static final double OK_HIGH = 1.4;
    private static final double NEAR_K = 5;
    private static final double HIDDEN_SHARE = 0.5;
    /** What a studio kiln can climb or fall within a gap, K/s. */
    private static final double GAP_PACE = 600.0 / 3600;
    private static final double GAP_MATTERS = 0.05;
    private static final double OVERSHOOT_K = 8;
    private static final double RATE_ERROR = 0.25;

    public LogReview {
        segments = List.copyOf(segments);
        cautions = List.copyOf(cautions);
    }

    /** What a log says about a firing. */
    public enum Verdict {
        AS_SCHEDULED("as scheduled"), HOT("hot"), COLD("cold"), UNUSABLE("unusable");

        private final String key;

        Verdict(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }
    }

    public double heatWorkRatio() {
        return heatWork / scheduledWork;
    }

    /** The ratio as a shift of the peak: a steady error of the thermocouple or of the kiln that would do the same, K. */
    public double equivalentShiftK(Schedule schedule, Vft viscosity) {
        double peak = schedule.peakC();
        return viscosity.temperatureC(viscosity.logEta(peak) - Math.log10(heatWorkRatio())) - peak;
    }

    /** @param viscosity of the glass, or of the flux where a paint is named: for the log and for the schedule alike */
    public static LogReview of(Schedule schedule, FiringLog log, Vft viscosity) {
        HeatCurve written = schedule.asWritten();
        double scheduled = HeatWork.of(written, viscosity);
        double measured = HeatWork.of(log.curve(), viscosity);
        double peak = schedule.peakC();
        double hidden = hidden(log, peak, viscosity) / scheduled;
        Verdict verdict = hidden > HIDDEN_SHARE || log.curve().points() < 10 || !(scheduled > 0)
                ? Verdict.UNUSABLE
                : measured / scheduled > HOT ? Verdict.HOT : measured / scheduled < COLD ? Verdict.COLD : Verdict.AS_SCHEDULED;
        List<SegmentFit> fits = SegmentFit.all(schedule, log.curve());
        LogReview bare = new LogReview(measured, scheduled, Math.max(0, log.curve().peakC() - peak), log.curve().minutesAbove(peak - NEAR_K),
                TimeLag.seconds(written, log.curve()), fits, hidden, verdict, List.of());
        return new LogReview(measured, scheduled, bare.overshootK, bare.minutesNearPeak, bare.lagS, fits, hidden, verdict,
                bare.cautions(schedule, log, viscosity));
    }

    /** The most heat work that the log may have missed: in gaps near the peak, and behind an end near the peak. */
    private static double hidden(FiringLog log, double peakC, Vft viscosity) {
        double sum = 0;
        for (FiringLog.Gap gap : log.gaps()) {
            double span = gap.toS() - gap.fromS();
            double ends = Math.max(gap.fromC(), gap.toC());
            double highest = Math.max(ends, Math.min(peakC, (gap.fromC() + gap.toC()) / 2 + GAP_PACE * span / 2));
            sum += span * (viscosity.fluidity(highest) - viscosity.fluidity(Math.min(gap.fromC(), gap.toC())));
        }
        HeatCurve curve = log.curve();
        double last = curve.temperatureC(curve.points() - 1);
        boolean cutOff = last > peakC - 40 || curve.peakC() < peakC - 40 && last > curve.peakC() - 5 && last > 100;
        return cutOff ? Double.POSITIVE_INFINITY : sum;
    }

    private List<Problem> cautions(Schedule schedule, FiringLog log, Vft viscosity) {
        List<Problem> found = new ArrayList<>(log.remarks());
        String name = log.name();
        double ratio = heatWorkRatio();
        if (verdict == Verdict.UNUSABLE) {
            found.add(Problem.of("log-unusable", Severity.WARNING, name, Double.isInfinite(unknownShare)
                    ? "The log ends before the kiln fell from its peak; how much heat the paint had cannot be told from it."
                    : "Too much of the log near the peak is missing; how much heat the paint had cannot be told from it."));
        } else if (ratio > OK_HIGH || ratio < OK_LOW) {
            String shift = String.format(Locale.ROOT, "%.2f times the heat work of the schedule, as if the peak had been %.0f K %s", ratio,
                    Math.abs(equivalentShiftK(schedule, viscosity)), ratio > 1 ? "higher" : "lower");
            boolean bad = verdict != Verdict.AS_SCHEDULED;
            found.add(Problem.of(ratio > 1 ? "log-hot" : "log-cold", bad ? Severity.WARNING : Severity.NOTE, name, shift
                    + (ratio > 1 ? "; look for sunken lines and burnt colour." : "; look for paint that rubs off.")));
        }
        if (overshootK > OVERSHOOT_K) {
            found.add(Problem.of("log-overshoot", Severity.WARNING, name, String.format(Locale.ROOT,
                    "The kiln overshot the peak by %.1f K; slow the last ramp or tune the controller.", overshootK)));
        }
        for (SegmentFit fit : segments) {
            String where = name + ", segment " + (fit.index() + 1);
            if (fit.measuredKPerH().isEmpty() && fit.endS() == log.curve().endS()) {
                found.add(Problem.of("log-not-reached", fit.index() <= schedule.peakIndex() ? Severity.WARNING : Severity.NOTE, where,
                        String.format(Locale.ROOT, "The log never comes to %.0f degC.", schedule.segments().get(fit.index()).targetC())));
            }
            fit.rateError().filter(error -> Math.abs(error) > RATE_ERROR).ifPresent(error -> found.add(Problem.of("log-rate", Severity.NOTE, where,
                    String.format(Locale.ROOT, "The kiln went at %.0f K/h in place of %.0f K/h.", fit.measuredKPerH().get(),
                            fit.scheduledKPerH().get()))));
        }
        if (!log.gaps().isEmpty()) {
            double longest = log.gaps().stream().mapToDouble(FiringLog.Gap::minutes).max().orElseThrow();
            boolean matters = unknownShare > GAP_MATTERS || verdict == Verdict.UNUSABLE;
            found.add(Problem.of("log-gaps", matters ? Severity.WARNING : Severity.NOTE, name,
                    String.format(Locale.ROOT, "%d gap%s without readings, the longest %.1f min%s.", log.gaps().size(),
                            log.gaps().size() == 1 ? "" : "s", longest,
                            matters ? "; the kiln was hot enough there to matter" : ", none where it matters to the paint")));
        }
        return found;
    }
}
