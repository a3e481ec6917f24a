package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;

import saddlebar.model.work.Work;

/**
 * Cuts strokes at every place where they cross or touch, by snap rounding (J. Hobby, Practical segment intersection with finite precision
 * output, Comput. Geom. 13, 1999; the variant of the JTS library): all points land on the grid, and no rounding makes a new crossing.
 *
 * <p>Most of a curve is far from every other line. Only the busy segments go to the library: those whose box comes within
 * {@value #NEAR_GRIDS} grids of another segment's, that fold back on the one before, or that are as short as that. The quiet ones are
 * rounded and put back between them. Nothing can be noded on a quiet segment, since rounding moves a point by less than one grid; so
 * the result is that of noding all, at a third of the time. O(n log n) in the segments, and more where many cross.
 */
final class StrokeNoder {
    private static final int NEAR_GRIDS = 4;

    private final List<Stroke> strokes;
    private final double nearMm;
    private final PrecisionModel grid;
    private final boolean[][] busy;

    private StrokeNoder(List<Stroke> strokes, double snapMm) {
        this.strokes = strokes;
        this.nearMm = NEAR_GRIDS * snapMm;
        this.grid = new PrecisionModel(1 / snapMm);
        this.busy = new boolean[strokes.size()][];
        Arrays.setAll(busy, stroke -> new boolean[strokes.get(stroke).points().length - 1]);
    }

    /** Parts from node to node, stroke by stroke, each with the source of its stroke; parts drawn twice are there twice. */
    static List<Stroke> noded(List<Stroke> strokes, double snapMm, Work work) {
        var noder = new StrokeNoder(strokes, snapMm);
        noder.findBusy(work);
        return noder.noded();
    }

    // ---- which segments are busy

    private void findBusy(Work work) {
        var runs = new SegmentRuns(strokes);
        List<SegmentRuns.Run> all = runs.all();
        for (int i = 0; i < all.size(); i++) {
            if (i % 1024 == 0) {
                work.checkpoint();
            }
            SegmentRuns.Run run = all.get(i);
            var box = new Envelope(run.box());
            box.expandBy(nearMm);
            for (SegmentRuns.Run other : runs.near(box)) {
                boolean later = other.stroke() > run.stroke() || other.stroke() == run.stroke() && other.from() >= run.from();
                if (later) { // each pair once
                    compare(run, other);
                }
            }
        }
        for (int stroke = 0; stroke < busy.length; stroke++) {
            findShortAndFolded(strokes.get(stroke).points(), busy[stroke]);
        }
    }

    private void compare(SegmentRuns.Run a, SegmentRuns.Run b) {
        Coordinate[] p = strokes.get(a.stroke()).points();
        Coordinate[] q = strokes.get(b.stroke()).points();
        boolean same = a.stroke() == b.stroke();
        for (int i = a.from(); i < a.to(); i++) {
            for (int k = same ? Math.max(b.from(), i + 2) : b.from(); k < b.to(); k++) {
                if (near(p[i].x, p[i + 1].x, q[k].x, q[k + 1].x) && near(p[i].y, p[i + 1].y, q[k].y, q[k + 1].y)) {
                    busy[a.stroke()][i] = true;
                    busy[b.stroke()][k] = true;
                }
            }
        }
    }

    private boolean near(double a0, double a1, double b0, double b1) {
        return Math.max(a0, a1) + nearMm >= Math.min(b0, b1) && Math.max(b0, b1) + nearMm >= Math.min(a0, a1);
    }

    private void findShortAndFolded(Coordinate[] points, boolean[] busyHere) {
        for (int i = 0; i < busyHere.length; i++) {
            double dx = points[i + 1].x - points[i].x;
            double dy = points[i + 1].y - points[i].y;
            boolean isShort = Math.hypot(dx, dy) < nearMm;
            boolean folds = i > 0 && dx * (points[i].x - points[i - 1].x) + dy * (points[i].y - points[i - 1].y) < 0;
            if (isShort || folds) {
                busyHere[i] = true;
                if (i > 0) {
                    busyHere[i - 1] = true;
                }
            }
            if (isShort && i + 1 < busyHere.length) {
                busyHere[i + 1] = true;
            }
        }
    }

