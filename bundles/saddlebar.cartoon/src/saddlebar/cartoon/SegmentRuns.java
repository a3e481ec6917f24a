package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** Short runs of consecutive segments of strokes in a tree of boxes: an eighth of the items, and neighbours in one place. */
final class SegmentRuns {
    private static final int SEGMENTS_A_RUN = 8;

    private final STRtree tree = new STRtree();
    private final List<Run> runs = new ArrayList<>();

    /**
     * @param stroke index of the stroke
     * @param from   first segment
     * @param to     one past the last segment
     */
    record Run(int stroke, int from, int to, Envelope box) {
    }

    SegmentRuns(List<Stroke> strokes) {
        for (int stroke = 0; stroke < strokes.size(); stroke++) {
            Coordinate[] points = strokes.get(stroke).points();
            for (int from = 0; from < points.length - 1; from += SEGMENTS_A_RUN) {
                int to = Math.min(points.length - 1, from + SEGMENTS_A_RUN);
                var box = new Envelope();
                for (int p = from; p <= to; p++) {
                    box.expandToInclude(points[p]);
                }
                var run = new Run(stroke, from, to, box);
                runs.add(run);
                tree.insert(box, run);
            }
        }
    }

    /** All runs, stroke by stroke. */
    List<Run> all() {
        return runs;
    }

    /** Runs whose boxes meet a box, in no order that means anything. */
    @SuppressWarnings("unchecked") // the tree holds runs only
    List<Run> near(Envelope box) {
        return tree.query(box);
    }
}
