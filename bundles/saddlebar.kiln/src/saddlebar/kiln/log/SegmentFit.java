package saddlebar.kiln.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import saddlebar.kiln.schedule.HeatCurve;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.kiln.schedule.Segment;

/**
 * One segment as the log shows it. The slope is the least-squares line through the readings of the middle 80 % of the ramp, which no soak
 * bends; where a log began does not matter.
 *
 * @param index         of the segment
 * @param scheduledKPerH with a sign; empty for as fast as the kiln goes
 * @param measuredKPerH with a sign; empty if the kiln never went there, or there are fewer than three readings
 * @param soakMin       minutes within 5 K of the target before the next segment's ramp
 * @param endS          when nine tenths of the ramp were passed, s of the log
 */
public record SegmentFit(int index, Optional<Double> scheduledKPerH, Optional<Double> measuredKPerH, double soakMin, double endS) {
    private static final double LEAST_RAMP_K = 15;
    private static final double NEAR_K = 5;

    /** How much steeper (positive) or flatter the kiln went than told, as a share; empty if there is nothing to compare. */
    public Optional<Double> rateError() {
        return scheduledKPerH.isPresent() && measuredKPerH.isPresent()
                ? Optional.of(measuredKPerH.get() / scheduledKPerH.get() - 1)
                : Optional.empty();
    }

    /** One fit for each ramp of at least 15 K, in order. */
    static List<SegmentFit> all(Schedule schedule, HeatCurve log) {
        List<SegmentFit> fits = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < schedule.segments().size(); i++) {
            Segment segment = schedule.segments().get(i);
            double startC = schedule.fromC(i);
            double step = segment.targetC() - startC;
            if (Math.abs(step) < LEAST_RAMP_K) {
                continue;
            }
            double sign = Math.signum(step);
            int end = from;
            while (end < log.points() && sign * (log.temperatureC(end) - startC - 0.9 * step) < 0) {
                end++;
            }
            Optional<Double> told = segment.fullRate() ? Optional.empty() : Optional.of(sign * segment.rateKPerH());
            if (end == log.points()) {
                fits.add(new SegmentFit(i, told, Optional.empty(), 0, log.endS()));
                continue;
            }
            int begin = end;
            while (begin > from && sign * (log.temperatureC(begin) - startC - 0.1 * step) > 0) {
                begin--;
            }
            fits.add(new SegmentFit(i, told, slope(log, begin, end), soak(log, end, segment.targetC()), log.timeS(end)));
            from = end;
        }
        return fits;
    }

    private static Optional<Double> slope(HeatCurve log, int from, int to) {
        int n = to - from + 1;
        if (n < 3) {
            return Optional.empty();
        }
        double meanT = 0;
        double meanC = 0;
        for (int i = from; i <= to; i++) {
            meanT += log.timeS(i) / n;
            meanC += log.temperatureC(i) / n;
        }
        double up = 0;
        double down = 0;
        for (int i = from; i <= to; i++) {
            up += (log.timeS(i) - meanT) * (log.temperatureC(i) - meanC);
            down += (log.timeS(i) - meanT) * (log.timeS(i) - meanT);
        }
        return down == 0 ? Optional.empty() : Optional.of(up / down * 3600);
    }

    /** From nine tenths of the ramp on: the first stay within 5 K of the target, swings of a controller up to 15 K off included. */
    private static double soak(HeatCurve log, int from, double targetC) {
        double sum = 0;
        boolean there = false;
        for (int i = from + 1; i < log.points(); i++) {
            double off = Math.abs(log.temperatureC(i) - targetC);
            if (off <= NEAR_K) {
                sum += there ? log.timeS(i) - log.timeS(i - 1) : 0;
                there = true;
            } else if (there && off > 3 * NEAR_K) {
                break;
            }
        }
        return sum / 60;
    }
}