    // ---- noding and putting together

    private List<Stroke> noded() {
        List<NodedSegmentString> stretches = new ArrayList<>();
        for (int stroke = 0; stroke < busy.length; stroke++) {
            for (int from = 0; from < busy[stroke].length;) {
                int to = stretchEnd(stroke, from);
                if (busy[stroke][from]) {
                    Coordinate[] points = Arrays.copyOfRange(strokes.get(stroke).points(), from, to + 1);
                    stretches.add(new NodedSegmentString(points, new Object())); // an object of its own to know the parts by
                }
                from = to;
            }
        }
        Map<Object, List<Coordinate[]>> parts = partsByStretch(stretches);
        List<Stroke> noded = new ArrayList<>();
        int next = 0;
        for (int stroke = 0; stroke < busy.length; stroke++) {
            var joined = new Joined(strokes.get(stroke).source(), noded);
            for (int from = 0; from < busy[stroke].length;) {
                int to = stretchEnd(stroke, from);
                if (busy[stroke][from]) {
                    joined.addNoded(parts.getOrDefault(stretches.get(next++).getData(), List.of()));
                } else {
                    joined.addQuiet(rounded(strokes.get(stroke).points(), from, to));
                }
                from = to;
            }
            joined.close();
        }
        return noded;
    }

    private int stretchEnd(int stroke, int from) {
        int to = from + 1;
        while (to < busy[stroke].length && busy[stroke][to] == busy[stroke][from]) {
            to++;
        }
        return to;
    }

    private Map<Object, List<Coordinate[]>> partsByStretch(List<NodedSegmentString> stretches) {
        Map<Object, List<Coordinate[]>> parts = new IdentityHashMap<>(2 * stretches.size());
        if (!stretches.isEmpty()) {
            var noder = new SnapRoundingNoder(grid);
            noder.computeNodes(stretches);
            for (Object item : noder.getNodedSubstrings()) { // in the order of the stretch
                SegmentString part = (SegmentString) item;
                parts.computeIfAbsent(part.getData(), stretch -> new ArrayList<>(4)).add(part.getCoordinates());
            }
        }
        return parts;
    }

    private Coordinate[] rounded(Coordinate[] points, int from, int to) {
        List<Coordinate> rounded = new ArrayList<>(to - from + 1);
        for (int i = from; i <= to; i++) {
            var point = new Coordinate(grid.makePrecise(points[i].x), grid.makePrecise(points[i].y));
            if (rounded.isEmpty() || !rounded.get(rounded.size() - 1).equals2D(point)) {
                rounded.add(point);
            }
        }
        return rounded.toArray(new Coordinate[0]);
    }

    /**
     * The parts of one stroke in their order. Where a quiet stretch meets a busy one there is no node: the last part of the one and the
     * first of the other are one edge.
     */
    private static final class Joined {
        private final int source;
        private final List<Stroke> target;
        private final List<Coordinate> open = new ArrayList<>();
        private boolean goesOn;

        Joined(int source, List<Stroke> target) {
            this.source = source;
            this.target = target;
        }

        void addNoded(List<Coordinate[]> parts) {
            for (int i = 0; i < parts.size(); i++) {
                if (i > 0) {
                    close();
                }
                append(parts.get(i));
            }
            goesOn = true;
        }

        void addQuiet(Coordinate[] points) {
            append(points);
            goesOn = true;
        }

        private void append(Coordinate[] points) {
            boolean follows = goesOn && !open.isEmpty() && open.get(open.size() - 1).equals2D(points[0]);
            if (!follows) {
                close();
            }
            for (int i = follows ? 1 : 0; i < points.length; i++) {
                open.add(points[i]);
            }
        }

        void close() {
            if (open.size() > 1) {
                target.add(new Stroke(source, open.toArray(new Coordinate[0])));
            }
            open.clear();
            goesOn = false;
        }
    }
}
