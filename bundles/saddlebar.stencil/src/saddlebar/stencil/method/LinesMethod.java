package saddlebar.stencil.method;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

import org.osgi.service.component.annotations.Component;

import saddlebar.model.art.GrayBands;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.problem.Severity;
import saddlebar.stencil.ActualScreen;
import saddlebar.stencil.LineCourse;
import saddlebar.stencil.Screener;
import saddlebar.stencil.ScreeningMethod;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.tone.ToneTable;

/**
 * Lines that swell with the tone: straight, in rings, in waves, or along the contours of the artwork. A phase goes up by 1 from line to line; a px at
 * phase p is painted where coverage is above |2 frac(p) - 1|. So the share of a line's distance that is painted is the coverage, however near or
 * far apart lines run. Our own.
 */
@Component(service = ScreeningMethod.class)
public final class LinesMethod implements ScreeningMethod {
    private static final int LEVELS = 256;
    private static final double SOFT_LINE_PX = 8;

    private final LinePhase seen;

    public LinesMethod() {
        this(null);
    }

    private LinesMethod(LinePhase seen) {
        this.seen = seen;
    }

    @Override
    public String key() {
        return "lines";
    }

    @Override
    public ActualScreen actual(ScreeningRecipe recipe) {
        boolean straight = recipe.lineCourse() instanceof LineCourse.Straight;
        return new ActualScreen(OptionalDouble.of(recipe.lpi()), straight ? OptionalDouble.of(recipe.angleDeg()) : OptionalDouble.empty(),
                OptionalDouble.empty(), LEVELS);
    }

    @Override
    public List<Problem> advice(ScreeningRecipe recipe) {
        double linePx = recipe.dpi() / recipe.lpi();
        if (linePx >= SOFT_LINE_PX) {
            return List.of();
        }
        return List.of(Problem.of("few-tones", Severity.WARNING, "lpi", String.format(Locale.ROOT,
                "Lines %.1f px apart show the steps of the device; take a ruling of %.0f or less.", linePx, Math.floor(recipe.dpi() / SOFT_LINE_PX))));
    }

    @Override
    public boolean looksAhead(ScreeningRecipe recipe) {
        return recipe.lineCourse() instanceof LineCourse.Artwork;
    }

    @Override
    public ScreeningMethod having(GrayBands overview, double overviewDpi, ScreeningRecipe recipe) throws IOException {
        return new LinesMethod(ContourPhase.of(overview, overviewDpi, recipe));
    }

    @Override
    public Screener start(ScreeningRecipe recipe, ToneTable tone, int widthPx, int heightPx) {
        if (looksAhead(recipe) && seen == null) {
            throw new Refusal("course", "lines along the artwork need a look at it first, which is not made here", "take straight, rings or waves");
        }
        return new LineScreener(looksAhead(recipe) ? seen : LinePhase.of(recipe, widthPx, heightPx), recipe.lpi() / recipe.dpi(), tone, widthPx);
    }
}
