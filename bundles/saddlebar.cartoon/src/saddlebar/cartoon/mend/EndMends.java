package saddlebar.cartoon.mend;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

import saddlebar.cartoon.CutlineProblems;
import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.PlaceMm;
import saddlebar.model.work.Work;

/**
 * Mends of free ends, one at most for each end: pairs of free ends first, the nearest pair first; of what is left the shorter of cutting back to a
 * crossing and carrying on to the next line.
 */
final class EndMends {
    /** A step across a gap, or to a line beside the end, turns by no more than this. */
    private static final double MOST_TURN_COS = Math.cos(Math.toRadians(75));
    /** Ends that run nearly along each other make no corner: 10 degrees. */
    private static final double LEAST_CORNER_SIN = Math.sin(Math.toRadians(10));
    private static final double TINY_MM = 1e-9;

    private final List<DrawnLine> lines;
    private final MendSettings settings;
    private final SegmentTree segments;
    private final Work work;
    private final List<Mend> mends = new ArrayList<>();

    private record Pair(LineEnd one, LineEnd other, double distanceMm) {
    }

    /** Where an end goes on to, or is cut back to. */
    private record Goal(Coordinate at, double mm, int line, int segmentFromEnd) {
    }

    EndMends(List<DrawnLine> lines, MendSettings settings, SegmentTree segments, Work work) {
        this.lines = lines;
        this.settings = settings;
        this.segments = segments;
        this.work = work;
    }

