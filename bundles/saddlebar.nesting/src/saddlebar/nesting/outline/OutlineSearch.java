package saddlebar.nesting.outline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;

import saddlebar.nesting.search.Budget;
import saddlebar.nesting.search.Chance;

/**
 * Shortens a strip: from a first layout on, the end is moved a little to the left, what then overlaps is driven apart, and so on. When that
 * fails, one of the best failed layouts is taken, two of its large shapes change places, and it goes on from there. The last fifth of the
 * effort only presses the best layout together in ever smaller steps.
 *
 * <p>Source: exploration and compression, the pool of failed layouts and the exchange of large shapes: Gardeyn et al. (2025), see
 * {@link PlaceSearch}; shrinking strip as a sequence of feasibility problems: Gomes, A. M., Oliveira, J. F. (2006). Solving irregular strip
 * packing problems by hybridising simulated annealing and linear programming. EJOR 171(3), 811-829; Elkeran, A. (2013). A new approach for
 * sheet nesting problem using guided cuckoo search and pairwise clustering. EJOR 231(3), 757-769.
 */
final class OutlineSearch {
    private static final double EXPLORE = 0.8;
    private static final int EXPLORE_PATIENCE = 100;
    private static final int EXPLORE_STRIKES = 3;
    private static final int PRESS_PATIENCE = 50;
    private static final int PRESS_STRIKES = 3;
    private static final double LARGEST_CUT = 0.02;
    private static final double SMALLEST_CUT = 0.001;
    private static final double FIRST_PRESS = 0.0005;
    private static final double LAST_PRESS = 0.00001;
    private static final double FEWER = 0.5;
    private static final int POOL = 20;
    private static final double SLACK = 1e-7;

    private final Board board;
    private final Bays bays;
    private final int[][] shapesOf;
    private final Budget budget;
    private final Consumer<Board> listener;
    private final Chance chance;
    private final Separation separation;
    private final int[] largeFirst;

    private Layout best;
    private double bestLength;

    OutlineSearch(Board board, Bays bays, int[][] shapesOf, long seed, Budget budget, Consumer<Board> listener) {
        this.board = board;
        this.bays = bays;
        this.shapesOf = shapesOf;
        this.budget = budget;
        this.listener = listener;
        chance = new Chance(seed);
        separation = new Separation(board, new PlaceSearch(board, bays, shapesOf, chance), chance, budget);
        largeFirst = IntStream.range(0, board.n).boxed().sorted(Comparator.comparingDouble(i -> -size(i))).mapToInt(i -> i).toArray();
    }

    /** Tries to do with fewer bays, the last being closed, for at most half of the effort. */
    void fewer(int fewest) {
        board.measure();
        keep();
        while (bays.count() > Math.max(1, fewest) && budget.spent() < FEWER) {
            int closed = bays.last();
            int kind = bays.kind(closed);
            double width = bays.width(closed);
            double height = bays.height(closed);
            bays.closeLast();
            if (!moveBefore(closed) || !apartBy(FEWER)) {
                bays.open(kind, width, height);
                best.restore(board);
                return;
            }
            keep();
        }
    }

    /** What lies beyond the last bay goes anywhere into the others; false if it fits none. */
    private boolean moveBefore(int closed) {
        double line = bays.to(closed - 1) + SLACK;
        for (int i = 0; i < board.n; i++) {
            if (board.right(i) > line && !putAnywhere(i)) {
                return false;
            }
        }
        board.measure();
        board.forgetWeights();
        return true;
    }

    private boolean putAnywhere(int i) {
        for (int attempt = 0; attempt < 100; attempt++) {
            Shape s = board.book.shape(shapesOf[i][chance.below(shapesOf[i].length)]);
            int bay = chance.below(bays.count());
            if (bays.takes(s, bay)) {
                board.put(i, s.number, chance.between(bays.leastX(s, bay), bays.mostX(s, bay)),
                        chance.between(bays.leastY(s), bays.mostY(s, bay)));
                return true;
            }
        }
        return false;
    }

    /** Shortens the last bay from the layout on the board, which must be free of overlaps. */
    void shorten(double leastLength) {
        board.measure();
        keep();
        explore(leastLength);
        press(leastLength);
        standUp();
    }

    /** What has room as drawn where it lies, middle upon middle, is not left turned. */
    private void standUp() {
        best.restore(board);
        bays.endLast(bestLength);
        boolean any = false;
        for (int i = 0; i < board.n; i++) {
            budget.checkpoint();
            Shape drawn = board.book.shape(shapesOf[i][0]); // angles ascend, and as drawn is 0
            Shape now = board.book.shape(board.shape[i]);
            double middleX = board.x[i] + (now.minX + now.maxX) / 2;
            int bay = bays.of(middleX);
            if (drawn.angleDeg != 0 || now.angleDeg == 0 || !bays.takes(drawn, bay)) {
                continue;
            }
            double atX = Math.max(bays.leastX(drawn, bay), Math.min(bays.mostX(drawn, bay), middleX - (drawn.minX + drawn.maxX) / 2));
            double atY = Math.max(bays.leastY(drawn),
                    Math.min(bays.mostY(drawn, bay), board.y[i] + (now.minY + now.maxY - drawn.minY - drawn.maxY) / 2));
            if (board.isFree(i, drawn.number, atX, atY)) {
                board.move(i, drawn.number, atX, atY);
                any = true;
            }
        }
        if (any) {
            keep();
        }
    }

