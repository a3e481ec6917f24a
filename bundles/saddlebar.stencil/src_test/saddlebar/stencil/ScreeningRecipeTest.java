package saddlebar.stencil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import saddlebar.model.problem.Refusal;

class ScreeningRecipeTest {
    private final ScreeningRecipe recipe = ScreeningRecipe.withDefaults();

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, 71.9, 4801, 100_000, Double.NaN, Double.POSITIVE_INFINITY})
    void resolutionOutOfRange(double dpi) {
        refused("dpi", () -> recipe.withDpi(dpi));
    }

    @ParameterizedTest
    @ValueSource(doubles = {300.1, 1000, 0, -40, 2, Double.NaN, Double.NEGATIVE_INFINITY})
    void rulingOutOfRange(double lpi) {
        refused("lpi", () -> recipe.withLpi(lpi));
        refused("lpi", () -> recipe.withMethod("solid").withLpi(lpi)); // refused also where the method does not use it
    }

    @Test
    void aQuarterOfTheResolutionIsTheFinestRuling() {
        assertEquals(300, recipe.withLpi(300).lpi());
        assertEquals("lpi: a ruling of 301 at 1200 dpi leaves a cell fewer than 17 tones; ask for 300 or less, or for more dpi",
                assertThrows(Refusal.class, () -> recipe.withLpi(301)).getMessage());
    }

    @Test
    void otherValuesOutOfRange() {
        refused("angle", () -> recipe.withAngleDeg(361));
        refused("angle", () -> recipe.withAngleDeg(Double.NaN));
        refused("dot", () -> recipe.withDot("blob"));
        refused("dot", () -> recipe.withDot(null));
        refused("dot-mm", () -> recipe.withDotMm(0));
        refused("dot-mm", () -> recipe.withDotMm(6));
        refused("filter", () -> recipe.withFilter("sierra"));
        refused("method", () -> recipe.withMethod(" "));
        refused("supercell", () -> recipe.withSupercell(5));
        refused("clump", () -> recipe.withClump(2.5));
        refused("method", () -> ScreeningMethods.ownMethods().method("mezzotint"));
    }

    @Test
    void everyNameIsTaken() {
        for (String dot : SpotFunction.names()) {
            assertEquals(dot, recipe.withDot(dot).dot());
        }
        for (String filter : DiffusionFilter.names()) {
            assertEquals(filter, recipe.withFilter(filter).diffusionFilter().key());
        }
        assertEquals(4, DiffusionFilter.names().size());
    }

    /** 1/100 inch is 12 px at 1200 dpi and 6 at 600: closed form. */
    @Test
    void dotsInPx() {
        assertEquals(12, recipe.dotPx());
        assertEquals(6, recipe.withDpi(600).dotPx());
        assertEquals(1, recipe.withDotMm(0.005).dotPx());
    }

    @Test
    void coarseCellsAreAdvisedAgainst() {
        ScreeningMethod am = ScreeningMethods.ownMethods().method("am");
        assertTrue(am.advice(recipe).isEmpty());
        assertEquals("few-tones", am.advice(recipe.withLpi(160)).get(0).code()); // 7.5 px a cell
        assertTrue(am.advice(recipe.withLpi(150).withAngleDeg(0)).isEmpty()); // 8 px
    }

    private static void refused(String where, Executable making) {
        assertEquals(where, assertThrows(Refusal.class, making).where());
    }
}
