package saddlebar.stencil;

import static saddlebar.model.units.Units.plain;

import java.util.Objects;

import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Units;

/**
 * How gray becomes dots: everything that a screening method may ask for. A value out of its range is refused whether the method uses it or
 * not, so that a recipe stays good when its method is changed.
 *
 * @param method    key of the {@link ScreeningMethod}
 * @param dpi       device px an inch, 72 to 4800
 * @param lpi       ruling in cells an inch, dpi/512 to dpi/4 (below 17 tones a cell are no halftone)
 * @param angleDeg  angle of the ruling, x towards y, -360 to 360
 * @param dot       a name of {@link SpotFunction}
 * @param dotMm     side of a scattered dot, 0.005 to 5 mm
 * @param filter    a name of {@link DiffusionFilter}
 * @param scan      whether every second row of dots is diffused from right to left
 * @param edge      what becomes of error that would fall outside the picture
 * @param supercell cells along one side of the repeating tile, 1 to 4; {@link #AUTOMATIC} takes the fewest that come near ruling and angle
 * @param clump     how strongly green noise clusters its dots (the hysteresis h), 0 to 2; 0 is plain error diffusion
 * @param noiseSide dots along a side of the blue-noise array, 64 or 128: after so many dots it repeats
 * @param course    how the lines of a line screen run, as {@link LineCourse#parse} reads it
 */
