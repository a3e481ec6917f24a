package saddlebar.stencil.method;

import java.util.OptionalDouble;

import org.osgi.service.component.annotations.Component;

import saddlebar.stencil.ActualScreen;
import saddlebar.stencil.Screener;
import saddlebar.stencil.ScreeningMethod;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.tone.ToneTable;

/** Line art at full resolution: a px is painted where its coverage is one half or more. For trace lines and lettering. */
@Component(service = ScreeningMethod.class)
public final class SolidMethod implements ScreeningMethod {
    @Override
    public String key() {
        return "solid";
    }

    @Override
    public ActualScreen actual(ScreeningRecipe recipe) {
        return new ActualScreen(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), 2);
    }

    @Override
    public Screener start(ScreeningRecipe recipe, ToneTable tone, int widthPx, int heightPx) {
        // coverage >= 1/2 is coverage > the double just below it
        int paints = tone.codesAbove(Math.nextDown(0.5));
        return new ThresholdScreener(ThresholdTile.flat((byte) paints), widthPx);
    }
}