    List<Mend> all() {
        List<LineEnd> free = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (i % 256 == 0) {
                work.checkpoint();
            }
            if (!lines.get(i).closed()) {
                for (boolean atStart : new boolean[] {true, false}) {
                    LineEnd end = LineEnd.of(i, lines.get(i), atStart);
                    if (end.direction() != null && isFree(end)) {
                        free.add(end);
                    }
                }
            }
        }
        Set<LineEnd> mended = new HashSet<>();
        // an end that has run past a crossing is too long already: it is never joined to another
        for (Pair pair : pairs(free.stream().filter(end -> crossingBehind(end) == null).toList())) {
            if (!mended.contains(pair.one) && !mended.contains(pair.other)) {
                mended.add(pair.one);
                mended.add(pair.other);
                mends.add(joined(pair));
            }
        }
        free.stream().filter(end -> !mended.contains(end)).forEach(this::single);
        return mends;
    }

    private boolean isOwnStub(LineEnd end, SegmentTree.Segment segment, double withinMm) {
        return segment.line() == end.line() && end.alongMm(end.fromEnd(segment.number())) <= withinMm;
    }

    /** Whether no line has been met; where the line comes back to itself counts as met too. */
    private boolean isFree(LineEnd end) {
        for (SegmentTree.Segment segment : segments.near(new Envelope(end.point()), settings.metMm())) {
            if (!isOwnStub(end, segment, 4 * settings.metMm()) && segment.nearest(end.point()).distance(end.point()) <= settings.metMm()) {
                return false;
            }
        }
        return true;
    }

    // ---- two free ends

    private List<Pair> pairs(List<LineEnd> free) {
        double reach = Math.max(settings.snapMm(), settings.gapMm());
        STRtree tree = new STRtree();
        free.forEach(end -> tree.insert(new Envelope(end.point()), end));
        List<Pair> pairs = new ArrayList<>();
        for (LineEnd end : free) {
            Envelope box = new Envelope(end.point());
            box.expandBy(reach);
            for (Object item : tree.query(box)) {
                LineEnd other = (LineEnd) item;
                boolean later = other.line() > end.line() || other.line() == end.line() && end.atStart() && !other.atStart();
                double distance = other.point().distance(end.point());
                if (later && (distance <= settings.snapMm() || distance <= settings.gapMm() && looksAt(end, other.point()) && looksAt(other,
                        end.point()))
                        && longEnough(end, other, distance) && isClear(end.point(), other.point())) {
                    pairs.add(new Pair(end, other, distance));
                }
            }
        }
        pairs.sort(Comparator.comparingDouble(Pair::distanceMm).thenComparingInt(p -> p.one.line()).thenComparingInt(p -> p.other.line()));
        return pairs;
    }

    /** The two ends of one short line are not joined to a ring. */
    private boolean longEnough(LineEnd end, LineEnd other, double distance) {
        return end.line() != other.line() || end.lengthMm() > 4 * distance + TINY_MM;
    }

    private boolean looksAt(LineEnd end, Coordinate at) {
        double distance = end.point().distance(at);
        Coordinate direction = end.direction();
        double cos = (direction.x * (at.x - end.point().x) + direction.y * (at.y - end.point().y)) / Math.max(distance, TINY_MM);
        return distance < TINY_MM || cos >= MOST_TURN_COS;
    }

    /** Whether no line lies between two places. */
    private boolean isClear(Coordinate from, Coordinate to) {
        double distance = from.distance(to);
        for (SegmentTree.Segment segment : segments.near(new Envelope(from, to), 0)) {
            double at = segment.metAt(from, to);
            if (!Double.isNaN(at) && at * distance > TINY_MM && at * distance < distance - TINY_MM) {
                return false;
            }
        }
        return true;
    }

    private Mend joined(Pair pair) {
        DrawnLine first = lines.get(pair.one.line());
        DrawnLine second = lines.get(pair.other.line());
        Coordinate middle = LineEnd.between(pair.one.point(), pair.other.point(), 0.5);
        boolean snap = pair.distanceMm <= settings.snapMm();
        List<LineChange> changes = new ArrayList<>();
        if (pair.one.line() == pair.other.line()) {
            changes.add(new LineChange(pair.one.line(), first, List.of(closed(first, snap ? middle : null))));
        } else if (snap) {
            changes.add(new LineChange(pair.one.line(), first, List.of(LineEnd.moved(first, pair.one.atStart(), middle))));
            changes.add(new LineChange(pair.other.line(), second, List.of(LineEnd.moved(second, pair.other.atStart(), middle))));
        } else {
            DrawnLine longer = first;
            Coordinate corner = corner(pair);
            if (corner != null) {
                longer = LineEnd.extended(longer, pair.one.atStart(), corner);
            }
            changes.add(new LineChange(pair.one.line(), first, List.of(LineEnd.extended(longer, pair.one.atStart(), pair.other.point()))));
        }
        Set<Integer> leansOn = snap || changes.size() == 2 || pair.one.line() == pair.other.line() ? Set.of() : Set.of(pair.other.line());
        String message = String.format(Locale.ROOT, snap
                ? "Move the two ends here, %.2f mm apart, together"
                : "Join the two ends here across a gap of %.2f mm", pair.distanceMm);
        return mend(snap ? MendKind.SNAP_ENDS : MendKind.JOIN_GAP, first, middle, message, changes, leansOn);
    }

    /** Where both ends would meet if each went straight on, if that is ahead of both, near, and no line lies between; null otherwise. */
    private Coordinate corner(Pair pair) {
        Coordinate a = pair.one.point();
        Coordinate b = pair.other.point();
        Coordinate u = pair.one.direction();
        Coordinate v = pair.other.direction();
        double cross = u.x * v.y - u.y * v.x;
        if (Math.abs(cross) < LEAST_CORNER_SIN) {
            return null;
        }
        double onA = ((b.x - a.x) * v.y - (b.y - a.y) * v.x) / cross;
        double onB = ((b.x - a.x) * u.y - (b.y - a.y) * u.x) / cross;
        Coordinate corner = new Coordinate(a.x + onA * u.x, a.y + onA * u.y);
        boolean ahead = onA > TINY_MM && onB > TINY_MM && onA <= settings.gapMm() && onB <= settings.gapMm();
        return ahead && isClear(a, corner) && isClear(b, corner) ? corner : null;
    }

    /** The line as a ring: its last point goes where both ends meet in the middle, else both stay. */
    private static DrawnLine closed(DrawnLine line, Coordinate middle) {
        if (middle == null || line.points() < 4) {
            return new DrawnLine(line.element(), line.line(), line.xy(), true);
        }
        double[] xy = java.util.Arrays.copyOf(line.xy(), 2 * line.points() - 2);
        xy[0] = middle.x;
        xy[1] = middle.y;
        return new DrawnLine(line.element(), line.line(), xy, true);
    }

    // ---- one free end

    private void single(LineEnd end) {
        Goal back = crossingBehind(end);
        if (back != null && back.mm <= settings.dangleMm()) {
            return;
        }
        Goal ahead = ahead(end);
        DrawnLine line = lines.get(end.line());
        if (back != null && (ahead == null || back.mm <= ahead.mm)) {
            DrawnLine shorter = end.cutBack(line, back.segmentFromEnd, back.at);
            if (shorter != null) {
                mends.add(mend(MendKind.TRIM_END, line, end.point(), String.format(Locale.ROOT,
                        "Cut this end back by %.2f mm to the line that it crosses", back.mm),
                        List.of(new LineChange(end.line(), line, List.of(shorter))), others(end, back)));
            }
        } else if (ahead != null) {
            mends.add(mend(MendKind.EXTEND_END, line, end.point(), String.format(Locale.ROOT, "Carry this end on by %.2f mm to the next line",
                    ahead.mm),
                    List.of(new LineChange(end.line(), line, List.of(LineEnd.extended(line, end.atStart(), ahead.at)))), others(end, ahead)));
        }
    }

    private static Set<Integer> others(LineEnd end, Goal goal) {
        return goal.line == end.line() ? Set.of() : Set.of(goal.line);
    }

    /** The last crossing before the end, if it is near. */
    private Goal crossingBehind(LineEnd end) {
        double along = 0;
        for (int i = 0; i + 1 < end.path().size() && along <= settings.trimMm(); i++) {
            Coordinate from = end.path().get(i);
            Coordinate to = end.path().get(i + 1);
            double length = from.distance(to);
            Goal best = null;
            for (SegmentTree.Segment segment : segments.near(new Envelope(from, to), 0)) {
                double share = segment.metAt(from, to);
                boolean own = segment.line() == end.line() && Math.abs(end.fromEnd(segment.number()) - i) <= 1;
                if (!own && !Double.isNaN(share) && (best == null || along + share * length < best.mm)) {
                    best = new Goal(LineEnd.between(from, to, share), along + share * length, segment.line(), i);
                }
            }
            if (best != null) {
                return best.mm <= settings.trimMm() && best.mm > TINY_MM ? best : null;
            }
            along += length;
        }
        return null;
    }

    /** The first line straight ahead, or the nearest one that the end looks at; the nearer of both. */
    private Goal ahead(LineEnd end) {
        double reach = Math.min(settings.extendMm(), end.lengthMm() / 2);
        Coordinate from = end.point();
        Coordinate direction = end.direction();
        Coordinate to = new Coordinate(from.x + reach * direction.x, from.y + reach * direction.y);
        Goal straight = null;
        Goal beside = null;
        for (SegmentTree.Segment segment : segments.near(new Envelope(from), reach)) {
            if (isOwnStub(end, segment, 3 * reach)) {
                continue;
            }
            double share = segment.metAt(from, to);
            if (!Double.isNaN(share) && share * reach > TINY_MM && (straight == null || share * reach < straight.mm)) {
                straight = new Goal(LineEnd.between(from, to, share), share * reach, segment.line(), -1);
            }
            Coordinate foot = segment.nearest(from);
            double mm = foot.distance(from);
            if (mm <= reach && mm > TINY_MM && looksAt(end, foot) && (beside == null || mm < beside.mm)) {
                beside = new Goal(foot, mm, segment.line(), -1);
            }
        }
        // straight on is how it was drawn: the foot only wins where straight on is much longer or nothing
        return straight != null && (beside == null || straight.mm <= 2 * beside.mm) ? straight : beside;
    }

    private static Mend mend(MendKind kind, DrawnLine line, Coordinate at, String message, List<LineChange> changes, Set<Integer> leansOn) {
        return new Mend(Mending.key(kind, line, at), kind, CutlineProblems.where(line), new PlaceMm(at.x, at.y), message, changes, leansOn);
    }
}
