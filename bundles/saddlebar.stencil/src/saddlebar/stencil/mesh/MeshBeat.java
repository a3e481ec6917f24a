package saddlebar.stencil.mesh;

import saddlebar.model.units.Units;

/**
 * One beat of a ruling with a mesh: the difference of the ruling's frequency (i, j) and the mesh's frequency (u, v).
 *
 * @param i             order along the ruling
 * @param j             order across the ruling
 * @param u             order along the mesh's first threads
 * @param v             order along its other threads
 * @param cyclesPerInch frequency of the beat; 0 where the two are locked: no beat, but uneven dots
 * @param contrast      of the beat at 30 % tone, 0 to 1; overstated, since wet paint flows and stencils bridge openings
 */
public record MeshBeat(int i, int j, int u, int v, double cyclesPerInch, double contrast) {
    private static final double LOCKED = 1e-6;

    public boolean locked() {
        return cyclesPerInch < LOCKED;
    }

    /** Distance from band to band in mm; infinite where locked. */
    public double periodMm() {
        return locked() ? Double.POSITIVE_INFINITY : Units.MM_PER_INCH / cyclesPerInch;
    }

    /** Whether it would show from there if paint did not flow. */
    public boolean visible(Eye eye) {
        return eye.sees(contrast, cyclesPerInch / Units.MM_PER_INCH);
    }
}
