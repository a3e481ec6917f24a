package saddlebar.cartoon.opening;

import java.util.ArrayList;
import java.util.List;

import saddlebar.model.units.Require;

/** Openings without sill and jambs, and the plain rectangle. */
public final class RoundOpenings {
    private RoundOpenings() {
    }

    public static OpeningShape rectangle(double widthMm, double heightMm) {
        double w = Require.within("widthMm", widthMm, 10, 20_000);
        double h = Require.within("heightMm", heightMm, 10, 20_000);
        return new OpeningShape("rectangle",
                List.of(StraightEdge.of(0, h, 0, 0), StraightEdge.of(0, 0, w, 0), StraightEdge.of(w, 0, w, h), StraightEdge.of(w, h, 0, h)), 0);
    }

    /** A full circle. */
    public static OpeningShape roundel(double diameterMm) {
        double r = Require.within("diameterMm", diameterMm, 10, 20_000) / 2;
        return new OpeningShape("roundel", List.of(ArcEdge.of(r, r, r, -180, 0), ArcEdge.of(r, r, r, 0, 180)), 0);
    }

    /** Four semicircles on the sides of a square: width = four radii. */
    public static OpeningShape quatrefoil(double widthMm) {
        return foils(4, widthMm);
    }

    /**
     * Semicircles on the sides of a regular polygon, one at the top: trefoil, quatrefoil, cinquefoil and more.
     *
     * @param foils      3 to 24
     * @param diameterMm of the circle that all foils touch from within; for an even number of foils the height
     */
    public static OpeningShape foils(int foils, double diameterMm) {
        Require.within("foils", foils, 3, 24);
        double around = Require.within("diameterMm", diameterMm, 10, 20_000) / 2;
        double half = 180.0 / foils;
        double perRadius = 1 / StrictMath.tan(StrictMath.toRadians(half));
        double radius = around / (1 + perRadius);
        double out = radius * perRadius;
        List<Edge> edges = new ArrayList<>();
        for (int foil = 0; foil < foils; foil++) {
            double deg = -90 + 2 * half * foil;
            double rad = StrictMath.toRadians(deg);
            edges.add(ArcEdge.of(around + out * StrictMath.cos(rad), around + out * StrictMath.sin(rad), radius, deg - 90, deg + 90));
        }
        String name = foils == 3 ? "trefoil" : foils == 4 ? "quatrefoil" : foils == 5 ? "cinquefoil" : foils + " foils";
        return new OpeningShape(name, edges, 0);
    }
}
