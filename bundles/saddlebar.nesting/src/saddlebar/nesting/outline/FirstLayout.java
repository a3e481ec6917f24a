package saddlebar.nesting.outline;

import java.util.Arrays;
import java.util.Comparator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

import saddlebar.nesting.search.Budget;

/**
 * A first layout without overlaps: largest shapes first, each as far to the left as a scan finds room, then slid left and up until it touches.
 * Copies of one shape begin their scan where the last copy found room, since nothing is ever taken away.
 */
final class FirstLayout {
    private static final double AWAY = -1e9; // where what is not yet placed waits
    private static final int COLUMNS_A_SHAPE = 8;
    private static final int ROWS_A_SHAPE = 8;
    private static final double FINEST_SLIDE = 1e-3;

    private final Board board;
    private final Bays bays;
    private final int[][] shapesOf;
    private final BayOpener opener;
    private final Budget budget;
    private final double[][] scanned; // per shape, per bay: no room before this x

    private int foundShape;
    private double foundX;
    private double foundY;

    /** Opens one more bay for an entry that has no room in those that are open. */
    interface BayOpener {
        /** @return false to give up */
        boolean openFor(int entry);

        /** Whether the others are placed all the same when there is no bay for an entry. */
        default boolean goesOnWithout(int entry) {
            return false;
        }
    }

    FirstLayout(Board board, Bays bays, int[][] shapesOf, BayOpener opener, Budget budget) {
        this.board = board;
        this.bays = bays;
        this.shapesOf = shapesOf;
        this.opener = opener;
        this.budget = budget;
        scanned = new double[board.book.size()][0];
    }

    /** Is all placed? */
    boolean run() {
        return run(board.n, this::size);
    }

    /**
     * @param movable the first entries, which are placed; the others stay where they lie
     * @param rank    what comes first: the highest
     * @return whether all are placed; of those that are not, {@link #isPlaced} says so if the opener gives none up for lost
     */
    boolean run(int movable, IntToDoubleFunction rank) {
        for (int i = 0; i < movable; i++) {
            board.put(i, shapesOf[i][0], AWAY, 0);
        }
        int[] order = IntStream.range(0, movable).boxed().sorted(Comparator.comparingDouble(i -> -rank.applyAsDouble(i))).mapToInt(i -> i).toArray();
        boolean all = true;
        for (int i : order) {
            budget.checkpoint();
            int bay = 0;
            while (bay == bays.count() || !findRoom(i, bay)) {
                if (bay < bays.count()) {
                    bay++;
                } else if (!opener.openFor(i)) {
                    if (!opener.goesOnWithout(i)) {
                        return false;
                    }
                    break;
                }
            }
            if (bay < bays.count()) {
                board.put(i, foundShape, foundX, foundY);
            } else {
                all = false;
            }
        }
        return all;
    }

    /** Has the entry found room? */
    boolean isPlaced(int i) {
        return board.x[i] > AWAY / 2;
    }

    double size(int i) {
        Shape s = board.book.shape(shapesOf[i][0]);
        return s.width() * s.height();
    }

    /** The place whose right border is furthest to the left, over all angles. */
    private boolean findRoom(int i, int bay) {
        double best = Double.POSITIVE_INFINITY;
        for (int s : shapesOf[i]) {
            Shape as = board.book.shape(s);
            if (bays.takes(as, bay) && scan(i, as, bay, best)) {
                best = Math.min(best, foundX + as.maxX);
                keptShape = s;
                keptX = foundX;
                keptY = foundY;
            }
        }
        foundShape = keptShape;
        foundX = keptX;
        foundY = keptY;
        return best < Double.POSITIVE_INFINITY;
    }

    private int keptShape;
    private double keptX;
    private double keptY;

    /** Leaves a place in {@link #foundX}, {@link #foundY} if its right border is left of {@code best}. */
    private boolean scan(int i, Shape as, int bay, double best) {
        if (scanned[as.number].length <= bay) {
            int had = scanned[as.number].length;
            scanned[as.number] = Arrays.copyOf(scanned[as.number], bay + 1);
            Arrays.fill(scanned[as.number], had, bay + 1, Double.NEGATIVE_INFINITY);
        }
        double step = as.width() / COLUMNS_A_SHAPE;
        double leastY = bays.leastY(as);
        double mostY = bays.mostY(as, bay);
        int rows = (int) Math.ceil((mostY - leastY) / as.height() * ROWS_A_SHAPE);
        double mostX = bays.mostX(as, bay);
        double from = Math.max(bays.leastX(as, bay), scanned[as.number][bay]);
        boolean any = false;
        for (double px = from;; px = Math.min(px + step, mostX)) {
            if (px - step + as.maxX >= best) {
                return any;
            }
            for (int row = 0; row <= rows; row++) {
                double py = rows == 0 ? leastY : leastY + (mostY - leastY) * row / rows;
                if (isFree(i, as.number, px, py)) {
                    slide(i, as, bay, px, py);
                    if (slidX + as.maxX < best) {
                        best = slidX + as.maxX;
                        foundX = slidX;
                        foundY = slidY;
                        any = true;
                    }
                }
            }
            scanned[as.number][bay] = px;
            if (any || px >= mostX) {
                return any;
            }
        }
    }

    private double slidX;
    private double slidY;

    private void slide(int i, Shape as, int bay, double atX, double atY) {
        slidX = atX;
        slidY = atY;
        double leastX = bays.leastX(as, bay);
        double leastY = bays.leastY(as);
        double least = FINEST_SLIDE * Math.min(as.width(), as.height());
        for (int round = 0; round < 3; round++) {
            double wasX = slidX;
            double wasY = slidY;
            for (double step = as.width() / 4; step > least;) {
                double to = Math.max(leastX, slidX - step);
                if (to < slidX && isFree(i, as.number, to, slidY)) {
                    slidX = to;
                } else {
                    step /= 2;
                }
            }
            for (double step = as.height() / 4; step > least;) {
                double to = Math.max(leastY, slidY - step);
                if (to < slidY && isFree(i, as.number, slidX, to)) {
                    slidY = to;
                } else {
                    step /= 2;
                }
            }
            if (wasX - slidX < least && wasY - slidY < least) {
                return;
            }
        }
    }

    private boolean isFree(int i, int s, double px, double py) {
        return board.isFree(i, s, px, py);
    }
}
