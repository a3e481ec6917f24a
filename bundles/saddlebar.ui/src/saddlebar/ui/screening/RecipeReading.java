package saddlebar.ui.screening;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import saddlebar.model.commission.EndRule;
import saddlebar.model.commission.StencilRecipe;
import saddlebar.model.commission.ToneMode;
import saddlebar.model.commission.TonePoint;
import saddlebar.model.problem.Refusal;
import saddlebar.stencil.ScreeningMethod;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.process.StencilProcesses;
import saddlebar.stencil.tone.Calibration;
import saddlebar.stencil.tone.EndLimits;
import saddlebar.stencil.tone.Stretch;
import saddlebar.stencil.tone.WedgeReading;

/** Reads a layer's recipe as the stencil crafts want it, the same way as making does. */
final class RecipeReading {
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
        ScreeningRecipe usual = ScreeningRecipe.withDefaults();
        return usual.withMethod(recipe.getMethod()).withDpiAndLpi(recipe.getDpi(), recipe.getLpi()).withAngleDeg(recipe.getAngleDeg())
                .withDot(orElse(recipe.getDot(), usual.dot())).withDotMm(recipe.getDotMm()).withFilter(orElse(recipe.getFilter(), usual.filter()));
    }

    static ToneWay tone(StencilRecipe recipe) {
        OptionalDouble to = recipe.getToneTo() == null ? OptionalDouble.empty() : OptionalDouble.of(recipe.getToneTo());
        return new ToneWay(recipe.getToneMode() == ToneMode.LINEAR, recipe.getToneFrom(), to, calibration(recipe), ends(recipe));
    }

    /** What the studio measured, if the recipe wants it and there is something. */
    static Optional<Calibration> calibration(StencilRecipe recipe) {
        if (recipe.getToneMode() != ToneMode.CALIBRATED || recipe.getCalibration() == null || recipe.getCalibration().getPoints().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Calibration.of(readings(recipe)));
    }

    static List<WedgeReading> readings(StencilRecipe recipe) {
        return recipe.getCalibration() == null
                ? List.of()
                : recipe.getCalibration().getPoints().stream().sorted(Comparator.comparingDouble(TonePoint::getNominal))
                        .map(point -> new WedgeReading(point.getNominal(), point.getEffective())).toList();
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
        requireFine("opening", recipe.getOpenMm());
        requireFine("bridge", recipe.getBridgeMm());
    }

    private static void requireFine(String what, Double mm) {
        if (mm != null && !(mm > 0 && mm <= 10)) {
            throw new Refusal(what, mm + " mm is out of range", "take more than 0 to 10 mm, or leave it empty: then the mesh decides");
        }
    }

    private static String orElse(String text, String other) {
        return text == null || text.isBlank() ? other : text;
    }
}
