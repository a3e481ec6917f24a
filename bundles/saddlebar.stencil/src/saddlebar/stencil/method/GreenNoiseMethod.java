package saddlebar.stencil.method;

import java.util.List;

import org.osgi.service.component.annotations.Component;

import saddlebar.model.problem.Problem;
import saddlebar.stencil.ActualScreen;
import saddlebar.stencil.Screener;
import saddlebar.stencil.ScreeningMethod;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.ScreeningRecipe.Scan;
import saddlebar.stencil.tone.ToneTable;

/**
 * Scattered clusters of dots: error diffusion that favours neighbours of painted dots, more the larger the recipe's {@code clump}. Clusters
 * gain less in print than single dots and suit a coarse mesh.
 *
 * <p>Source of the idea: Lau, Arce and Gallagher, Green-noise digital halftoning, Proc. IEEE 86(12), 1998.
 */
@Component(service = ScreeningMethod.class)
public final class GreenNoiseMethod implements ScreeningMethod {
    private static final int LEVELS = 256;

    @Override
    public String key() {
        return "greennoise";
    }

    @Override
    public ActualScreen actual(ScreeningRecipe recipe) {
        return ScatteredDots.actual(recipe, LEVELS);
    }

    @Override
    public List<Problem> advice(ScreeningRecipe recipe) {
        return ScatteredDots.advice(recipe);
    }

    @Override
    public Screener start(ScreeningRecipe recipe, ToneTable tone, int widthPx, int heightPx) {
        int dots = ScatteredDots.acrossPicture(recipe, widthPx);
        return ScatteredDots.screener(recipe, tone, widthPx, new ClumpedRows(dots, recipe.scan() == Scan.SERPENTINE, recipe.clump()));
    }
}
