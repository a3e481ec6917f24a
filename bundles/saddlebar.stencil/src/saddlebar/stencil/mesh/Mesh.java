package saddlebar.stencil.mesh;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Units;

/**
 * A plain-weave mesh as woven, before a frame's tension (which takes 1 to 3 % of the threads an inch). Pitch p = 25400/n, opening w = p - d,
 * open area A = (w/p)^2, fabric thickness h = k d, theoretical volume V = A h: geometry; within 1 um, 1 point and 1 cm3/m2 of published
 * meshes of one count (docs/algorithms/mesh.md).
 *
 * @param threadsPerInch    n, threads an inch, 10 to 500
 * @param threadUm          d, thread diameter in um, at least 1 and less than the pitch
 * @param thicknessByThread k, fabric thickness over thread diameter, 1 to 2; 1.45 to 1.65 as woven and calendered
 */
public record Mesh(double threadsPerInch, double threadUm, double thicknessByThread) {
    /** The middle of published fabrics: 1.475, 1.5 and 1.556 for one count with three threads. */
    public static final double USUAL_THICKNESS = 1.55;

    public Mesh {
        if (!(threadsPerInch >= 10 && threadsPerInch <= 500)) {
            throw new Refusal("count", "a mesh of " + Units.plain(threadsPerInch) + " threads an inch is out of range", "take 10 to 500");
        }
        if (!(threadUm >= 1 && threadUm < Units.UM_PER_INCH / threadsPerInch)) {
            throw new Refusal("thread-um", "threads of " + Units.plain(threadUm) + " um leave no opening at " + Units.plain(threadsPerInch)
                    + " threads an inch", String.format(Locale.ROOT, "take 1 to less than %.1f um", Units.UM_PER_INCH / threadsPerInch));
        }
        if (!(thicknessByThread >= 1 && thicknessByThread <= 2)) {
            throw new Refusal("thickness", "a fabric " + Units.plain(thicknessByThread) + " threads thick is out of range", "take 1 to 2");
        }
    }

    public Mesh(double threadsPerInch, double threadUm) {
        this(threadsPerInch, threadUm, USUAL_THICKNESS);
    }

    /**
     * The mesh in its frame: tension takes a share of the threads an inch and widens the openings; the thread is taken to stay as thick.
     *
     * @param loss 0 to 0.1; 0.01 to 0.03 is usual (common practice, no source)
     */
    public Mesh underTension(double loss) {
        if (!(loss >= 0 && loss <= 0.1)) {
            throw new Refusal("tension", "a loss of " + Units.plain(loss) + " of the threads is out of range", "take 0 to 0.1, such as 0.02");
        }
        return new Mesh(threadsPerInch * (1 - loss), threadUm, thicknessByThread);
    }

    /** The finest ruling that this mesh carries: four threads a cell. Common practice, no source. */
    public double finestLpi() {
        return threadsPerInch / 4;
    }

    /** Distance from thread to thread in um. */
    public double pitchUm() {
        return Units.UM_PER_INCH / threadsPerInch;
    }

    /** Side of one opening in um. */
    public double openingUm() {
        return pitchUm() - threadUm;
    }

    /** Share of the area that is open, 0 to 1. */
    public double openArea() {
        double side = openingUm() / pitchUm();
        return side * side;
    }

    public double fabricUm() {
        return thicknessByThread * threadUm;
    }

    /** Paint that the openings hold, in cm3 a m2 (which is um of wet film if all of it were left behind). */
    public double volumeCm3PerM2() {
        return openArea() * fabricUm();
    }

    /** Smallest dot or line that holds and prints: two threads and an opening, 2 d + w. Common practice, no source. */
    public double finestDotUm() {
        return 2 * threadUm + openingUm();
    }

    /** Narrowest bridge that holds between openings: a pitch, and 150 um at least. Common practice, no source. */
    public double finestBridgeUm() {
        return Math.max(pitchUm(), 150);
    }

    /** Coarsest paint: nine grains of ten should be below a third of the opening. Common practice, no source. */
    public double grainUm() {
        return openingUm() / 3;
    }

    /** What is unusual about the fabric itself. */
    public List<Problem> advice() {
        List<Problem> advice = new ArrayList<>();
        double percent = 100 * openArea();
        if (percent < 15) {
            advice.add(Problem.of("mesh-closed", Severity.WARNING, "mesh", String.format(Locale.ROOT,
                    "Only %.0f %% of this mesh is open; paint will hardly pass. Check count and thread, or take a thinner thread.", percent)));
        } else if (percent > 65) {
            advice.add(Problem.of("mesh-open", Severity.WARNING, "mesh", String.format(Locale.ROOT,
                    "%.0f %% of this mesh is open; it holds fine stencils badly. Check count and thread, or take a thicker thread.", percent)));
        }
        return advice;
    }
}
