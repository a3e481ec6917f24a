package saddlebar.kiln.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Require;

/**
 * What lay where on a shelf. x to the right and y to the back, in mm from the shelf's front left corner.
 *
 * @param widthMm of the shelf
 * @param depthMm of the shelf
 * @param lays    pieces as boxes
 */
public record ShelfLoad(double widthMm, double depthMm, List<Lay> lays) {
    /** Free rim of a shelf, where elements are near: studio setting, no source. */
    public static final double RIM_MM = 20;
    /** Least distance of pieces: studio setting, no source. */
    public static final double APART_MM = 5;
    /** Pieces that differ by more in thickness want another schedule: studio setting. */
    private static final double UNEVEN = 2;

    public ShelfLoad {
        Require.within("widthMm", widthMm, 10, 10_000);
        Require.within("depthMm", depthMm, 10, 10_000);
        lays = List.copyOf(lays);
    }

    /** One piece in its box. */
    public record Lay(String piece, double xMm, double yMm, double widthMm, double heightMm, double thicknessMm) {
        public Lay {
            Require.text("piece", piece);
            Require.finite("xMm", xMm);
            Require.finite("yMm", yMm);
            Require.within("widthMm", widthMm, 1, 10_000);
            Require.within("heightMm", heightMm, 1, 10_000);
            Require.within("thicknessMm", thicknessMm, 0.5, 100);
        }

        public double middleXMm() {
            return xMm + widthMm / 2;
        }

        public double middleYMm() {
            return yMm + heightMm / 2;
        }

        /** Free distance between two boxes along the axes in which they lie apart; negative where they lie over each other. */
        double apartMm(Lay other) {
            double dx = Math.max(other.xMm - xMm - widthMm, xMm - other.xMm - other.widthMm);
            double dy = Math.max(other.yMm - yMm - heightMm, yMm - other.yMm - other.heightMm);
            return dx > 0 && dy > 0 ? Math.hypot(dx, dy) : Math.max(dx, dy);
        }
    }

    /** Share of the shelf that is covered. */
    public double use() {
        return lays.stream().mapToDouble(lay -> lay.widthMm() * lay.heightMm()).sum() / (widthMm * depthMm);
    }

    public double thickestMm() {
        return lays.stream().mapToDouble(Lay::thicknessMm).max().orElse(0);
    }

    public double largestMm() {
        return lays.stream().mapToDouble(lay -> Math.max(lay.widthMm(), lay.heightMm())).max().orElse(0);
    }

    public List<Problem> check() {
        List<Problem> found = new ArrayList<>();
        for (int i = 0; i < lays.size(); i++) {
            Lay lay = lays.get(i);
            double rim = Math.min(Math.min(lay.xMm(), lay.yMm()),
                    Math.min(widthMm - lay.xMm() - lay.widthMm(), depthMm - lay.yMm() - lay.heightMm()));
            if (rim < 0) {
                found.add(Problem.of("off-shelf", Severity.ERROR, lay.piece(),
                        String.format(Locale.ROOT, "It reaches %.0f mm over the shelf's edge.", -rim)));
            } else if (rim < RIM_MM) {
                found.add(Problem.of("near-rim", Severity.WARNING, lay.piece(), String.format(Locale.ROOT,
                        "It lies %.0f mm from the shelf's edge; nearer than %.0f mm one side heats first.", rim, RIM_MM)));
            }
            for (int k = i + 1; k < lays.size(); k++) {
                double apart = lay.apartMm(lays.get(k));
                if (apart < 0) {
                    found.add(Problem.of("lie-over", Severity.ERROR, lay.piece() + ", " + lays.get(k).piece(),
                            "They lie over each other and would fuse."));
                } else if (apart < APART_MM) {
                    found.add(Problem.of("lie-near", Severity.NOTE, lay.piece() + ", " + lays.get(k).piece(), String.format(Locale.ROOT,
                            "They lie %.1f mm apart; leave %.0f mm.", apart, APART_MM)));
                }
            }
        }
        double thinnest = lays.stream().mapToDouble(Lay::thicknessMm).min().orElse(0);
        if (thickestMm() > UNEVEN * thinnest) {
            found.add(Problem.of("uneven-load", Severity.WARNING, "", String.format(Locale.ROOT,
                    "Glass of %.1f mm and of %.1f mm lie in one load; the schedule must suit the thickest.", thinnest, thickestMm())));
        }
        found.sort(Problem.WORST_FIRST);
        return found;
    }
}
