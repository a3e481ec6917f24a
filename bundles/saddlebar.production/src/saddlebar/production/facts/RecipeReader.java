package saddlebar.production.facts;

import java.util.List;
import java.util.Optional;

import saddlebar.model.commission.MendKind;
import saddlebar.model.commission.StencilRecipe;
import saddlebar.model.problem.PlaceMm;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.limits.PictureMending;

/** What a recipe of the model asks of the screening. */
public final class RecipeReader {
    private RecipeReader() {
    }

    /** @throws saddlebar.model.problem.Refusal if a value is out of its range */
    public static ScreeningRecipe screening(StencilRecipe recipe) {
        ScreeningRecipe usual = ScreeningRecipe.withDefaults();
        return usual.withMethod(recipe.getMethod()).withDpiAndLpi(recipe.getDpi(), recipe.getLpi()).withAngleDeg(recipe.getAngleDeg())
                .withDot(orElse(recipe.getDot(), usual.dot())).withDotMm(recipe.getDotMm()).withFilter(orElse(recipe.getFilter(), usual.filter()))
                .withCourse(orElse(recipe.getCourse(), usual.course())).withNoiseSide(recipe.getNoiseSide()).withClump(recipe.getClump())
                .withSupercell(recipe.getSupercell());
    }

    /** The layer of the artwork whose drawing leads the lines, if it is another than the recipe's own. */
    public static Optional<String> courseLayer(StencilRecipe recipe) {
        return Optional.ofNullable(recipe.getCourseLayer()).filter(layer -> !layer.isBlank());
    }

    /** The places that somebody decided to widen, on the panel's page. */
    public static List<PictureMending.Wanted> mends(StencilRecipe recipe) {
        return recipe.getMends().stream()
                .map(mend -> new PictureMending.Wanted(mend.getKind() == MendKind.THICKEN, new PlaceMm(mend.getXMm(), mend.getYMm()), mend.getWidthMm()))
                .toList();
    }

    private static String orElse(String text, String other) {
        return text == null || text.isBlank() ? other : text;
    }
}
