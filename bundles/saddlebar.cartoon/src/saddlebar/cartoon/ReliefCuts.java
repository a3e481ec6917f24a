package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.PlaceMm;

/**
 * Proposals for one bay of a piece's outer edge.
 *
 * <p>Relief cuts: the waste is taken out in n crescents, n = ratio / flagged ratio rounded up, so that none is deeper against the chord than what is
 * cut in one go. Score j of n - 1 is the curve drawn in to j/n of its depth towards the chord; where that would run through the piece (an undercut
 * bay) it is cut off at the edge. Nesting crescents is common practice; the count follows from the limit, no source.
 *
 * <p>Joint: for a bay too deep for scores, the shortest straight line from its deepest point through the glass to another edge, within
 * {@value #MOST_TURN_DEG} degrees of straight on.
 */
public final class ReliefCuts {
    private static final double MOST_TURN_DEG = 60;
    private static final double STEP_DEG = 5;
    private static final double LEAST_LINE_MM = 1;
    private static final int MOST_SCORES = 12;

    private final int piece;
    private final Polygon face;
    private final Boundary boundary;
    private final CutLimits limits;

    /** All proposals for the outer edge of one face; the same as those of its cartoon. */
    public static List<Relief> of(int piece, Polygon face, CutLimits limits) {
        Boundary boundary = new Boundary(face);
        ReliefCuts cuts = new ReliefCuts(piece, face, boundary, limits);
        List<Relief> reliefs = new ArrayList<>();
        if (limits.insideCurve() > 0) {
            for (InsideCurves.Bay bay : InsideCurves.bays(boundary.rings().get(0), limits.insideCurve(), limits.insideRadiusMm())) {
                reliefs.addAll(cuts.of(bay, limits.isHard(bay.ratio())));
            }
        }
        return reliefs;
    }

    ReliefCuts(int piece, Polygon face, Boundary boundary, CutLimits limits) {
        this.piece = piece;
        this.face = face;
        this.boundary = boundary;
        this.limits = limits;
    }

    /** Scores, and for a bay beyond the hard limit a joint too. */
    List<Relief> of(InsideCurves.Bay bay, boolean hard) {
        List<Relief> reliefs = new ArrayList<>();
        scores(bay).ifPresent(reliefs::add);
        if (hard) {
            joint(bay).ifPresent(reliefs::add);
        }
        return reliefs;
    }

    private Optional<Relief> scores(InsideCurves.Bay bay) {
        int crescents = (int) Math.min(MOST_SCORES + 1.0, Math.ceil(bay.ratio() / limits.insideCurve() - 1e-9));
        RingPath ring = boundary.rings().get(0);
        Coordinate from = new Coordinate(ring.x(bay.from()), ring.y(bay.from()));
        Coordinate to = new Coordinate(ring.x(bay.to()), ring.y(bay.to()));
        double ux = (to.x - from.x) / bay.chordMm();
        double uy = (to.y - from.y) / bay.chordMm();
        List<DrawnLine> lines = new ArrayList<>();
        for (int j = 1; j < crescents; j++) {
            double share = (double) j / crescents;
            Coordinate[] points = new Coordinate[bay.to() - bay.from() + 1];
            for (int i = 0; i < points.length; i++) {
                double x = ring.x(bay.from() + i);
                double y = ring.y(bay.from() + i);
                double along = (x - from.x) * ux + (y - from.y) * uy;
                points[i] = new Coordinate(from.x + along * ux + share * (x - from.x - along * ux), from.y + along * uy + share * (y - from.y - along * uy));
            }
            Geometry outside = CutNet.GEOMETRY.createLineString(points).difference(face);
            for (int part = 0; part < outside.getNumGeometries(); part++) {
                if (outside.getGeometryN(part) instanceof LineString line && line.getLength() >= LEAST_LINE_MM) {
                    lines.add(line(line.getCoordinates()));
                }
            }
        }
        if (lines.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Relief(piece, Relief.Kind.RELIEF_CUTS, new PlaceMm(bay.x(), bay.y()), lines, String.format(Locale.ROOT,
                "Piece %d: score the inside curve first, then %d relief cuts in the waste; break out %d crescents from the edge inwards", piece,
                crescents - 1, crescents)));
    }

    private Optional<Relief> joint(InsideCurves.Bay bay) {
        RingPath ring = boundary.rings().get(0);
        double chordX = ring.x(bay.to()) - ring.x(bay.from());
        double chordY = ring.y(bay.to()) - ring.y(bay.from());
        // inside lies to the left of the ring, and the bay's chord runs along the ring: straight on is left of the chord
        double ahead = Math.atan2(chordX, -chordY);
        double[] best = null;
        double least = Double.MAX_VALUE;
        for (double off = -MOST_TURN_DEG; off <= MOST_TURN_DEG; off += STEP_DEG) {
            double angle = ahead + Math.toRadians(off);
            double[] hit = hit(bay.x(), bay.y(), Math.cos(angle), Math.sin(angle));
            if (hit != null && (hit[0] < least - 1e-9 || hit[0] < least + 1e-9 && off == 0)) {
                least = hit[0];
                best = hit;
            }
        }
        if (best == null || least < LEAST_LINE_MM) {
            return Optional.empty();
        }
        DrawnLine line = line(new Coordinate[] {new Coordinate(bay.x(), bay.y()), new Coordinate(best[1], best[2])});
        return Optional.of(new Relief(piece, Relief.Kind.JOINT, new PlaceMm(bay.x(), bay.y()), List.of(line), String.format(Locale.ROOT,
                "Piece %d: a joint of %.0f mm from the deepest point of the inside curve to the edge would make two pieces that can be cut", piece, least)));
    }

    /** {distance, x, y} of the first edge that a ray meets; null if it meets none. */
    private double[] hit(double x, double y, double dx, double dy) {
        double[] first = null;
        for (RingPath ring : boundary.rings()) {
            for (int i = 0; i < ring.size(); i++) {
                double ex = ring.x(i + 1) - ring.x(i);
                double ey = ring.y(i + 1) - ring.y(i);
                double cross = dx * ey - dy * ex;
                if (Math.abs(cross) < 1e-12) {
                    continue;
                }
                double px = ring.x(i) - x;
                double py = ring.y(i) - y;
                double t = (px * ey - py * ex) / cross;
                double s = (px * dy - py * dx) / cross;
                if (t > 1e-6 && s >= 0 && s <= 1 && (first == null || t < first[0])) {
                    first = new double[] {t, x + t * dx, y + t * dy};
                }
            }
        }
        return first;
    }

    private static DrawnLine line(Coordinate[] points) {
        double[] xy = new double[2 * points.length];
        for (int i = 0; i < points.length; i++) {
            xy[2 * i] = points[i].x;
            xy[2 * i + 1] = points[i].y;
        }
        return new DrawnLine("relief", 0, xy, false);
    }
}
