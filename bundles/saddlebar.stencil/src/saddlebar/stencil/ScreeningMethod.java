package saddlebar.stencil;

import java.io.IOException;
import java.util.List;

import saddlebar.model.art.GrayBands;
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

    /** Whether the method must see the whole picture, coarsely, before it can begin: then {@link #having} comes before {@link #start}. */
    default boolean looksAhead(ScreeningRecipe recipe) {
        return false;
    }

    /**
     * This method for one picture that it has looked over. Only for recipes with which it {@link #looksAhead}.
     *
     * @param overview    the whole picture at {@code overviewDpi}, about 50; read to its end and closed
     * @param overviewDpi px an inch of the overview
     */
    default ScreeningMethod having(GrayBands overview, double overviewDpi, ScreeningRecipe recipe) throws IOException {
        overview.close();
        return this;
    }

    /**
     * As {@link #start(ScreeningRecipe, ToneTable, int, int)}, on up to so many threads where the method can; the bits do not depend on it.
     *
     * @param threads 1 or more
     */
    default Screener start(ScreeningRecipe recipe, ToneTable tone, int widthPx, int heightPx, int threads) {
        return start(recipe, tone, widthPx, heightPx);
    }

    /**
     * Begins a picture; cells and dots start at its top left.
     *
     * @param recipe its {@code method} need not be this key
     * @param tone   what each code value of the gray bands is to cover
     */
    Screener start(ScreeningRecipe recipe, ToneTable tone, int widthPx, int heightPx);
}
