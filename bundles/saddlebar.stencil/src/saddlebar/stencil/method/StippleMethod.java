package saddlebar.stencil.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicReference;

import org.osgi.service.component.annotations.Component;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Units;
import saddlebar.stencil.ActualScreen;
import saddlebar.stencil.Screener;
import saddlebar.stencil.ScreeningMethod;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.tone.ToneTable;

/**
 * Round dots at scattered places, as a hand sets them: in light tones more and more dots of the recipe's {@code dotMm}, then all grow until only round
 * holes are left, the last of which close one after the other. The recipe's {@code lpi} is their mean number along an inch. See {@link StippleTile}.
 */
@Component(service = ScreeningMethod.class)
public final class StippleMethod implements ScreeningMethod {
    private static final double SOFT_CELL_PX = 8;

    /** The last tile and the last spots, kept since they take a while to make; values that depend on nothing but the recipe. */
    private final AtomicReference<StippleTile> last = new AtomicReference<>();
    private final AtomicReference<StippleTile.Spots> lastSpots = new AtomicReference<>();

    @Override
    public String key() {
        return "stipple";
    }

    @Override
    public ActualScreen actual(ScreeningRecipe recipe) {
        int side = StippleTile.sidePx(recipe);
        return new ActualScreen(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(Units.mmOfPx(recipe.dotPx(), recipe.dpi())), side * side);
    }

    @Override
    public List<Problem> advice(ScreeningRecipe recipe) {
        List<Problem> advice = new ArrayList<>(ScatteredDots.advice(recipe));
        if (recipe.dpi() / recipe.lpi() < SOFT_CELL_PX) {
            advice.add(Problem.of("few-tones", Severity.WARNING, "lpi", String.format(Locale.ROOT,
                    "Stipples %.1f px apart are too small to be round; take %.0f an inch or fewer.", recipe.dpi() / recipe.lpi(),
                    Math.floor(recipe.dpi() / SOFT_CELL_PX))));
        }
        return advice;
    }

    @Override
    public Screener start(ScreeningRecipe recipe, ToneTable tone, int widthPx, int heightPx) {
        double apartPx = recipe.dpi() / recipe.lpi();
        double mostPx = StippleTile.MOST_DOT * apartPx;
        if (recipe.dotPx() > mostPx) {
            throw new Refusal("dot-mm", String.format(Locale.ROOT, "smallest stipples of %s mm touch each other at %s an inch", Units.plain(recipe.dotMm()),
                    Units.plain(recipe.lpi())),
                    String.format(Locale.ROOT, "take %.3f mm or less, or fewer an inch",
                            Math.floor(1000 * Math.floor(mostPx) * Units.mmOfPx(1, recipe.dpi())) / 1000));
        }
        return new ThresholdScreener(tile(recipe).thresholds(tone), widthPx);
    }

    private StippleTile tile(ScreeningRecipe recipe) {
        StippleTile kept = last.get();
        if (kept != null && kept.isFor(recipe)) {
            return kept;
        }
        StippleTile.Spots spots = lastSpots.get();
        if (spots == null || !spots.areFor(recipe)) {
            spots = StippleTile.spots(recipe);
            lastSpots.set(spots);
        }
        StippleTile made = StippleTile.of(recipe, spots);
        last.set(made);
        return made;
    }
}
