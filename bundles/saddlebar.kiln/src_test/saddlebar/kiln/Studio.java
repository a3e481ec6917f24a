package saddlebar.kiln;

import java.util.List;

import saddlebar.kiln.schedule.Schedule;
import saddlebar.kiln.schedule.Segment;

/** The studio's start profile for trace and matt: common practice, no source. */
public final class Studio {
    private Studio() {
    }

    public static Schedule trace650() {
        return trace(650);
    }

    public static Schedule trace(double peakC) {
        return new Schedule("trace " + Math.round(peakC), List.of(new Segment("dry and warm", 150, 300, 10), new Segment("heat", 200, 540, 10),
                new Segment("peak", 300, peakC, 10), new Segment("fall", 0, 540, 30), new Segment("anneal", 60, 485, 0),
                new Segment("cool", 120, 150, 0),
                new Segment("shut", 0, 50, 0)));
    }
}
