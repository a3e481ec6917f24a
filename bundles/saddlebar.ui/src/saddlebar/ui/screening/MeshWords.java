package saddlebar.ui.screening;

import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;

import saddlebar.model.problem.Problem;
import saddlebar.stencil.mesh.Eye;
import saddlebar.stencil.mesh.Mesh;
import saddlebar.stencil.mesh.MeshBeat;
import saddlebar.ui.Messages;

/** Says in words what a mesh is and what a ruling does on it. */
final class MeshWords {
    private static final double LONG_MM = 1000;

    private MeshWords() {
    }

    static String facts(String layer, String meshName, Mesh mesh) {
        return NLS.bind(Messages.Mesh_facts, new Object[] {layer, meshName, number(mesh.openingUm()), ScreeningWords.percent(mesh.openArea(), 0),
                number(mesh.finestDotUm()), number(mesh.volumeCm3PerM2())});
    }

    /** The slowest beat, and whether it would show from there. */
    static String beat(MeshStudy study, double distanceM) {
        if (study.beat().isEmpty() || study.now().isEmpty()) {
            return Messages.Mesh_noRuling;
        }
        MeshBeat beat = study.beat().get();
        String pair = ScreeningWords.pair(study.now().get());
        if (beat.locked()) {
            return NLS.bind(Messages.Mesh_locked, pair);
        }
        String period = beat.periodMm() > LONG_MM
                ? ScreeningWords.number(beat.periodMm() / LONG_MM, 1) + " m"
                : ScreeningWords.number(beat.periodMm(), 1) + " mm";
        String seen = beat.visible(new Eye(distanceM)) ? Messages.Mesh_seen : Messages.Mesh_notSeen;
        return NLS.bind(Messages.Mesh_beat, new Object[] {pair, period, ScreeningWords.percent(beat.contrast(), 1), seen,
                ScreeningWords.percent(study.now().get().score(), 2)});
    }

    static String advice(MeshStudy study) {
        String words = study.advice().stream().map(Problem::message).collect(Collectors.joining("\n"));
        return study.nearBetter().map(pair -> NLS.bind(Messages.Mesh_better, ScreeningWords.pair(pair), ScreeningWords.percent(pair.score(), 2))
                + (words.isEmpty() ? "" : "\n" + words)).orElse(words);
    }

    private static String number(double value) {
        return ScreeningWords.number(value, 0);
    }
}
