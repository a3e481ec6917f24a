package saddlebar.cli;

import java.util.List;

import saddlebar.stencil.quality.PatchQuality;
import saddlebar.stencil.quality.QualityRun;
import saddlebar.stencil.quality.ToneQuality;
import saddlebar.stencil.wedge.WedgeSheet;

/** How even the tones of one recipe are, for JSON documents. */
record QualityRow(String recipe, double distanceM, double cyclesPerMmARing, double worstToneError, double mostGrain, List<Patch> patches) {
    /** One tone; radial power is told ring by ring from frequency 0. */
    record Patch(double asked, double painted, double toneError, double grain, double lowPower, Double anisotropyDb, double repeatMm, double repeatPower,
            double[] radialPower) {
    }

    static QualityRow of(QualityRun run) {
        return new QualityRow(WedgeSheet.name(run.recipe()), run.distanceM(), run.cyclesPerMmARing(), run.worstToneError(), run.mostGrain(),
                run.patches().stream().map(QualityRow::patch).toList());
    }

    private static Patch patch(PatchQuality patch) {
        ToneQuality quality = patch.quality();
        return new Patch(patch.asked(), patch.painted(), quality.toneError(), quality.grain(), quality.lowPower(),
                Double.isFinite(quality.anisotropyDb()) ? quality.anisotropyDb() : null, quality.repeatMm(), quality.repeatPower(), patch.radial());
    }
}
