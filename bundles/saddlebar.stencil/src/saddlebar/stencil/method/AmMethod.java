package saddlebar.stencil.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

import org.osgi.service.component.annotations.Component;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.stencil.ActualScreen;
import saddlebar.stencil.Screener;
import saddlebar.stencil.ScreeningMethod;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.tone.ToneTable;

/** Clustered dots that grow on a grid: any ruling and angle, in exact cells ({@link CellGrid}), in the shape of a spot function. */
@Component(service = ScreeningMethod.class)
public final class AmMethod implements ScreeningMethod {
    /** Below so many px a side a cell has fewer than 65 tones and soft shading shows steps. Our own limit. */
    private static final double SOFT_CELL_PX = 8;

    @Override
    public String key() {
        return "am";
    }

    @Override
    public ActualScreen actual(ScreeningRecipe recipe) {
        CellGrid grid = CellGrid.of(recipe);
        return new ActualScreen(OptionalDouble.of(grid.lpi(recipe.dpi())), OptionalDouble.of(grid.angleDeg()), OptionalDouble.empty(),
                grid.area() + 1);
    }

    @Override
    public List<Problem> advice(ScreeningRecipe recipe) {
        List<Problem> advice = new ArrayList<>();
        double cellPx = recipe.dpi() / recipe.lpi();
        if (cellPx < SOFT_CELL_PX) {
            advice.add(Problem.of("few-tones", Severity.WARNING, "lpi", String.format(Locale.ROOT,
                    "Cells of %.1f px hold only %.0f tones, so soft shading will show steps; take a ruling of %.0f or less.", cellPx,
                    Math.floor(cellPx * cellPx) + 1, Math.floor(recipe.dpi() / SOFT_CELL_PX))));
        }
        CellGrid grid = CellGrid.of(recipe);
        double lpi = grid.lpi(recipe.dpi());
        if (Math.abs(lpi / recipe.lpi() - 1) > 0.01 || Math.abs(Math.IEEEremainder(grid.angleDeg() - recipe.angleDeg(), 360)) > 1) {
            advice.add(Problem.of("ruling-moved", Severity.NOTE, "lpi", String.format(Locale.ROOT,
                    "On this device grid the ruling comes out as %.2f lines an inch at %.2f degrees.", lpi, grid.angleDeg())));
        }
        return advice;
    }

    @Override
    public Screener start(ScreeningRecipe recipe, ToneTable tone, int widthPx, int heightPx) {
        return new ThresholdScreener(RankedTile.of(CellGrid.of(recipe), recipe.spot()).thresholds(tone), widthPx);
    }
}
