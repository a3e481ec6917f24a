package saddlebar.cartoon;

import java.util.List;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.work.Work;

/** Makes pieces of a cutline. */
public final class CartoonMaker {
    private CartoonMaker() {
    }

    /**
     * A first drawing: numbers in the order that the settings say.
     *
     * @param cutline lines of the cutline layer, in mm, any order
     * @param work    100 units in all
     * @throws saddlebar.model.problem.Refusal if there is no line, nothing closes, or coordinates cannot be a window's
     */
    public static Cartoon make(List<DrawnLine> cutline, CartoonSettings settings, Work work) {
        return make(cutline, settings, List.of(), 1, work);
    }

    /**
     * A revision: a piece that still covers more than half of an old one keeps its number; split and merged pieces are notes.
     *
     * @param before    pieces of the last revision, empty if there was none
     * @param firstFree least number for new pieces, above all numbers ever used in this window
     */
    public static Cartoon make(List<DrawnLine> cutline, CartoonSettings settings, List<NumberedFace> before, int firstFree, Work work) {
        throw new IllegalStateException("not built yet");
    }
}
