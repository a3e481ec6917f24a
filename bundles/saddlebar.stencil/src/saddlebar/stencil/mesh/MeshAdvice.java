package saddlebar.stencil.mesh;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.stencil.ActualScreen;

/** Whether a screen suits a mesh, by rules of the trade (common practice; trade columns say that no ratio predicts bands: see the beat). */
public final class MeshAdvice {
    private static final double LEAST_THREADS = 4;
    private static final double GOOD_THREADS = 5;

    private MeshAdvice() {
    }

    public static List<Problem> of(Mesh mesh, ActualScreen screen) {
        List<Problem> advice = new ArrayList<>(mesh.advice());
        screen.lpi().ifPresent(lpi -> ruling(mesh, lpi, advice));
        screen.dotMm().ifPresent(dotMm -> dots(mesh, dotMm, advice));
        return advice;
    }

    private static void ruling(Mesh mesh, double lpi, List<Problem> advice) {
        double threads = mesh.threadsPerInch() / lpi;
        if (threads < LEAST_THREADS) {
            advice.add(Problem.of("ruling-too-fine", Severity.WARNING, "mesh", String.format(Locale.ROOT,
                    "Only %.1f threads carry a cell of %.1f lines an inch; take a ruling of %.0f or less, or a finer mesh.", threads, lpi,
                    Math.floor(mesh.threadsPerInch() / LEAST_THREADS))));
        } else if (threads < GOOD_THREADS) {
            advice.add(Problem.of("ruling-fine", Severity.NOTE, "mesh", String.format(Locale.ROOT,
                    "%.1f threads carry a cell of %.1f lines an inch; five or more print more evenly.", threads, lpi)));
        }
    }

    private static void dots(Mesh mesh, double dotMm, List<Problem> advice) {
        double dotUm = 1000 * dotMm;
        if (dotUm < mesh.finestDotUm()) {
            advice.add(Problem.of("dots-too-fine", Severity.WARNING, "mesh", String.format(Locale.ROOT,
                    "Dots of %.0f um are finer than this mesh prints (%.0f um); take larger dots or a finer mesh.", dotUm, mesh.finestDotUm())));
        } else if (dotUm < mesh.finestBridgeUm()) {
            advice.add(Problem.of("gaps-too-fine", Severity.WARNING, "mesh", String.format(Locale.ROOT,
                    "Gaps of %.0f um between dots will run together (%.0f um hold); take larger dots or a finer mesh.", dotUm,
                    mesh.finestBridgeUm())));
        }
    }
}
