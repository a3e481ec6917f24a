package saddlebar.cartoon.mend;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

import saddlebar.cartoon.CutlineProblems;
import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.PlaceMm;
import saddlebar.model.work.Work;

/**
 * Stretches of lines that lie on a longer line (of equal ones, on the one drawn first). A line is looked at every 1 mm and at each of its points;
 * runs of at least 5 mm, or the whole line, are doubled, their ends found by halving to 0.001 mm.
 */
final class DoubledStretches {
    private static final double STEP_MM = 1;
    private static final double LEAST_MM = 5;
    private static final double EXACT_MM = 0.001;

    private final List<DrawnLine> lines;
    private final double[] lengths;
    private final double doubledMm;
    private final SegmentTree segments;
    private final Work work;

    /** A stretch of a line by length along it. */
    private record Stretch(double fromMm, double toMm) {
    }

    DoubledStretches(List<DrawnLine> lines, MendSettings settings, SegmentTree segments, Work work) {
        this.lines = lines;
        this.doubledMm = settings.doubledMm();
        this.segments = segments;
        this.work = work;
        lengths = lines.stream().mapToDouble(line -> new Way(line).lengthMm()).toArray();
    }

    List<Mend> all() {
        List<Mend> mends = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            work.checkpoint();
            Mend mend = of(i);
            if (mend != null) {
                mends.add(mend);
            }
        }
        return mends;
    }

    private Mend of(int index) {
        DrawnLine line = lines.get(index);
        Way way = new Way(line);
        if (way.lengthMm() <= EXACT_MM) {
            return null;
        }
        Set<Integer> leansOn = new TreeSet<>();
        List<Stretch> doubled = doubled(index, way, leansOn);
        if (doubled.isEmpty()) {
            return null;
        }
        List<DrawnLine> kept = new ArrayList<>();
        double gone = 0;
        double from = 0;
        for (Stretch stretch : doubled) {
            keep(kept, way, from, stretch.fromMm);
            gone += stretch.toMm - stretch.fromMm;
            from = stretch.toMm;
        }
        keep(kept, way, from, way.lengthMm());
        if (line.closed() && kept.size() > 1 && doubled.get(0).fromMm > 0 && from < way.lengthMm()) {
            kept.set(0, joined(kept.remove(kept.size() - 1), kept.get(0))); // the ring's first point is no end
        }
        Coordinate at = way.at((doubled.get(0).fromMm + doubled.get(0).toMm) / 2);
        String message = String.format(Locale.ROOT, kept.isEmpty()
                ? "Take out this line of %.1f mm: it lies on another"
                : "Take out %.1f mm of this line that lie on another", gone);
        return new Mend(Mending.key(MendKind.REMOVE_DOUBLED, line, at), MendKind.REMOVE_DOUBLED, CutlineProblems.where(line), new PlaceMm(at.x, at.y),
                message,
                List.of(new LineChange(index, line, kept)), leansOn);
    }

    private static void keep(List<DrawnLine> kept, Way way, double fromMm, double toMm) {
        if (toMm - fromMm > EXACT_MM) {
            kept.add(way.part(fromMm, toMm));
        }
    }

    private static DrawnLine joined(DrawnLine first, DrawnLine second) {
        double[] xy = java.util.Arrays.copyOf(first.xy(), 2 * (first.points() + second.points() - 1));
        System.arraycopy(second.xy(), 0, xy, 2 * first.points() - 2, 2 * second.points());
        return new DrawnLine(first.element(), first.line(), xy, false);
    }

    private List<Stretch> doubled(int index, Way way, Set<Integer> leansOn) {
        double[] looks = way.looks(STEP_MM);
        List<Stretch> found = new ArrayList<>();
        double began = -1;
        double lastOn = -1;
        Set<Integer> under = new TreeSet<>();
        for (int i = 0; i < looks.length; i++) {
            int on = on(index, way.at(looks[i]));
            if (on >= 0) {
                if (began < 0) {
                    began = i == 0 ? 0 : edge(index, way, looks[i - 1], looks[i]);
                    under.clear();
                }
                under.add(on);
                lastOn = looks[i];
            }
            if (began >= 0 && (on < 0 || i + 1 == looks.length)) {
                double end = on >= 0 ? way.lengthMm() : edge(index, way, looks[i], lastOn);
                boolean whole = began <= 0 && end >= way.lengthMm() - EXACT_MM;
                if (whole || end - began >= LEAST_MM) {
                    found.add(new Stretch(began, end));
                    leansOn.addAll(under);
                }
                began = -1;
            }
        }
        return found;
    }

    /** Between a place off and a place on another line: where it begins, on the side that is on. */
    private double edge(int index, Way way, double offMm, double onMm) {
        double off = offMm;
        double on = onMm;
        while (Math.abs(on - off) > EXACT_MM / 2) {
            double middle = (off + on) / 2;
            if (on(index, way.at(middle)) >= 0) {
                on = middle;
            } else {
                off = middle;
            }
        }
        return on;
    }

    /** A longer line on which a point lies; -1 if none. */
    private int on(int index, Coordinate at) {
        for (SegmentTree.Segment segment : segments.near(new Envelope(at), doubledMm)) {
            int other = segment.line();
            boolean longer = lengths[other] > lengths[index] || lengths[other] == lengths[index] && other < index;
            if (other != index && longer && segment.nearest(at).distance(at) <= doubledMm) {
                return other;
            }
        }
        return -1;
    }
}
