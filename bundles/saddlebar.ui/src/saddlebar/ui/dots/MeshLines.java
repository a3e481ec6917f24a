package saddlebar.ui.dots;

import saddlebar.model.units.Require;
import saddlebar.model.units.Units;

/**
 * A plain-woven mesh as it lies on the stencil: threads in two directions.
 *
 * @param threadsPerInch in each direction
 * @param threadUm       thickness of a thread in micrometres
 * @param turnDeg        turned against the stencil's edges
 */
public record MeshLines(double threadsPerInch, double threadUm, double turnDeg) {
    public MeshLines {
        Require.within("threadsPerInch", threadsPerInch, 1, 2000);
        Require.within("threadUm", threadUm, 0, 10_000);
        Require.finite("turnDeg", turnDeg);
    }

    /** From thread to thread, mm. */
    public double pitchMm() {
        return Units.MM_PER_INCH / threadsPerInch;
    }

    /** Whether a thread lies at a place of the stencil; one thread's middle goes through 0, 0 each way. */
    public boolean threadAt(double xMm, double yMm) {
        double turn = Math.toRadians(turnDeg);
        double u = xMm * Math.cos(turn) + yMm * Math.sin(turn);
        double v = yMm * Math.cos(turn) - xMm * Math.sin(turn);
        return nearThread(u) || nearThread(v);
    }

    private boolean nearThread(double across) {
        double pitch = pitchMm();
        return Math.abs(across - Math.rint(across / pitch) * pitch) < threadUm / 2000;
    }

    /** Share of the mesh that is open: (1 - d/p)^2 of thread thickness d and pitch p, as mesh makers reckon it. */
    public double openShare() {
        double open = Math.max(0, 1 - threadUm / 1000 / pitchMm());
        return open * open;
    }
}