    private void explore(double leastLength) {
        double start = budget.spent();
        double end = start + (1 - start) * EXPLORE;
        double cut = LARGEST_CUT;
        while (budget.spent() < end && bestLength > leastLength * (1 + 1e-9)) {
            best.restore(board);
            if (!cutTo(Math.max(leastLength, bestLength * (1 - cut)))) {
                if (cut <= SMALLEST_CUT) {
                    return;
                }
                cut = Math.max(SMALLEST_CUT, cut / 2);
                continue;
            }
            board.forgetWeights();
            if (separation.run(EXPLORE_PATIENCE, EXPLORE_STRIKES)) {
                keep();
                cut = Math.min(LARGEST_CUT, cut * 1.2);
            } else if (cut > SMALLEST_CUT) {
                cut = Math.max(SMALLEST_CUT, cut / 2); // asked too much: less first
            } else if (exchangeUntilApart(end)) {
                keep();
            }
        }
    }

    private boolean apartBy(double end) {
        return separation.run(EXPLORE_PATIENCE, EXPLORE_STRIKES) || exchangeUntilApart(end);
    }

    /** From one of the best failed layouts on, again and again, until nothing overlaps or the effort is spent. */
    private boolean exchangeUntilApart(double end) {
        List<Layout> failed = new ArrayList<>();
        do {
            if (budget.spent() >= end) {
                return false;
            }
            failed.add(separation.best());
            failed.sort(Comparator.comparingDouble(l -> l.loss));
            if (failed.size() > POOL) {
                failed.remove(failed.size() - 1);
            }
            double draw = chance.share();
            failed.get((int) (draw * draw * failed.size())).restore(board);
            exchangeTwoLarge();
            board.forgetWeights();
        } while (!separation.run(EXPLORE_PATIENCE, EXPLORE_STRIKES));
        return true;
    }

    private void press(double leastLength) {
        double start = budget.spent();
        while (budget.spent() < 1 && bestLength > leastLength * (1 + 1e-9)) {
            double along = Math.min(1, (budget.spent() - start) / Math.max(1e-9, 1 - start));
            double cut = FIRST_PRESS * StrictMath.pow(LAST_PRESS / FIRST_PRESS, along);
            best.restore(board);
            if (!cutTo(Math.max(leastLength, bestLength * (1 - cut)))) {
                return;
            }
            board.forgetWeights();
            if (separation.run(PRESS_PATIENCE, PRESS_STRIKES)) {
                keep();
            }
        }
    }

    private void keep() {
        while (bays.count() > 1 && isEmpty(bays.last())) {
            bays.closeLast();
        }
        best = new Layout(board, 0);
        bestLength = length();
        listener.accept(board);
    }

    private boolean isEmpty(int bay) {
        for (int i = 0; i < board.n; i++) {
            if (board.right(i) > bays.from(bay)) {
                return false;
            }
        }
        return true;
    }

    private double length() {
        double end = bays.from(bays.last());
        for (int i = 0; i < board.n; i++) {
            end = Math.max(end, board.right(i));
        }
        return end - bays.from(bays.last());
    }

    /**
     * Moves the end of the last bay; what lies right of a line drawn by lot moves left with it, so that the overlaps arise anywhere. What is
     * then wider than the bay goes elsewhere; false if it cannot.
     */
    private boolean cutTo(double length) {
        int last = bays.last();
        double off = bestLength - length;
        double line = chance.between(bays.from(last), bays.from(last) + length);
        bays.endLast(length);
        for (int i = 0; i < board.n; i++) {
            if (board.left(i) >= bays.from(last) - SLACK) {
                Shape s = board.book.shape(board.shape[i]);
                if (bays.takes(s, last)) {
                    double at = (board.left(i) + board.right(i)) / 2 > line ? board.x[i] - off : board.x[i];
                    board.put(i, board.shape[i], Math.max(bays.leastX(s, last), Math.min(bays.mostX(s, last), at)), board.y[i]);
                } else if (!putAnywhere(i)) {
                    return false;
                }
            }
        }
        board.measure();
        return true;
    }

    private void exchangeTwoLarge() {
        int most = Math.max(2, board.n / 4);
        for (int attempt = 0; attempt < 50; attempt++) {
            int a = largeFirst[chance.below(Math.min(board.n, most))];
            int b = largeFirst[chance.below(Math.min(board.n, most))];
            if (a != b && shapesOf[a] != shapesOf[b]) {
                double ax = board.x[a] + middleX(a);
                double ay = board.y[a] + middleY(a);
                double bx = board.x[b] + middleX(b);
                double by = board.y[b] + middleY(b);
                if (putMiddle(a, bx, by)) {
                    putMiddle(b, ax, ay);
                    board.measure();
                    return;
                }
            }
        }
    }

    private double middleX(int i) {
        Shape s = board.book.shape(board.shape[i]);
        return (s.minX + s.maxX) / 2;
    }

    private double middleY(int i) {
        Shape s = board.book.shape(board.shape[i]);
        return (s.minY + s.maxY) / 2;
    }

    private boolean putMiddle(int i, double atX, double atY) {
        Shape s = board.book.shape(board.shape[i]);
        int bay = bays.of(atX);
        if (!bays.takes(s, bay)) {
            return false;
        }
        double px = Math.max(bays.leastX(s, bay), Math.min(bays.mostX(s, bay), atX - middleX(i)));
        double py = Math.max(bays.leastY(s), Math.min(bays.mostY(s, bay), atY - middleY(i)));
        board.put(i, board.shape[i], px, py);
        return true;
    }

    private double size(int i) {
        Shape s = board.book.shape(shapesOf[i][0]);
        return s.width() * s.height();
    }
}
