package saddlebar.kiln.schedule;

import java.util.ArrayList;
import java.util.List;

import saddlebar.model.units.Require;

/** Segments from a room at 20 degC on. */
public record Schedule(String name, List<Segment> segments) {
    public static final double START_C = 20;
    public static final int MOST_SEGMENTS = 200;

    public Schedule {
        Require.text("name", name);
        segments = List.copyOf(segments);
        Require.within("number of segments", segments.size(), 1, MOST_SEGMENTS);
    }

    public double peakC() {
        return segments.stream().mapToDouble(Segment::targetC).max().orElseThrow();
    }

    /** Index of the first segment that ends at the peak. */
    public int peakIndex() {
        for (int i = 0; i < segments.size(); i++) {
            if (segments.get(i).targetC() == peakC()) {
                return i;
            }
        }
        throw new IllegalStateException("a schedule without a peak");
    }

    /** Index of the last segment that ends at the peak. */
    public int lastPeakIndex() {
        int last = peakIndex();
        for (int i = last; i < segments.size(); i++) {
            last = segments.get(i).targetC() == peakC() ? i : last;
        }
        return last;
    }

    /** Where the segment of this index begins, in degC. */
    public double fromC(int index) {
        return index == 0 ? START_C : segments.get(index - 1).targetC();
    }

    /** As written: no limit of a kiln and no lag. A segment as fast as the kiln goes takes no time here. */
    public HeatCurve asWritten() {
        List<Double> times = new ArrayList<>();
        List<Double> temperatures = new ArrayList<>();
        double now = 0;
        double at = START_C;
        times.add(now);
        temperatures.add(at);
        for (Segment segment : segments) {
            if (!segment.fullRate()) {
                now += Math.abs(segment.targetC() - at) / segment.rateKPerH() * 3600;
            }
            at = segment.targetC();
            times.add(now);
            temperatures.add(at);
            if (segment.soakMin() > 0) {
                now += segment.soakMin() * 60;
                times.add(now);
                temperatures.add(at);
            }
        }
        return HeatCurve.of(times.stream().mapToDouble(d -> d).toArray(), temperatures.stream().mapToDouble(d -> d).toArray());
    }

    public Schedule with(int index, Segment segment) {
        List<Segment> copy = new ArrayList<>(segments);
        copy.set(index, segment);
        return new Schedule(name, copy);
    }
}
