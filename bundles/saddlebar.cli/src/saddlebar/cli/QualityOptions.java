package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import picocli.CommandLine.Option;
import saddlebar.model.problem.LockedException;
import saddlebar.model.work.Work;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.code.BitonalSettings;
import saddlebar.stencil.quality.QualityPicture;
import saddlebar.stencil.quality.QualityRun;

/** Asks how even the tones of a recipe are. */
final class QualityOptions {
    @Option(names = "--quality", paramLabel = "FILE.png",
            description = "Also measure how even the tones are (power spectrum, direction, tone error, grain, worst repeat) and plot it; --json tells the figures.")
    private Path file;

    @Option(names = "--quality-m", paramLabel = "V", defaultValue = "2", description = "Distance in m from which grain is judged; 2 if not given.")
    private double distanceM;

    /** Before anything is made. */
    void check(CommonOptions common, boolean replace) throws LockedException {
        if (!(distanceM >= 0.1 && distanceM <= 100)) {
            throw common.wrong("--quality-m takes 0.1 to 100, not " + distanceM + ".");
        }
        if (file == null) {
            return;
        }
        if (!String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).endsWith(".png")) {
            throw common.wrong("--quality takes a name that ends in .png, not '" + file + "'.");
        }
        if (Files.exists(file) && !replace) {
            throw new LockedException(file + " exists already; nothing was written. Give --replace to replace it, or another name.");
        }
    }

    /** Measured and drawn; null if it was not asked for, so that the document says null. */
    List<QualityRow> measured(List<ScreeningRecipe> recipes, ScreeningMethods methods, boolean replace, Work work, List<String> words) throws IOException {
        if (file == null) {
            return null;
        }
        List<QualityRun> runs = new ArrayList<>();
        for (ScreeningRecipe recipe : recipes) {
            QualityRun run = QualityRun.of(methods.method(recipe.method()), recipe, QualityRun.TONES, distanceM, work.part(0, QualityRun.TONES.size()));
            runs.add(run);
            words.add(String.format(Locale.ROOT, "Tones true to %.2f points; most grain seen at %.1f m %.2f %% of the step to a solid: %s",
                    100 * run.worstToneError(), distanceM, 100 * run.mostGrain(), file));
        }
        QualityPicture.write(runs, file, BitonalSettings.at(recipes.get(0).dpi()).withTitle("How even tones are").replacing(replace));
        return runs.stream().map(QualityRow::of).toList();
    }
}
