package saddlebar.stencil.method;

import java.util.List;

import org.osgi.service.component.annotations.Component;

import saddlebar.model.problem.Problem;
import saddlebar.stencil.ActualScreen;
import saddlebar.stencil.Screener;
import saddlebar.stencil.ScreeningMethod;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.tone.ToneTable;

/**
 * Scattered dots by a blue-noise threshold array of 64 x 64 or 128 x 128 dots (the recipe's {@code noiseSide}), made by {@link VoidAndCluster} and
 * shipped as data. Unlike diffusion each dot is decided by itself: nothing runs on from an edge. The array repeats after its side.
 */
@Component(service = ScreeningMethod.class)
public final class BlueNoiseMethod implements ScreeningMethod {
    static final int SIDE = 64;
    static final double SIGMA_DOTS = 1.5;
    static final long SEED = 1993;

    @Override
    public String key() {
        return "bluenoise";
    }

    @Override
    public ActualScreen actual(ScreeningRecipe recipe) {
        return ScatteredDots.actual(recipe, recipe.noiseSide() * recipe.noiseSide() + 1);
    }

    @Override
    public List<Problem> advice(ScreeningRecipe recipe) {
        return ScatteredDots.advice(recipe);
    }

    @Override
    public Screener start(ScreeningRecipe recipe, ToneTable tone, int widthPx, int heightPx) {
        int dots = ScatteredDots.acrossPicture(recipe, widthPx);
        return ScatteredDots.screener(recipe, tone, widthPx, new ThresholdRows(dots, recipe.noiseSide(), BlueNoiseRanks.of(recipe.noiseSide())));
    }
}
