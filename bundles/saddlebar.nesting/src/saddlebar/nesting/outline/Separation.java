package saddlebar.nesting.outline;

import saddlebar.nesting.search.Budget;
import saddlebar.nesting.search.Chance;

/**
 * Drives overlapping shapes apart: pass by pass each shape that overlaps moves to its cheapest place, then the pairs that still overlap become
 * heavier, so that no pair stays stuck for long.
 *
 * <p>Sources: overlap minimisation by guided local search: Egeblad, J., Nielsen, B. K., Odgaard, A. (2007). Fast neighborhood search for two-
 * and three-dimensional nesting problems. EJOR 183(3), 1249-1266; Umetani, S., Yagiura, M., Imahori, S., Imamichi, T., Nonobe, K., Ibaraki, T.
 * (2009). Solving the irregular strip packing problem via guided local search for overlap minimization. Int. Trans. Oper. Res. 16(6), 661-683.
 * Weights that grow by the depth of the overlap, and strikes: Gardeyn et al. (2025), see {@link PlaceSearch}.
 */
final class Separation {
    private static final int EVERYWHERE = 30;
    private static final int AROUND = 15;
    private static final double ENOUGH_BETTER = 0.98;

    private final Board board;
    private final Chance chance;
    private final PlaceSearch places;
    private final Budget budget;
    private final int[] order;
    private Layout best;

    Separation(Board board, PlaceSearch places, Chance chance, Budget budget) {
        this.board = board;
        this.places = places;
        this.chance = chance;
        this.budget = budget;
        order = new int[board.n];
    }

    /**
     * Goes on until nothing overlaps, or so many passes in a row brought nothing, so many times; then the best is on the board.
     *
     * @return does nothing overlap?
     */
    boolean run(int patience, int strikes) {
        best = new Layout(board, board.loss());
        int struck = 0;
        while (struck < strikes && best.loss > 0) {
            double before = best.loss;
            int idle = 0;
            while (idle < patience && best.loss > 0) {
                if (!budget.step()) {
                    best.restore(board);
                    return false;
                }
                double loss = pass();
                if (loss < best.loss) {
                    idle = loss < best.loss * ENOUGH_BETTER ? 0 : idle + 1;
                    best = new Layout(board, loss);
                } else {
                    idle++;
                }
                board.learn();
            }
            struck = best.loss < before * ENOUGH_BETTER ? 0 : struck + 1;
            if (best.loss > 0) {
                best.restore(board);
            }
        }
        return best.loss == 0;
    }

    Layout best() {
        return best;
    }

    private double pass() {
        int count = 0;
        for (int i = 0; i < board.n; i++) {
            if (board.overlaps(i)) {
                order[count++] = i;
            }
        }
        for (int k = count - 1; k > 0; k--) {
            int j = chance.below(k + 1);
            int was = order[k];
            order[k] = order[j];
            order[j] = was;
        }
        for (int k = 0; k < count; k++) {
            int i = order[k];
            if (board.overlaps(i)) {
                budget.checkpoint();
                places.search(i, EVERYWHERE, AROUND);
                board.move(i, places.shape, places.x, places.y);
            }
        }
        return board.loss();
    }
}