public record ScreeningRecipe(String method, double dpi, double lpi, double angleDeg, String dot, double dotMm, String filter, Scan scan,
        Edge edge, int supercell, double clump, int noiseSide, String course) {
    /** The fewest cells a tile that come within 0.5 % of the ruling and 0.25 degrees of the angle. */
    public static final int AUTOMATIC = 0;
    /** Mean dots of a cluster of green noise at 25 %, measured at clumps of 0, 1/2, 1, 3/2 and 2. */
    private static final double[] CLUSTER_DOTS = {1, 2.3, 3.6, 5.2, 7.3};
    static final double LEAST_DPI = 72;
    static final double MOST_DPI = 4800;
    static final int LEAST_CELL_PX = 4;
    static final int MOST_CELL_PX = 512;

    /** Order in which error diffusion walks. */
    public enum Scan {
        /** Odd rows from right to left with mirrored weights: no directional worms. */
        SERPENTINE,
        /** Every row from left to right. */
        RASTER
    }

    /** What becomes of weights that point outside the picture. */
    public enum Edge {
        /** They are dropped: the tone of a field of 256 dots is off by 0.002 at most. */
        DROPPED,
        /** The weights that stay inside share them. */
        SHARED
    }

    public ScreeningRecipe {
        if (method == null || method.isBlank()) {
            throw new Refusal("method", "no screening method is named", "name one, for instance am or diffusion");
        }
        requireWithin("dpi", dpi, LEAST_DPI, MOST_DPI, "px an inch");
        if (!(lpi <= dpi / LEAST_CELL_PX)) {
            throw new Refusal("lpi", "a ruling of " + plain(lpi) + " at " + plain(dpi) + " dpi leaves a cell fewer than 17 tones",
                    "ask for " + plain(dpi / LEAST_CELL_PX) + " or less, or for more dpi");
        }
        if (!(lpi >= dpi / MOST_CELL_PX)) {
            throw new Refusal("lpi", "a ruling of " + plain(lpi) + " at " + plain(dpi) + " dpi makes cells wider than " + MOST_CELL_PX + " px",
                    "ask for " + plain(Math.ceil(dpi / MOST_CELL_PX * 100) / 100) + " or more, or for fewer dpi");
        }
        requireWithin("angle", angleDeg, -360, 360, "degrees");
        if (dot == null || SpotFunction.named(dot).isEmpty()) {
            throw new Refusal("dot", "there is no dot shape called " + dot, "take one of " + String.join(", ", SpotFunction.names()));
        }
        requireWithin("dot-mm", dotMm, 0.005, 5, "mm");
        if (filter == null || DiffusionFilter.named(filter).isEmpty()) {
            throw new Refusal("filter", "there is no diffusion filter called " + filter, "take one of " + String.join(", ", DiffusionFilter.names()));
        }
        Objects.requireNonNull(scan, "scan");
        Objects.requireNonNull(edge, "edge");
        if (supercell < AUTOMATIC || supercell > 4) {
            throw new Refusal("supercell", supercell + " cells along a tile is out of range", "take 1 to 4, or 0 to leave the choice to the method");
        }
        requireWithin("clump", clump, 0, 2, "");
        if (noiseSide != 64 && noiseSide != 128) {
            throw new Refusal("noise-side", "there is no blue-noise array of " + noiseSide + " dots a side", "take 64 or 128");
        }
        LineCourse.parse(course);
    }

    private static void requireWithin(String option, double value, double least, double most, String unit) {
        if (!(value >= least && value <= most)) {
            throw new Refusal(option, plain(value) + " is out of range", ("take " + plain(least) + " to " + plain(most) + " " + unit).strip());
        }
    }

    /** AM at 40 lines an inch, 22.5 degrees, round dots, for a 1200 dpi sheet; scattered dots of 1/100 inch (common practice). */
    public static ScreeningRecipe withDefaults() {
        return new ScreeningRecipe("am", 1200, 40, 22.5, "round", 0.254, DiffusionFilter.FLOYD_STEINBERG.key(), Scan.SERPENTINE, Edge.DROPPED,
                AUTOMATIC, 1, 64, "straight");
    }

    public ScreeningRecipe withMethod(String other) {
        return new ScreeningRecipe(other, dpi, lpi, angleDeg, dot, dotMm, filter, scan, edge, supercell, clump, noiseSide, course);
    }

    /** Resolution and ruling change together: 600 dpi with the ruling of a 2400 dpi recipe may be out of range for a moment. */
    public ScreeningRecipe withDpiAndLpi(double otherDpi, double otherLpi) {
        return new ScreeningRecipe(method, otherDpi, otherLpi, angleDeg, dot, dotMm, filter, scan, edge, supercell, clump, noiseSide, course);
    }

    public ScreeningRecipe withDpi(double other) {
        return withDpiAndLpi(other, lpi);
    }

    public ScreeningRecipe withLpi(double other) {
        return withDpiAndLpi(dpi, other);
    }

    public ScreeningRecipe withAngleDeg(double other) {
        return new ScreeningRecipe(method, dpi, lpi, other, dot, dotMm, filter, scan, edge, supercell, clump, noiseSide, course);
    }

    public ScreeningRecipe withDot(String other) {
        return new ScreeningRecipe(method, dpi, lpi, angleDeg, other, dotMm, filter, scan, edge, supercell, clump, noiseSide, course);
    }

    public ScreeningRecipe withDotMm(double other) {
        return new ScreeningRecipe(method, dpi, lpi, angleDeg, dot, other, filter, scan, edge, supercell, clump, noiseSide, course);
    }

    public ScreeningRecipe withFilter(String other) {
        return new ScreeningRecipe(method, dpi, lpi, angleDeg, dot, dotMm, other, scan, edge, supercell, clump, noiseSide, course);
    }

    public ScreeningRecipe withScan(Scan other) {
        return new ScreeningRecipe(method, dpi, lpi, angleDeg, dot, dotMm, filter, other, edge, supercell, clump, noiseSide, course);
    }

    public ScreeningRecipe withEdge(Edge other) {
        return new ScreeningRecipe(method, dpi, lpi, angleDeg, dot, dotMm, filter, scan, other, supercell, clump, noiseSide, course);
    }

    public ScreeningRecipe withSupercell(int other) {
        return new ScreeningRecipe(method, dpi, lpi, angleDeg, dot, dotMm, filter, scan, edge, other, clump, noiseSide, course);
    }

    public ScreeningRecipe withClump(double other) {
        return new ScreeningRecipe(method, dpi, lpi, angleDeg, dot, dotMm, filter, scan, edge, supercell, other, noiseSide, course);
    }

    /**
     * The clump that gives clusters of so many dots at a quarter coverage: between what was measured at steps of it.
     *
     * @param dots mean dots of a cluster, 1 to 7
     */
    public ScreeningRecipe withClusterDots(double dots) {
        requireWithin("cluster-dots", dots, 1, 7, "dots");
        int step = 0;
        while (step < CLUSTER_DOTS.length - 2 && dots > CLUSTER_DOTS[step + 1]) {
            step++;
        }
        return withClump((step + (dots - CLUSTER_DOTS[step]) / (CLUSTER_DOTS[step + 1] - CLUSTER_DOTS[step])) / 2);
    }

    public ScreeningRecipe withNoiseSide(int other) {
        return new ScreeningRecipe(method, dpi, lpi, angleDeg, dot, dotMm, filter, scan, edge, supercell, clump, other, course);
    }

    public ScreeningRecipe withCourse(String other) {
        return new ScreeningRecipe(method, dpi, lpi, angleDeg, dot, dotMm, filter, scan, edge, supercell, clump, noiseSide, other);
    }

    public LineCourse lineCourse() {
        return LineCourse.parse(course);
    }

    public SpotFunction spot() {
        return SpotFunction.named(dot).orElseThrow();
    }

    public DiffusionFilter diffusionFilter() {
        return DiffusionFilter.named(filter).orElseThrow();
    }

    /** Side of a scattered dot in whole device px, at least 1. */
    public int dotPx() {
        return Math.max(1, Units.pxOfMm(dotMm, dpi));
    }
}
