package saddlebar.cartoon.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Require;

/**
 * Openings with a level sill, upright jambs and a curved head, from what a survey measures: the span s between the jambs, the height of the jambs
 * from sill to springing line, and the rise h from the springing line to the crown. The top of the crown is at y = 0, the left jamb at x = 0.
 *
 * <p>Constructions are those of drawing books: circles through known points, tangent where curves should flow. Radii: segmental (s^2/4 + h^2)/(2h);
 * pointed (s^2/4 + h^2)/s with the centres on the springing line (equilateral: s); three-centred after Huygens, all three arcs of 60 degrees; ogee
 * from two equal arcs, upright at the springing and at the point.
 */
public final class ArchedOpenings {
    private static final double LEAST_MM = 10;
    private static final double MOST_MM = 20_000;
    /** A rise this near to the equilateral arch is one: nobody measures better. */
    private static final double SAME_MM = 0.5;
    private static final double SQRT3 = StrictMath.sqrt(3);

    private ArchedOpenings() {
    }

    /** Part of a circle, flatter than a half. */
    public static OpeningShape segmental(double spanMm, double jambMm, double riseMm) {
        check(spanMm, jambMm, riseMm);
        if (riseMm >= spanMm / 2) {
            throw refused("segmental", riseMm, "is not below half of the span", "take a semicircular arch, or a pointed one above that");
        }
        double radius = (spanMm * spanMm / 4 + riseMm * riseMm) / (2 * riseMm);
        double to = deg(riseMm - radius, spanMm / 2);
        return arch("segmental", spanMm, jambMm, riseMm, List.of(ArcEdge.of(spanMm / 2, radius, radius, -180 - to, to)));
    }

    /** Half a circle: the rise is half the span. */
    public static OpeningShape semicircular(double spanMm, double jambMm) {
        check(spanMm, jambMm, spanMm / 2);
        return arch("semicircular", spanMm, jambMm, spanMm / 2, List.of(ArcEdge.of(spanMm / 2, spanMm / 2, spanMm / 2, -180, 0)));
    }

    /** Pointed, each arc struck from the other springing point: the rise is 0.866 of the span. */
    public static OpeningShape equilateral(double spanMm, double jambMm) {
        return pointed(spanMm, jambMm, spanMm * SQRT3 / 2);
    }

    /** Two arcs that meet in a point, centres on the springing line: a drop arch below the equilateral, a lancet above it; named so. */
    public static OpeningShape pointed(double spanMm, double jambMm, double riseMm) {
        check(spanMm, jambMm, riseMm);
        if (riseMm <= spanMm / 2) {
            throw refused("pointed", riseMm, "is not above half of the span", "take a semicircular or a segmental arch");
        }
        double radius = (spanMm * spanMm / 4 + riseMm * riseMm) / spanMm;
        Edge left = ArcEdge.of(radius, riseMm, radius, -180, deg(-riseMm, spanMm / 2 - radius));
        double off = riseMm - spanMm * SQRT3 / 2;
        String name = Math.abs(off) <= SAME_MM ? "equilateral" : off > 0 ? "lancet" : "drop";
        return arch(name, spanMm, jambMm, riseMm, List.of(left, left.mirrored(spanMm / 2)));
    }

    /** Basket handle: three arcs of 60 degrees, tangent to each other and to the jambs; for rises above 0.134 and below 0.5 of the span. */
    public static OpeningShape threeCentred(double spanMm, double jambMm, double riseMm) {
        check(spanMm, jambMm, riseMm);
        double out = (spanMm / 2 - riseMm) / (SQRT3 - 1);
        double small = spanMm / 2 - out;
        if (!(out > 0) || !(small > 0)) {
            throw refused("three-centred", riseMm, "is not between 0.134 and 0.5 of the span",
                    "take a segmental arch below that, a semicircular one above");
        }
        Edge haunch = ArcEdge.of(small, riseMm, small, -180, -120);
        Edge crown = ArcEdge.of(spanMm / 2, riseMm + out * SQRT3, small + 2 * out, -120, -60);
        return arch("three-centred", spanMm, jambMm, riseMm, List.of(haunch, crown, haunch.mirrored(spanMm / 2)));
    }

    /**
     * Each side first hollow, then round, like an S: two equal arcs, upright at the springing and at the point; for rises of at least half the span.
     */
    public static OpeningShape ogee(double spanMm, double jambMm, double riseMm) {
        check(spanMm, jambMm, riseMm);
        if (riseMm < spanMm / 2) {
            throw refused("ogee", riseMm, "is below half of the span", "measure the rise again from springing line to point");
        }
        double radius = (spanMm * spanMm / 4 + riseMm * riseMm) / (2 * spanMm);
        double join = deg(-riseMm, spanMm / 2 - 2 * radius);
        Edge round = ArcEdge.of(radius, riseMm, radius, -180, join);
        Edge hollow = ArcEdge.of(spanMm / 2 - radius, 0, radius, join + 180, 0);
        return arch("ogee", spanMm, jambMm, riseMm, List.of(round, hollow, hollow.mirrored(spanMm / 2), round.mirrored(spanMm / 2)));
    }

    private static void check(double spanMm, double jambMm, double riseMm) {
        Require.within("spanMm", spanMm, LEAST_MM, MOST_MM);
        Require.within("jambMm", jambMm, 0, MOST_MM);
        Require.within("riseMm", riseMm, 0.1, MOST_MM);
    }

    private static Refusal refused(String arch, double riseMm, String what, String remedy) {
        return new Refusal(arch + " arch", String.format(Locale.ROOT, "the rise of %.1f mm %s", riseMm, what), remedy);
    }

    private static double deg(double y, double x) {
        return StrictMath.toDegrees(StrictMath.atan2(y, x));
    }

    private static OpeningShape arch(String name, double spanMm, double jambMm, double riseMm, List<Edge> head) {
        double sill = riseMm + jambMm;
        List<Edge> edges = new ArrayList<>();
        if (jambMm > 0) {
            edges.add(StraightEdge.of(0, sill, 0, riseMm));
        }
        edges.addAll(head);
        if (jambMm > 0) {
            edges.add(StraightEdge.of(spanMm, riseMm, spanMm, sill));
        }
        edges.add(StraightEdge.of(spanMm, sill, 0, sill));
        return new OpeningShape(name, edges, riseMm);
    }
}
