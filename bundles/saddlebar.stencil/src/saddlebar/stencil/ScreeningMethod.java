package saddlebar.stencil;

import java.util.List;

import saddlebar.model.problem.Problem;
import saddlebar.stencil.tone.ToneTable;

/**
 * Turns coverage into painted device px. Whoever wants another way adds a bundle with one such service; nothing is edited. Services have no
 * state: pictures may be started from several threads at once.
 */
public interface ScreeningMethod {
    /** Short word used in recipes, records and commands; never changed, since records outlive programs. */
    String key();

    /** What comes out on the device's grid. */
    ActualScreen actual(ScreeningRecipe recipe);

    /** What a person should know about this recipe before printing; empty if all is well. */
    default List<Problem> advice(ScreeningRecipe recipe) {
        return List.of();
    }

    /**
     * Begins a picture; cells and dots start at its top left.
     *
     * @param recipe its {@code method} need not be this key
     * @param tone   what each code value of the gray bands is to cover
     */
    Screener start(ScreeningRecipe recipe, ToneTable tone, int widthPx, int heightPx);
}
