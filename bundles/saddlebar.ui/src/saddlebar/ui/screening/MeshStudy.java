package saddlebar.ui.screening;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import saddlebar.model.problem.Problem;
import saddlebar.stencil.ActualScreen;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.mesh.EngineBands;
import saddlebar.stencil.mesh.Mesh;
import saddlebar.stencil.mesh.MeshAdvice;
import saddlebar.stencil.mesh.MeshBeat;
import saddlebar.stencil.mesh.MeshBeats;
import saddlebar.stencil.mesh.ScoredRuling;

/**
 * What a ruling does on a mesh, and which pairs of ruling and angle do less.
 *
 * @param ask    what was studied
 * @param now    the recipe's ruling and angle as they come out, with their score; empty where the method has no ruling
 * @param beat   their slowest beat; empty where there is no ruling
 * @param better pairs with the least beat, best first
 * @param map    all pairs that were looked at, finest ruling first
 * @param advice what a person should know
 */
public record MeshStudy(Ask ask, Optional<ScoredRuling> now, Optional<MeshBeat> beat, List<ScoredRuling> better, List<ScoredRuling> map,
        List<Problem> advice) {
    /** Most better pairs told. */
    static final int MOST = 8;
    /** A beat of this score would just show if paint did not flow. */
    static final double JUST_SEEN = 0.005;
    private static final double FINEST_LPI = 65;
    private static final double LEAST_THREADS_A_CELL = 4;
    /** Coarser rulings beat in orders that are not looked at. */
    private static final double MOST_THREADS_A_CELL = 7;
    private static final double NEAR_SHARE = 0.15;
    private static final double CLEARLY_LESS = 0.5;

    /**
     * What is asked.
     *
     * @param mesh      as woven
     * @param turnDeg   of its threads
     * @param screening the recipe
     * @param bandsMm   periods of the printer's engine that the studio has measured
     */
    public record Ask(Mesh mesh, double turnDeg, ScreeningRecipe screening, List<Double> bandsMm) {
        /** @throws saddlebar.model.problem.Refusal if there can be no such mesh */
        static Ask of(double threadsPerInch, double threadUm, double turnDeg, ScreeningRecipe screening) {
            return new Ask(new Mesh(threadsPerInch, threadUm), turnDeg, screening, List.of());
        }

        Ask withBands(List<Double> periodsMm) {
            return new Ask(mesh, turnDeg, screening, List.copyOf(periodsMm));
        }
    }

    /** @param before an earlier study, of which the map is kept if mesh and device are the same */
    static MeshStudy of(Ask ask, Optional<MeshStudy> before) {
        MeshBeats beats = new MeshBeats(ask.mesh, ask.turnDeg);
        double dpi = ask.screening.dpi();
        ActualScreen actual = ScreeningMethods.ownMethods().method(ask.screening.method()).actual(ask.screening);
        Optional<ScoredRuling> now = Optional.empty();
        Optional<MeshBeat> beat = Optional.empty();
        if (actual.lpi().isPresent()) {
            double lpi = actual.lpi().getAsDouble();
            double angle = actual.angleDeg().orElse(0);
            now = Optional.of(new ScoredRuling(lpi, angle, beats.score(lpi, angle)));
            beat = Optional.of(beats.slowest(lpi, angle));
        }
        boolean same = before.isPresent() && before.get().ask.mesh.equals(ask.mesh) && before.get().ask.turnDeg == ask.turnDeg
                && before.get().ask.screening.dpi() == dpi;
        double coarsest = ask.mesh.threadsPerInch() / MOST_THREADS_A_CELL;
        double finest = Math.max(coarsest, Math.min(FINEST_LPI, ask.mesh.threadsPerInch() / LEAST_THREADS_A_CELL));
        List<ScoredRuling> map = same ? before.get().map : beats.map(dpi, coarsest, finest);
        List<ScoredRuling> better = same ? before.get().better : beats.better(dpi, MOST);
        List<Problem> advice = new ArrayList<>(MeshAdvice.of(ask.mesh, actual));
        now.flatMap(pair -> EngineBands.advice(ask.bandsMm, pair.lpi(), pair.angleDeg())).ifPresent(advice::add);
        return new MeshStudy(ask, now, beat, better, map, advice);
    }

    /** A pair near the recipe's ruling that shows clearly less, where the recipe's own would show: the one with the least. */
    Optional<ScoredRuling> nearBetter() {
        return now.filter(ruling -> ruling.score() > JUST_SEEN).flatMap(ruling -> map.stream()
                .filter(pair -> Math.abs(pair.lpi() / ruling.lpi() - 1) <= NEAR_SHARE && pair.score() < CLEARLY_LESS * ruling.score())
                .min(Comparator.comparingDouble(ScoredRuling::score)));
    }
}
