package saddlebar.kiln.log;

import java.util.List;
import java.util.Optional;

import saddlebar.kiln.schedule.HeatCurve;
import saddlebar.model.problem.Problem;

/**
 * What a kiln's logger wrote, cleaned: seconds from its first row, degC.
 *
 * @param name      of the file
 * @param curve     temperature over time, spikes taken out
 * @param beganAt   the first row's time as it stands in the file, if it is a date
 * @param gaps      stretches without a reading
 * @param spikes    readings taken out since they fit neither neighbour
 * @param repeated  rows whose time stood there twice; the later counts
 * @param dropouts  rows without a reading
 * @param measuredKWh energy, if the log has a column of power or duty and the elements' power is known
 * @param remarks   what a person should know about it
 */
public record FiringLog(String name, HeatCurve curve, Optional<String> beganAt, List<Gap> gaps, int spikes, int repeated, int dropouts,
        Optional<Double> measuredKWh, List<Problem> remarks) {
    public FiringLog {
        gaps = List.copyOf(gaps);
        remarks = List.copyOf(remarks);
    }

    /** A stretch without readings. */
    public record Gap(double fromS, double toS, double fromC, double toC) {
        public double minutes() {
            return (toS - fromS) / 60;
        }
    }
}
