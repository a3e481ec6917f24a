package saddlebar.stencil.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Units;
import saddlebar.stencil.ActualScreen;
import saddlebar.stencil.Screener;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.tone.ToneTable;

/** What all methods of scattered dots have in common. */
final class ScatteredDots {
    private ScatteredDots() {
    }

    /** @param levels tones that the method tells apart */
    static ActualScreen actual(ScreeningRecipe recipe, int levels) {
        return new ActualScreen(OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.of(Units.mmOfPx(recipe.dotPx(), recipe.dpi())), levels);
    }

    static List<Problem> advice(ScreeningRecipe recipe) {
        List<Problem> advice = new ArrayList<>();
        double dotMm = Units.mmOfPx(recipe.dotPx(), recipe.dpi());
        if (Math.abs(dotMm / recipe.dotMm() - 1) > 0.1) {
            advice.add(Problem.of("dot-moved", Severity.WARNING, "dot-mm", String.format(Locale.ROOT,
                    "On this device grid dots come out as %.3f mm, not %.3f; take a multiple of %.4f mm, or more dpi.", dotMm, recipe.dotMm(),
                    Units.mmOfPx(1, recipe.dpi()))));
        }
        return advice;
    }

    static int acrossPicture(ScreeningRecipe recipe, int widthPx) {
        return (widthPx + recipe.dotPx() - 1) / recipe.dotPx();
    }

    static Screener screener(ScreeningRecipe recipe, ToneTable tone, int widthPx, RowDecider decider) {
        return new DotScreener(tone, recipe.dotPx(), widthPx, decider);
    }
}
