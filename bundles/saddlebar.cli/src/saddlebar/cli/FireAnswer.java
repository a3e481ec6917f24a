package saddlebar.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import saddlebar.kiln.fire.Firing;
import saddlebar.kiln.fire.Kiln;
import saddlebar.kiln.glass.Vft;
import saddlebar.kiln.log.FiringLog;
import saddlebar.kiln.log.LogReview;
import saddlebar.kiln.log.SegmentFit;
import saddlebar.kiln.paint.PaintFlux;
import saddlebar.kiln.search.FoundSchedule;
import saddlebar.kiln.search.KilnLearning;
import saddlebar.model.problem.Problem;

/** The JSON document of {@code fire}; what was not asked for is left out. {@code heatWork} is that of the schedule as written, in 1/Pa. */
record FireAnswer(double hours, double hoursAsWritten, double hoursToOpen, double peakC, double facePeakC, double heatWork, double heatWorkSimulated,
        double coreLagMaxK,
        double stressMaxMpa, double residualMpa, boolean annealed, List<Advice> advice, LogAnswer log, double kWh, Points glass, Optimised optimised,
        Learnt learnt,
        String chart) {
    /** One piece of advice. */
    record Advice(String code, String severity, String where, String message) {
        static Advice of(Problem problem) {
            return new Advice(problem.code(), problem.severity().key(), problem.where(), problem.message());
        }
    }

    /** The log against the schedule. {@code heatWorkRatioSimulated} is against what the kiln should have done by its figures; both are left
     * out where the schedule has no heat work. */
    record LogAnswer(Double heatWorkRatio, Double heatWorkRatioSimulated, double overshootK, double minutesNearPeak, int gaps, String verdict,
            double peakC,
            double lagS, int spikes, Double measuredKWh, String paint, List<Segment> segments, List<Advice> cautions) {
    }

    /** A ramp; rates with a sign, what is not known left out. */
    record Segment(int segment, Double scheduledKPerH, Double measuredKPerH, double soakMin) {
        static Segment of(SegmentFit fit) {
            return new Segment(fit.index() + 1, fit.scheduledKPerH().orElse(null), fit.measuredKPerH().orElse(null), fit.soakMin());
        }
    }

    /** Reference points of the glass, degC. */
    record Points(String name, double strainC, double annealingC, double softeningC, double workingC) {
    }

    /** What was learnt of the kiln, and how near its run lies to the logs. */
    record Learnt(double chamberJPerK, double liningJPerK, double toLiningWPerK, double toRoomWPerK, double beforeK, double afterK) {
        static Learnt of(KilnLearning.Learnt learnt) {
            Kiln kiln = learnt.kiln();
            return new Learnt(kiln.chamberJPerK(), kiln.liningJPerK(), kiln.toLiningWPerK(), kiln.toRoomWPerK(), learnt.beforeK(), learnt.afterK());
        }
    }

    /** The schedule that was found. */
    record Optimised(String file, double hours, double hoursToOpen, double heatWork, double coreLagMaxK, double stressMaxMpa, double residualMpa,
            boolean annealed, double kWh, List<String> heldBackBy) {
        static Optimised of(FoundSchedule found, Path file) {
            Firing firing = found.firing();
            return new Optimised(file.toString(), firing.hours(), firing.hoursToOpen(), found.heatWork(), firing.coreLagMaxK(),
                    firing.tensionMaxMpa(),
                    firing.annealing().residualMpa(), firing.annealing().annealed(), firing.energy().kWh(), found.heldBackBy());
        }
    }

    static FireAnswer of(Firing firing, double written, Vft counts, List<Problem> advice, Optional<FiringLog> read, Optional<LogReview> review,
            Optional<PaintFlux> paint, Optional<FoundSchedule> shortest, Optional<KilnLearning.Learnt> learnt, Path optimise,
            Path chart) {
        Vft glass = firing.load().glass().viscosity();
        double simulated = firing.heatWork(counts);
        LogAnswer log = review.isEmpty() ? null : logAnswer(review.get(), read.orElseThrow(), simulated, paint);
        return new FireAnswer(firing.hours(), firing.schedule().asWritten().hours(), firing.hoursToOpen(), firing.peakC(), firing.faceCurve().peakC(),
                written, simulated,
                firing.coreLagMaxK(),
                firing.tensionMaxMpa(), firing.annealing().residualMpa(), firing.annealing().annealed(), advice.stream().map(Advice::of).toList(),
                log,
                firing.energy().kWh(),
                new Points(firing.load().glass().name(), glass.strainC(), glass.annealingC(), glass.softeningC(), glass.workingC()),
                shortest.map(found -> Optimised.of(found, optimise)).orElse(null), learnt.map(Learnt::of).orElse(null),
                chart == null ? null : chart.toString());
    }

    private static LogAnswer logAnswer(LogReview review, FiringLog log, double simulated, Optional<PaintFlux> paint) {
        return new LogAnswer(known(review.heatWorkRatio()), known(review.heatWork() / simulated), review.overshootK(), review.minutesNearPeak(),
                log.gaps().size(),
                review.verdict().key(), log.curve().peakC(), review.lagS(), log.spikes(), log.measuredKWh().orElse(null),
                paint.map(flux -> flux.at(review.heatWork()).words()).orElse(null), review.segments().stream().map(Segment::of).toList(),
                review.cautions().stream().map(Advice::of).toList());
    }

    /** A schedule too cool to make any glass flow has no heat work to compare with. */
    private static Double known(double ratio) {
        return Double.isFinite(ratio) ? ratio : null;
    }
}
