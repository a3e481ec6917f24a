package saddlebar.kiln.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.function.DoublePredicate;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import saddlebar.kiln.glass.Glass;
import saddlebar.kiln.log.LogReview.Verdict;
import saddlebar.kiln.schedule.HeatCurve;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.kiln.schedule.Segment;

class LogReviewTest {
    private static final Schedule TOLD = schedule(650, 10);

    private static Schedule schedule(double peak, double soak) {
        return new Schedule("s",
                List.of(new Segment("", 150, 520, 0), new Segment("", 300, peak, soak), new Segment("", 300, 560, 20), new Segment("", 100, 100, 0)));
    }

    private static FiringLog log(Schedule done, double stepS, double lateS, DoublePredicate keep) {
        HeatCurve curve = done.asWritten();
        StringBuilder text = new StringBuilder("seconds,temperature_c\n");
        for (double s = -lateS; s <= curve.endS(); s += stepS) {
            if (keep.test(s)) {
                text.append(String.format(Locale.ROOT, "%.3f,%.4f%n", s, curve.at(Math.max(0, s))));
            }
        }
        return LogReader.read(text.toString(), "log.csv");
    }

    private static LogReview review(Schedule done, double stepS) {
        return LogReview.of(TOLD, log(done, stepS, 0, s -> true), Glass.DGG_I);
    }

    /** Ratios of a peak 10 K off and of a soak twice as long: worked out outside of this program (steps of 1 s, DGG I, 300 K/h down to 560). */
    @Test
    void ratiosOfHeatWork() {
        assertEquals(1, review(TOLD, 60).heatWorkRatio(), 0.005);
        assertEquals(1.849, review(schedule(660, 10), 30).heatWorkRatio(), 0.02);
        assertEquals(0.525, review(schedule(640, 10), 30).heatWorkRatio(), 0.01);
        assertEquals(3.324, review(schedule(670, 10), 30).heatWorkRatio(), 0.05);
        assertEquals(1.622, review(schedule(650, 20), 30).heatWorkRatio(), 0.02);
    }

    @Test
    void verdicts() {
        assertEquals(Verdict.AS_SCHEDULED, review(TOLD, 60).verdict());
        assertEquals(Verdict.AS_SCHEDULED, review(schedule(650, 12), 60).verdict());
        assertEquals(Verdict.HOT, review(schedule(670, 10), 60).verdict());
        assertEquals(Verdict.COLD, review(schedule(630, 10), 60).verdict());
        assertTrue(review(schedule(670, 10), 60).cautions().stream().anyMatch(p -> p.code().equals("log-hot")));
        assertTrue(review(schedule(670, 10), 60).cautions().stream().anyMatch(p -> p.code().equals("log-overshoot")));
        assertTrue(review(schedule(630, 10), 60).cautions().stream().anyMatch(p -> p.code().equals("log-cold")));
    }

    @Test
    void overshootAndTimeNearThePeak() {
        LogReview hot = review(schedule(656, 10), 10);
        assertEquals(6, hot.overshootK(), 0.05);
        assertEquals(10 + 2 * 11 / 300.0 * 60, hot.minutesNearPeak(), 0.05);
        assertEquals(0, review(schedule(640, 10), 10).overshootK());
        assertEquals(0, review(schedule(640, 10), 10).minutesNearPeak());
    }

    @Property(tries = 30)
    void slopesAndSoaksAreFound(@ForAll @DoubleRange(min = 60, max = 280) double up, @ForAll @DoubleRange(min = 40, max = 250) double down,
            @ForAll @DoubleRange(min = 0, max = 7200) double lateS) {
        Schedule done = new Schedule("s",
                List.of(new Segment("", up, 520, 0), new Segment("", 300, 650, 10), new Segment("", 300, 560, 20), new Segment("", down, 100, 0)));
        List<SegmentFit> fits = SegmentFit.all(TOLD, log(done, 30, lateS, s -> true).curve());
        assertEquals(4, fits.size());
        assertEquals(up, fits.get(0).measuredKPerH().orElseThrow(), 0.01 * up);
        assertEquals(-down, fits.get(3).measuredKPerH().orElseThrow(), 0.01 * down);
        assertEquals(10, fits.get(1).soakMin(), 2.6);
        assertEquals(20 + 5 / 300.0 * 60 + 5 / down * 60, fits.get(2).soakMin(), 1.6,
                "the last 5 K of one ramp and the first of the next are counted in");
        assertEquals(up / 150 - 1, fits.get(0).rateError().orElseThrow(), 0.02);
    }

    @Property(tries = 20)
    void lagIsFound(@ForAll @DoubleRange(min = 0, max = 5000) double lateS) {
        assertEquals(lateS, LogReview.of(TOLD, log(TOLD, 20, lateS, s -> true), Glass.DGG_I).lagS(), 15);
    }

    @Test
    void aGapMattersOnlyWhereTheKilnIsHot() {
        double top = TOLD.asWritten().peakS();
        LogReview cold = LogReview.of(TOLD, log(TOLD, 60, 0, s -> s < 3000 || s > 5000), Glass.DGG_I);
        assertEquals(Verdict.AS_SCHEDULED, cold.verdict());
        LogReview hot = LogReview.of(TOLD, log(TOLD, 60, 0, s -> s < top - 600 || s > top + 900), Glass.DGG_I);
        assertEquals(Verdict.UNUSABLE, hot.verdict());
        LogReview cutOff = LogReview.of(TOLD, log(TOLD, 60, 0, s -> s < top + 300), Glass.DGG_I);
        assertEquals(Verdict.UNUSABLE, cutOff.verdict());
        LogReview rising = LogReview.of(TOLD, log(TOLD, 60, 0, s -> s < 9000), Glass.DGG_I);
        assertEquals(Verdict.UNUSABLE, rising.verdict(), "the logger stopped before the peak");
    }

    @Test
    void equivalentShift() {
        LogReview hot = review(schedule(655, 10), 10);
        assertEquals(5, hot.equivalentShiftK(TOLD, Glass.DGG_I), 0.6);
    }
}
