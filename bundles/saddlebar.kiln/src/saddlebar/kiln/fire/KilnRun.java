package saddlebar.kiln.fire;

import saddlebar.kiln.schedule.HeatCurve;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.kiln.schedule.Segment;

/** A schedule in a kiln whose load is part of its chamber: fast, for learning a kiln from its logs. Same rules of the controller as {@link Simulation}. */
public final class KilnRun {
    private static final double NEAR_K = 0.5;
    private static final double TINY_S = 1e-6;

    private KilnRun() {
    }

    /**
     * @param startC where chamber and lining begin
     * @param mostS  cut off then
     */
    public static HeatCurve of(Schedule schedule, Kiln kiln, double startC, double stepS, double mostS) {
        KilnState state = new KilnState(kiln, startC, Schedule.START_C);
        int most = (int) Math.ceil(mostS / stepS) + 4 * schedule.segments().size() + 2;
        double[] times = new double[most];
        double[] temperatures = new double[most];
        temperatures[0] = startC;
        int n = 1;
        double now = 0;
        for (Segment segment : schedule.segments()) {
            double began = now;
            double from = state.chamberC();
            double target = Math.min(segment.targetC(), kiln.maxC());
            double rampS = segment.fullRate() ? 0 : Math.abs(target - from) / segment.rateKPerH() * 3600;
            boolean reached = from == target;
            double soakEnd = reached ? now + segment.soakMin() * 60 : Double.POSITIVE_INFINITY;
            while (now < soakEnd - TINY_S && now < mostS && n < most) {
                double into = now - began;
                double dt = into < rampS - TINY_S ? Math.min(stepS, rampS - into) : Math.min(stepS, soakEnd - now);
                boolean ramping = into + dt < rampS - TINY_S;
                state.advance(dt, ramping ? from + (target - from) * (into + dt) / rampS : target, 0);
                now += dt;
                times[n] = now;
                temperatures[n++] = state.chamberC();
                if (!reached && !ramping && Math.abs(state.chamberC() - target) <= NEAR_K) {
                    reached = true;
                    soakEnd = now + segment.soakMin() * 60;
                }
            }
        }
        return HeatCurve.of(java.util.Arrays.copyOf(times, n), java.util.Arrays.copyOf(temperatures, n));
    }
}
