package saddlebar.stencil.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

import org.osgi.service.component.annotations.Component;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Units;
import saddlebar.stencil.ActualScreen;
import saddlebar.stencil.Screener;
import saddlebar.stencil.ScreeningMethod;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.SpotFunction;
import saddlebar.stencil.tone.ToneTable;

/**
 * Dots that grow on a grid in the middle tones, scattered dots of one size at both ends: no dot and no hole is ever smaller than the recipe's
 * {@code dotMm}. In light tones cells get a smallest dot each, one cell after the other in the order of a blue-noise array; when all have one,
 * they grow as those of {@code am}; in dark tones the last holes, all of that size, close one after the other. Each tone's paint lies within the
 * next darker one's, so that no seam shows. Common practice of the printing trade; the order of cells is our own.
 */
@Component(service = ScreeningMethod.class)
public final class HybridMethod implements ScreeningMethod {
    /** Above, dots that touch their neighbours would be the smallest. */
    private static final double MOST_SHARE = 0.4;
    private static final List<SpotFunction> ROUND_ENOUGH = List.of(SpotFunction.ROUND, SpotFunction.SIMPLE_DOT, SpotFunction.COSINE_DOT, SpotFunction.ELLIPSE,
            SpotFunction.ELLIPSE_A, SpotFunction.ELLIPSE_B, SpotFunction.ELLIPSE_C, SpotFunction.DIAMOND);

    @Override
    public String key() {
        return "hybrid";
    }

    @Override
    public ActualScreen actual(ScreeningRecipe recipe) {
        CellGrid grid = CellGrid.of(recipe);
        return new ActualScreen(OptionalDouble.of(grid.lpi(recipe.dpi())), OptionalDouble.of(grid.angleDeg()),
                OptionalDouble.of(Units.mmOfPx(recipe.dotPx(), recipe.dpi())), grid.area() + 1);
    }

    @Override
    public List<Problem> advice(ScreeningRecipe recipe) {
        List<Problem> advice = new ArrayList<>(new AmMethod().advice(recipe));
        advice.addAll(ScatteredDots.advice(recipe));
        return advice;
    }

    @Override
    public Screener start(ScreeningRecipe recipe, ToneTable tone, int widthPx, int heightPx) {
        CellGrid grid = CellGrid.of(recipe);
        if (!ROUND_ENOUGH.contains(recipe.spot())) {
            throw new Refusal("dot", recipe.dot() + " dots do not grow from the middle of their cell, which hybrid needs",
                    "take round, ellipse, diamond or cosine, or the method am");
        }
        double cellPx = (double) grid.area() / grid.cells() / grid.cells();
        double share = (double) recipe.dotPx() * recipe.dotPx() / cellPx;
        if (share > MOST_SHARE) {
            double most = Math.floor(1000 * Units.mmOfPx(1, recipe.dpi()) * Math.floor(Math.sqrt(MOST_SHARE * cellPx))) / 1000;
            throw new Refusal("dot-mm",
                    String.format(Locale.ROOT, "smallest dots of %s mm take %.0f %% of a cell of %s lines an inch", Units.plain(recipe.dotMm()),
                            100 * share, Units.plain(recipe.lpi())),
                    String.format(Locale.ROOT, "take %s mm or less, or a coarser ruling", Units.plain(most)));
        }
        return new HybridScreener(grid, recipe.spot(), share, tone, widthPx);
    }
}
