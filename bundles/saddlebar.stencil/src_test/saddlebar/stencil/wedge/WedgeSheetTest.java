package saddlebar.stencil.wedge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.code.BitonalSettings;
import saddlebar.stencil.code.BitonalTiff;
import saddlebar.stencil.code.SheetPdf;
import saddlebar.stencil.process.Face;
import saddlebar.stencil.process.FusedSheetProcess;
import saddlebar.stencil.process.TonerSide;
import saddlebar.stencil.sheet.ComposedSheet;
import saddlebar.stencil.sheet.Paper;
import saddlebar.stencil.sheet.SheetPlan;

class WedgeSheetTest {
    private static final ScreeningRecipe RECIPE = ScreeningRecipe.withDefaults().withDpiAndLpi(300, 40);

    private static SheetPlan plan(Paper paper, List<ScreeningRecipe> recipes) throws IOException {
        return WedgeSheet.plan(WedgeLayout.usual(), recipes, ScreeningMethods.ownMethods(), paper, new FusedSheetProcess(), TonerSide.PRINT, Face.INTERIOR,
                false, "Wedge", "matt, 220 mesh");
    }

    /** One wedge a method; the same bits in TIFF and PDF. */
    @Test
    void fiveMethodsOnASheet(@TempDir Path folder) throws IOException {
        List<ScreeningRecipe> recipes = List.of(RECIPE, RECIPE.withMethod("diffusion"), RECIPE.withMethod("bluenoise"),
                RECIPE.withMethod("hybrid").withDotMm(0.17),
                RECIPE.withMethod("stipple").withDotMm(0.17));
        SheetPlan plan = plan(Paper.LETTER, recipes);
        BitonalSettings settings = BitonalSettings.at(300).onThreads(1);
        String tiff = BitonalTiff.write(ComposedSheet.of(plan), folder.resolve("w.tif"), settings, Work.UNWATCHED).sha256OfBits();
        String pdf = SheetPdf.write(ComposedSheet.of(plan), folder.resolve("w.pdf"), settings, Work.UNWATCHED).sha256OfBits();
        assertEquals(tiff, pdf);
        assertEquals(5, plan.stencils().size());
    }

    @Test
    void whatDoesNotFit() {
        assertThrows(Refusal.class, () -> plan(Paper.LETTER, Collections.nCopies(9, RECIPE)));
        assertThrows(Refusal.class, () -> plan(new Paper("strip", 150, 200), List.of(RECIPE)));
        assertThrows(Refusal.class, () -> plan(Paper.A4, List.of(RECIPE, RECIPE.withDpiAndLpi(600, 40))));
        assertThrows(Refusal.class, () -> new WedgeLayout(List.of(0.0, 0.2, 0.4, 0.6, 0.8), 8, 4, 2, 10));
        assertThrows(Refusal.class, () -> new WedgeLayout(List.of(0.0, 0.5, 0.4, 0.6, 1.0), 8, 4, 2, 10));
    }
}
