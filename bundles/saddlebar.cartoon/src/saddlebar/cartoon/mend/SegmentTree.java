package saddlebar.cartoon.mend;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

import saddlebar.model.art.DrawnLine;

/** The straight steps of all lines, by place. */
final class SegmentTree {
    private static final int SEGMENTS_A_RUN = 8;
    private final STRtree tree = new STRtree();

    /** Step {@code number} of line {@code line}. */
    record Segment(int line, int number, Coordinate a, Coordinate b) {
        Coordinate nearest(Coordinate to) {
            double dx = b.x - a.x;
            double dy = b.y - a.y;
            double square = dx * dx + dy * dy;
            double share = square == 0 ? 0 : ((to.x - a.x) * dx + (to.y - a.y) * dy) / square;
            return LineEnd.between(a, b, Math.max(0, Math.min(1, share)));
        }

        /** Share of the way from {@code from} to {@code to} at which it meets this step; NaN if it does not, or runs along it. */
        double metAt(Coordinate from, Coordinate to) {
            double ux = to.x - from.x;
            double uy = to.y - from.y;
            double vx = b.x - a.x;
            double vy = b.y - a.y;
            double cross = ux * vy - uy * vx;
            if (Math.abs(cross) <= 1e-12 * Math.sqrt((ux * ux + uy * uy) * (vx * vx + vy * vy))) {
                return Double.NaN;
            }
            double share = ((a.x - from.x) * vy - (a.y - from.y) * vx) / cross;
            double along = ((a.x - from.x) * uy - (a.y - from.y) * ux) / cross;
            return share >= 0 && share <= 1 && along >= -1e-9 && along <= 1 + 1e-9 ? share : Double.NaN;
        }
    }

    private record Run(int line, int from, int to, DrawnLine drawn) {
        Segment segment(int number) {
            int next = (number + 1) % drawn.points();
            return new Segment(line, number, new Coordinate(drawn.x(number), drawn.y(number)), new Coordinate(drawn.x(next), drawn.y(next)));
        }
    }

    SegmentTree(List<DrawnLine> lines) {
        for (int line = 0; line < lines.size(); line++) {
            DrawnLine drawn = lines.get(line);
            int segments = drawn.closed() ? drawn.points() : drawn.points() - 1;
            for (int from = 0; from < segments; from += SEGMENTS_A_RUN) {
                int to = Math.min(segments, from + SEGMENTS_A_RUN);
                Envelope box = new Envelope();
                for (int point = from; point <= to; point++) {
                    int at = point % drawn.points();
                    box.expandToInclude(drawn.x(at), drawn.y(at));
                }
                tree.insert(box, new Run(line, from, to, drawn));
            }
        }
        tree.build();
    }

    /** Steps that come within so many mm of a box, in the order of the drawing. */
    List<Segment> near(Envelope where, double mm) {
        Envelope box = new Envelope(where);
        box.expandBy(mm);
        List<Segment> found = new ArrayList<>();
        for (Object item : tree.query(box)) {
            Run run = (Run) item;
            for (int number = run.from; number < run.to; number++) {
                Segment segment = run.segment(number);
                if (box.intersects(segment.a, segment.b)) {
                    found.add(segment);
                }
            }
        }
        found.sort((p, q) -> p.line != q.line ? Integer.compare(p.line, q.line) : Integer.compare(p.number, q.number));
        return found;
    }
}
