package saddlebar.nesting.outline;

import java.util.List;
import java.util.function.Consumer;

import saddlebar.nesting.search.Budget;

/** What is to be placed, as the search sees it: a board entry for each copy, the shapes it may take, the areas it may lie in. */
public final class OutlineJob {
    static final double MARGIN = 2e-6; // shapes keep this much more than the gap, for the rounding to the grid of the check

    /**
     * Where the copies lie.
     *
     * @param bay      the sheet of each
     * @param x        of its (0,0), from the sheet's left
     * @param y        from its top
     * @param angleDeg turned by
     * @param kinds    kind of each sheet
     * @param length   how far the last sheet is used
     */
    public record Found(int[] bay, double[] x, double[] y, double[] angleDeg, int[] kinds, double length) {
    }

    private final ShapeBook book;
    private final int[][] shapesOf;

    /**
     * @param items one entry an item
     * @param gapMm least distance between two copies
     */
    public OutlineJob(List<TurnedOutline> items, double gapMm) {
        book = new ShapeBook(gapMm + MARGIN);
        int copies = items.stream().mapToInt(TurnedOutline::copies).sum();
        shapesOf = new int[copies][];
        int k = 0;
        for (TurnedOutline item : items) {
            int[] shapes = book.add(item.angles(), item::guarded, item::exact);
            for (int copy = 0; copy < item.copies(); copy++) {
                shapesOf[k++] = shapes;
            }
        }
        book.close();
    }

    /** Searches for the shortest strip. */
    public void strip(double height, double leastLength, Budget budget, Consumer<Found> listener) {
        Board board = new Board(book, shapesOf.length);
        Bays bays = new Bays(largest() + 1);
        double roomy = 0;
        for (int[] shapes : shapesOf) {
            roomy += book.shape(shapes[0]).width() + book.gap();
        }
        bays.open(0, roomy + largest(), height);
        new FirstLayout(board, bays, shapesOf, entry -> {
            throw new IllegalStateException("a strip that is long enough for all has no room for entry " + entry);
        }, budget).run();
        new OutlineSearch(board, bays, shapesOf, 1, budget, at -> listener.accept(found(at, bays))).shorten(leastLength);
    }

    private Found found(Board board, Bays bays) {
        int n = board.n;
        Found found = new Found(new int[n], new double[n], new double[n], new double[n], new int[bays.count()],
                bays.to(bays.count() - 1) - bays.from(bays.count() - 1));
        for (int i = 0; i < n; i++) {
            int bay = bays.of((board.left(i) + board.right(i)) / 2);
            found.bay[i] = bay;
            found.x[i] = board.x[i] - bays.from(bay);
            found.y[i] = board.y[i];
            found.angleDeg[i] = book.shape(board.shape[i]).angleDeg;
        }
        for (int b = 0; b < bays.count(); b++) {
            found.kinds[b] = bays.kind(b);
        }
        return found;
    }

    private double largest() {
        double most = 0;
        for (int s = 0; s < book.size(); s++) {
            most = Math.max(most, book.shape(s).width());
        }
        return most + book.gap();
    }
}
