package saddlebar.kiln.search;

import java.util.ArrayList;
import java.util.List;

import saddlebar.kiln.fire.Kiln;
import saddlebar.kiln.fire.KilnRun;
import saddlebar.kiln.schedule.HeatCurve;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.model.units.Require;
import saddlebar.model.work.Work;

/**
 * Learns what a kiln's elements and lining can do from logs of its own: the heat that chamber and lining take up and the two conductances, such that
 * the run of each
 * schedule lies nearest to its log (root mean square). A log tells them only in proportion to the power, which must be known; and only logs in which the kiln
 * fell behind or fell by itself tell anything. The usual load is part of the chamber in what is learnt.
 */
public final class KilnLearning {
    private static final double STEP_S = 30;
    private static final int MOST_CALLS = 900;
    private static final int SAMPLES = 300;

    private KilnLearning() {
    }

    /** A schedule and what the kiln did; the log's clock begins with the firing. */
    public record Lesson(Schedule schedule, HeatCurve log) {
    }

    /** What was learnt, and how near it comes: root mean square of the difference before and after, K. */
    public record Learnt(Kiln kiln, double beforeK, double afterK) {
    }

    /** @throws IllegalArgumentException without a lesson */
    public static Learnt from(Kiln start, List<Lesson> lessons, Work work) {
        Require.within("number of lessons", lessons.size(), 1, 1000);
        double shelf = 0.5 * start.chamberJPerK();
        Kiln loaded = with(start, new double[] {Math.log(1 + shelf / start.chamberJPerK()), 0, 0, 0});
        double[] best = {0, 0, 0, 0};
        List<double[]> starts = new ArrayList<>(List.of(best, new double[] {0.4, 0.4, 0, 0}, new double[] {-0.4, -0.4, 0, 0}));
        double least = Double.POSITIVE_INFINITY;
        for (double[] from : starts) {
            double[] found = SimplexSearch.least(x -> {
                work.checkpoint();
                return missK(with(loaded, x), lessons) + 0.02 * bound(x);
            }, from, 0.25, MOST_CALLS, 1e-4);
            double miss = missK(with(loaded, found), lessons);
            if (miss < least) {
                least = miss;
                best = found;
            }
        }
        return new Learnt(with(loaded, best), missK(loaded, lessons), least);
    }

    /** Keeps figures that a log says nothing about from wandering off. */
    private static double bound(double[] x) {
        double sum = 0;
        for (double one : x) {
            double beyond = Math.max(0, Math.abs(one) - 1);
            sum += one * one * 1e-2 + 100 * beyond * beyond;
        }
        return sum;
    }

    /** Each figure times e to one variable. */
    private static Kiln with(Kiln kiln, double[] x) {
        return new Kiln(kiln.name(), kiln.maxC(), kiln.powerW(), clamp(kiln.chamberJPerK() * Math.exp(x[0]), 100, 1e8),
                clamp(kiln.liningJPerK() * Math.exp(x[1]), 100, 1e9), clamp(kiln.toLiningWPerK() * Math.exp(x[2]), 1e-3, 1e5),
                clamp(kiln.toRoomWPerK() * Math.exp(x[3]), 1e-3, 1e5), kiln.shelfM2());
    }

    private static double clamp(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }

    /** Root mean square of run less log over all lessons, K. */
    static double missK(Kiln kiln, List<Lesson> lessons) {
        double sum = 0;
        for (Lesson lesson : lessons) {
            HeatCurve log = lesson.log();
            double length = log.endS() - log.startS();
            HeatCurve run = KilnRun.of(lesson.schedule(), kiln, log.temperatureC(0), STEP_S, length);
            for (int i = 0; i < SAMPLES; i++) {
                double at = length * i / (SAMPLES - 1);
                double off = run.at(at) - log.at(log.startS() + at);
                sum += off * off;
            }
        }
        return Math.sqrt(sum / (SAMPLES * (double) lessons.size()));
    }
}
