package saddlebar.stencil.method;

import java.util.List;

import org.osgi.service.component.annotations.Component;

import saddlebar.model.problem.Problem;
import saddlebar.stencil.ActualScreen;
import saddlebar.stencil.DiffusionFilter;
import saddlebar.stencil.Screener;
import saddlebar.stencil.ScreeningMethod;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.ScreeningRecipe.Edge;
import saddlebar.stencil.ScreeningRecipe.Scan;
import saddlebar.stencil.tone.ToneTable;

/** Scattered dots by error diffusion: no ruling, hence nothing that repeats and beats with the mesh. */
@Component(service = ScreeningMethod.class)
public final class DiffusionMethod implements ScreeningMethod {
    /** As many as the gray that comes in: diffusion has no steps of its own. */
    private static final int LEVELS = 256;

    @Override
    public String key() {
        return "diffusion";
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
        return start(recipe, tone, widthPx, heightPx, 1);
    }

    @Override
    public Screener start(ScreeningRecipe recipe, ToneTable tone, int widthPx, int heightPx, int threads) {
        if (recipe.dotPx() == 1 && recipe.scan() == Scan.RASTER && recipe.diffusionFilter() == DiffusionFilter.FLOYD_STEINBERG
                && recipe.edge() == Edge.DROPPED) {
            return new RasterScreener(tone, widthPx, threads);
        }
        return ScatteredDots.screener(recipe, tone, widthPx, decider(recipe, ScatteredDots.acrossPicture(recipe, widthPx)));
    }

    private static RowDecider decider(ScreeningRecipe recipe, int dots) {
        boolean serpentine = recipe.scan() == Scan.SERPENTINE;
        DiffusionFilter filter = recipe.diffusionFilter();
        if (recipe.edge() == Edge.SHARED) {
            Spread[] spreads = filter == DiffusionFilter.OSTROMOUKHOV ? TonalSpreads.byLevel() : new Spread[] {Spread.of(filter)};
            return new SpreadRows(dots, spreads, serpentine, recipe.edge());
        }
        return switch (filter) {
            case FLOYD_STEINBERG -> new FloydSteinbergRows(dots, serpentine);
            case JARVIS_JUDICE_NINKE, STUCKI -> new WideSpreadRows(dots, filter, serpentine);
            case OSTROMOUKHOV -> new TonalSpreadRows(dots, TonalSpreads.byLevel(), serpentine);
        };
    }
}
