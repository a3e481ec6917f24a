package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.Refusal;

/** Looks at a cutline before anything is computed: what cannot be a window is refused, points drawn twice in a row are dropped. */
final class CutlineGuard {
    /** 100 m: no panel is larger, and the snapping grid stays exact in a double far beyond it. */
    static final double FARTHEST_MM = 100_000;
    /** Some 100 times the largest window known to us; more would not fit into memory beside its faces. */
    static final int MOST_POINTS = 4_000_000;

    private CutlineGuard() {
    }

    static List<Stroke> strokes(List<DrawnLine> cutline) {
        long points = 0;
        var strokes = new ArrayList<Stroke>();
        for (int source = 0; source < cutline.size(); source++) {
            DrawnLine line = cutline.get(source);
            points += line.points();
            if (points > MOST_POINTS) {
                throw new Refusal("cutline", "it has more than " + MOST_POINTS + " points",
                        "bring the panels of this artwork one by one, or flatten its curves more coarsely");
            }
            Coordinate[] cleaned = cleaned(line);
            if (cleaned.length >= 2) {
                strokes.add(new Stroke(source, cleaned));
            }
        }
        if (strokes.isEmpty()) {
            throw new Refusal("cutline", "there is no line in it", "draw the cutline on this layer, or name the layer that holds it");
        }
        return strokes;
    }

    private static Coordinate[] cleaned(DrawnLine line) {
        double[] xy = line.xy();
        var cleaned = new ArrayList<Coordinate>(xy.length / 2 + 1);
        for (int i = 0; i < xy.length; i += 2) {
            if (Math.abs(xy[i]) > FARTHEST_MM || Math.abs(xy[i + 1]) > FARTHEST_MM) {
                throw new Refusal(CutlineProblems.where(line), "a point lies more than 100 m from the corner of the page",
                        "delete the stray point, or correct the size of the artwork");
            }
            add(cleaned, new Coordinate(xy[i], xy[i + 1]));
        }
        if (line.closed()) {
            add(cleaned, new Coordinate(xy[0], xy[1]));
        }
        return cleaned.toArray(new Coordinate[0]);
    }

    private static void add(List<Coordinate> points, Coordinate next) {
        if (points.isEmpty() || !points.get(points.size() - 1).equals2D(next)) {
            points.add(next);
        }
    }
}
