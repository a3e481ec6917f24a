package saddlebar.kiln.schedule;

import java.util.Arrays;

/**
 * Temperature over time, straight between points. Times rise or stay; of two points at one time the later counts from there on (a jump).
 * Immutable.
 */
public final class HeatCurve {
    private final double[] timeS;
    private final double[] temperatureC;

    private HeatCurve(double[] timeS, double[] temperatureC) {
        this.timeS = timeS;
        this.temperatureC = temperatureC;
    }

    /**
     * @param timeS        seconds, shape [n], n at least 1, never falling
     * @param temperatureC degC, shape [n]
     */
    public static HeatCurve of(double[] timeS, double[] temperatureC) {
        if (timeS.length != temperatureC.length || timeS.length == 0) {
            throw new IllegalArgumentException(
                    "a curve needs as many times as temperatures, but has " + timeS.length + " and " + temperatureC.length);
        }
        for (int i = 0; i < timeS.length; i++) {
            if (!Double.isFinite(timeS[i]) || !Double.isFinite(temperatureC[i]) || i > 0 && timeS[i] < timeS[i - 1]) {
                throw new IllegalArgumentException("point " + i + " of the curve is " + timeS[i] + " s, " + temperatureC[i] + " degC");
            }
        }
        return new HeatCurve(timeS.clone(), temperatureC.clone());
    }

    public int points() {
        return timeS.length;
    }

    public double timeS(int i) {
        return timeS[i];
    }

    public double temperatureC(int i) {
        return temperatureC[i];
    }

    public double startS() {
        return timeS[0];
    }

    public double endS() {
        return timeS[timeS.length - 1];
    }

    public double hours() {
        return (endS() - startS()) / 3600;
    }

    public double peakC() {
        return Arrays.stream(temperatureC).max().orElseThrow();
    }

    /** Temperature at a time; before the first and after the last point that of the end. */
    public double at(double seconds) {
        if (seconds < timeS[0]) {
            return temperatureC[0];
        }
        int low = 0;
        int high = timeS.length - 1;
        if (seconds >= timeS[high]) {
            return temperatureC[high];
        }
        while (high - low > 1) { // timeS[low] <= seconds < timeS[high]
            int middle = (low + high) >>> 1;
            if (timeS[middle] <= seconds) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double span = timeS[high] - timeS[low];
        return temperatureC[low] + (temperatureC[high] - temperatureC[low]) * (seconds - timeS[low]) / span;
    }

    /** Minutes spent at or above a temperature. */
    public double minutesAbove(double degC) {
        double sum = 0;
        for (int i = 1; i < timeS.length; i++) {
            double from = temperatureC[i - 1] - degC;
            double to = temperatureC[i] - degC;
            double span = timeS[i] - timeS[i - 1];
            if (from >= 0 && to >= 0) {
                sum += span;
            } else if (from >= 0 || to >= 0) {
                sum += span * Math.max(from, to) / Math.abs(to - from);
            }
        }
        return sum / 60;
    }

    /** Minutes spent from {@code lowC} to {@code highC}, from a time on. */
    public double minutesWithin(double lowC, double highC, double fromS) {
        double sum = 0;
        for (int i = 1; i < timeS.length; i++) {
            if (timeS[i] <= fromS) {
                continue;
            }
            double from = temperatureC[i - 1];
            double to = temperatureC[i];
            double span = timeS[i] - timeS[i - 1];
            double low = Math.min(from, to);
            double high = Math.max(from, to);
            double inside = high == low
                    ? low >= lowC && low <= highC ? 1 : 0
                    : Math.max(0, Math.min(high, highC) - Math.max(low, lowC)) / (high - low);
            sum += span * inside;
        }
        return sum / 60;
    }

    /** First time at which the highest temperature stands. */
    public double peakS() {
        int best = 0;
        for (int i = 1; i < timeS.length; i++) {
            best = temperatureC[i] > temperatureC[best] ? i : best;
        }
        return timeS[best];
    }

    /** The same curve, begun so many seconds later. */
    public HeatCurve shifted(double bySeconds) {
        return new HeatCurve(Arrays.stream(timeS).map(t -> t + bySeconds).toArray(), temperatureC);
    }
}
