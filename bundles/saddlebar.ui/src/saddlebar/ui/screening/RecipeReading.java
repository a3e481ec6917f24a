package saddlebar.ui.screening;

import java.util.Optional;
import java.util.OptionalDouble;

import saddlebar.model.commission.EndRule;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.Mesh;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.ScreenFrame;
import saddlebar.model.commission.StencilRecipe;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.ToneCalibration;
import saddlebar.model.commission.ToneMode;
import saddlebar.model.problem.Refusal;
import saddlebar.production.facts.CalibrationChoice;
import saddlebar.production.facts.RecipeReader;
import saddlebar.stencil.ScreeningMethod;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.process.StencilProcesses;
import saddlebar.stencil.tone.Calibration;
import saddlebar.stencil.tone.DrawnCurve;
import saddlebar.stencil.tone.EndLimits;
import saddlebar.stencil.tone.Stretch;

/** Reads a layer's recipe as the stencil crafts want it, the same way as making does. */
public final class RecipeReading {
    private RecipeReading() {
    }

    static boolean isKnown(String method) {
        return ScreeningMethods.ownMethods().keys().contains(method);
    }

    /** @throws Refusal if there is none of that name */
    static ScreeningMethod method(StencilRecipe recipe) {
        return ScreeningMethods.ownMethods().method(recipe.getMethod());
    }

    /** @throws Refusal if a value is out of its range */
    static ScreeningRecipe screening(StencilRecipe recipe) {
        return RecipeReader.screening(recipe);
    }

    static ToneWay tone(StencilRecipe recipe) {
        OptionalDouble to = recipe.getToneTo() == null ? OptionalDouble.empty() : OptionalDouble.of(recipe.getToneTo());
        return new ToneWay(recipe.getToneMode() == ToneMode.LINEAR, recipe.getToneFrom(), to, DrawnCurve.parse(recipe.getCurve()), calibration(recipe),
                ends(recipe));
    }

    /** What the studio measured, if the recipe wants it and there is something. */
    static Optional<Calibration> calibration(StencilRecipe recipe) {
        return kept(recipe).map(found -> Calibration.of(CalibrationChoice.readings(found)));
    }

    /** The calibration in use, as the studio keeps it. */
    public static Optional<ToneCalibration> kept(StencilRecipe recipe) {
        return Optional.ofNullable(recipe.getLayer()).flatMap(layer -> {
            Optional<Studio> studio = Optional.ofNullable(layer.getPaint()).map(Paint::getStudio);
            return CalibrationChoice.of(layer, mesh(layer, studio), studio);
        });
    }

    /** As production takes it: the layer's own, else that of the largest frame. */
    private static Optional<Mesh> mesh(DesignLayer layer, Optional<Studio> studio) {
        return Optional.ofNullable(layer.getMesh()).or(() -> studio.flatMap(LayerScreen::largestFrame).map(ScreenFrame::getMesh));
    }

    private static EndLimits ends(StencilRecipe recipe) {
        if (!(recipe.getEndLow() >= 0 && recipe.getEndLow() < recipe.getEndHigh() && recipe.getEndHigh() <= 1)) {
            throw new Refusal("end limits", "the palest tone must be lighter than the darkest one, and both must lie within 0 to 100 %",
                    "take for instance 0 % and 100 %, which limit nothing");
        }
        EndLimits.Soft soft = recipe.getEndRule() == EndRule.CUT
                ? EndLimits.Soft.CUT
                : recipe.getEndRule() == EndRule.LIFT ? EndLimits.Soft.LIFTED : EndLimits.Soft.NEAREST;
        return new EndLimits(recipe.getEndLow(), recipe.getEndHigh(), soft);
    }

    /** @throws Refusal if something in it cannot be made as it stands */
    static void require(StencilRecipe recipe) {
        method(recipe).actual(screening(recipe));
        tone(recipe);
        new Stretch(recipe.getToneFrom(), recipe.getToneTo() == null ? 1 : recipe.getToneTo());
        StencilProcesses.ownProcesses().process(recipe.getProcessKey());
        requireTrap(recipe.getTrapMm());
        requireFine("opening", recipe.getOpenMm());
        requireFine("bridge", recipe.getBridgeMm());
    }

    private static void requireTrap(double mm) {
        if (!(mm >= 0 && mm <= 3)) {
            throw new Refusal("trap", mm + " mm is out of range", "take 0 to 3 mm; 0 asks for none");
        }
    }

    private static void requireFine(String what, Double mm) {
        if (mm != null && !(mm > 0 && mm <= 10)) {
            throw new Refusal(what, mm + " mm is out of range", "take more than 0 to 10 mm, or leave it empty: then the mesh decides");
        }
    }
}
