package saddlebar.cartoon;

import java.util.List;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.work.Work;

/**
 * Makes pieces of a cutline, for whoever has lines in mm and wants glass: the front door of this package.
 *
 * <p>Ends a hair short are carried on, all is noded on a grid of 1 um, closed to faces, proved by Euler's count; each face gets a number,
 * its glass, its label, its neighbours, and is looked at for what a cutter cannot do. Points move by at most 0.7 of the grid, all else is
 * as exact as the flattening of the curves; see docs/algorithms/cartoon.md for methods, sources and limits. Cost: close to n log n in the
 * number of points.
 *
 * <p>Pieces are looked at on all cores: on those of the ForkJoinPool whose task calls this, else of the common pool. The result is the
 * same on one core and on many. Noding what lies near other lines is one call of the library, which does not ask the work whether to stop.
 */
public final class CartoonMaker {
    private CartoonMaker() {
    }

    /**
     * A first drawing: numbers in the order that the settings say.
     *
     * @param cutline lines of the cutline layer, in mm, any order
     * @param work    told {@value CartoonRun#UNITS} units in all
     * @throws saddlebar.model.problem.Refusal if there is no line, nothing closes, or coordinates cannot be a window's
     */
    public static Cartoon make(List<DrawnLine> cutline, CartoonSettings settings, Work work) {
        return make(cutline, settings, List.of(), 1, work);
    }

    /**
     * A revision: a piece that still covers more than half of an old one keeps its number; split, merged and vanished ones are notes.
     *
     * @param before    pieces of the last revision, empty if there was none
     * @param firstFree least number for new pieces, above all numbers ever used in this window
     */
    public static Cartoon make(List<DrawnLine> cutline, CartoonSettings settings, List<NumberedFace> before, int firstFree, Work work) {
        return new CartoonRun(cutline, settings, work).cartoon(before, firstFree);
    }
}
