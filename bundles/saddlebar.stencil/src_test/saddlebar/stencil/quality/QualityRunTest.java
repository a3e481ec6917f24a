package saddlebar.stencil.quality;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.work.Work;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.code.BitonalSettings;

class QualityRunTest {
    private static QualityRun run(String method, double... tones) throws IOException {
        ScreeningRecipe recipe = ScreeningRecipe.withDefaults().withMethod(method);
        return QualityRun.of(ScreeningMethods.ownMethods().method(method), recipe, Arrays.stream(tones).boxed().toList(), 2, Work.UNWATCHED);
    }

    /** Ruled dots of 40 an inch at 22.5 degrees have their strongest ring at 40/25.4 = 1.57 cycles a mm (closed form). */
    @Test
    void ruledDotsShowTheirRuling() throws IOException {
        QualityRun run = run("am", 0.25);
        double[] radial = run.patches().get(0).radial();
        int strongest = 0;
        for (int ring = 1; ring < radial.length; ring++) {
            strongest = radial[ring] > radial[strongest] ? ring : strongest;
        }
        assertEquals(40 / 25.4, (strongest + 0.5) * run.cyclesPerMmARing(), run.cyclesPerMmARing());
        assertTrue(run.worstToneError() < 0.002, "exact cells are true in tone: " + run.worstToneError());
    }

    /** Blue noise favours neither direction nor long waves: less low power than chance, which has 1 (Ulichney 1987); ruled dots favour directions more. */
    @Test
    void scatteredDotsFavourNoDirection() throws IOException {
        QualityRun noise = run("bluenoise", 0.125);
        QualityRun ruled = run("am", 0.125);
        assertTrue(noise.patches().get(0).quality().lowPower() < 144 * 0.2, "dots of 12 px gather 144 px: " + noise.patches().get(0).quality().lowPower());
        assertTrue(noise.patches().get(0).quality().anisotropyDb() < ruled.patches().get(0).quality().anisotropyDb());
    }

    @Test
    void pictureIsWritten(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("quality.png");
        QualityPicture.write(List.of(run("am", 0.25, 0.5), run("diffusion", 0.25, 0.5)), file, BitonalSettings.at(1200));
        assertEquals(Math.round(2 * QualityPicture.HEIGHT_MM * 150 / 25.4), ImageIO.read(file.toFile()).getHeight());
    }
}
