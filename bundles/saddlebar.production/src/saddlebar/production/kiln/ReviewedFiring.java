package saddlebar.production.kiln;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import saddlebar.kiln.log.FiringLog;
import saddlebar.kiln.log.LogReview;
import saddlebar.kiln.paint.PaintFlux;
import saddlebar.kiln.schedule.HeatCurve;
import saddlebar.model.problem.Problem;

/**
 * A firing held against its log.
 *
 * @param log      empty if there is none, or it cannot be read
 * @param review   empty without schedule or log
 * @param shiftK   the steady error that would explain its heat work, K; empty where it cannot be told
 * @param maturity what the firing alone did to each paint that was fired in it, by the paint's name
 * @param problems of its log
 */
public record ReviewedFiring(RecordedFiring firing, Optional<FiringLog> log, Optional<LogReview> review, Optional<Double> shiftK,
        Map<String, PaintFlux.Maturity> maturity, List<Problem> problems) {
    public ReviewedFiring {
        maturity = Map.copyOf(maturity);
        problems = List.copyOf(problems);
    }

    /** Of the log, else as a person told it, else as scheduled. */
    public Optional<Double> peakC() {
        return log.map(FiringLog::curve).map(HeatCurve::peakC).or(firing::peakC).or(() -> firing.asRun().map(schedule -> schedule.peakC()));
    }

    public Optional<Double> hours() {
        return log.map(found -> found.curve().hours()).or(() -> firing.asRun().map(schedule -> schedule.asWritten().hours()));
    }

    /** As a person read the meter, else as the log tells. */
    public Optional<Double> kWh() {
        return firing.kWh().or(() -> log.flatMap(FiringLog::measuredKWh));
    }
}
