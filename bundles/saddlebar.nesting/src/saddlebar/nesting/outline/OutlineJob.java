package saddlebar.nesting.outline;

import java.util.List;
import java.util.function.Consumer;

import saddlebar.nesting.search.Budget;
import saddlebar.nesting.search.Chance;

/** What is to be placed, as the search sees it: a board entry for each copy, the shapes it may take, the areas it may lie in. */
public final class OutlineJob {
    private static final long SEED = 1;
    /** The sheets are all there are; what has no room is left out. */
    private static final FirstLayout.BayOpener NO_MORE = new FirstLayout.BayOpener() {
        @Override
        public boolean openFor(int entry) {
            return false;
        }

        @Override
        public boolean goesOnWithout(int entry) {
            return true;
        }
    };
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
        Bays bays = new Bays(largest());
        double roomy = largest();
        for (int[] shapes : shapesOf) {
            roomy += book.shape(shapes[0]).width() + book.gap();
        }
        bays.open(0, roomy, height);
        new FirstLayout(board, bays, shapesOf, entry -> {
            throw new IllegalStateException("a strip that is long enough for all has no room for entry " + entry);
        }, budget).run();
        new OutlineSearch(board, bays, shapesOf, SEED, budget, at -> listener.accept(found(at, bays))).shorten(leastLength);
    }

    /**
     * Searches for the fewest sheets, then the shortest last.
     *
     * @param widths  of each kind of sheet
     * @param heights of each kind
     * @param area    of all copies
     */
    public void sheets(double[] widths, double[] heights, double area, Budget budget, Consumer<Found> listener) {
        Board board = new Board(book, shapesOf.length);
        Bays bays = new Bays(largest());
        SheetKinds kinds = new SheetKinds(book, shapesOf, widths, heights);
        new FirstLayout(board, bays, shapesOf, entry -> kinds.openFor(entry, bays), budget).run();
        if (board.canMeasure()) {
            OutlineSearch search = new OutlineSearch(board, bays, shapesOf, SEED, budget, at -> listener.accept(found(at, bays)));
            search.fewer(kinds.fewest(area));
            kinds.takeSmaller(board, bays, budget);
            search.shorten(kinds.leastLast(area, bays));
        } else {
            kinds.takeSmaller(board, bays, budget);
            listener.accept(found(board, bays));
        }
    }

    /**
     * Lays copies on given sheets around what lies there, one order after another: largest first, then orders drawn by lot around that.
     *
     * @param widths   of each sheet, in the order in which they are to be filled
     * @param heights  of each
     * @param fixedOn  sheet of each entry that stays where it is drawn; these are the last entries
     * @param listener told each layout; of a copy without room its {@code bay} is -1
     */
    public void given(double[] widths, double[] heights, int[] fixedOn, Budget budget, Consumer<Found> listener) {
        int movable = shapesOf.length - fixedOn.length;
        Chance chance = new Chance(SEED);
        boolean first = true;
        do {
            Board board = new Board(book, shapesOf.length);
            Bays bays = new Bays(largest());
            for (int b = 0; b < widths.length; b++) {
                bays.open(b, widths[b], heights[b]);
            }
            for (int k = 0; k < fixedOn.length; k++) {
                board.put(movable + k, shapesOf[movable + k][0], bays.from(fixedOn[k]), 0);
            }
            FirstLayout layout = new FirstLayout(board, bays, shapesOf, NO_MORE, budget);
            double[] rank = new double[movable];
            for (int i = 0; i < movable; i++) {
                rank[i] = layout.size(i) * (first ? 1 : chance.between(0.5, 1.5));
            }
            layout.run(movable, i -> rank[i]);
            Found found = found(board, bays, movable);
            for (int i = 0; i < movable; i++) {
                found.bay[i] = layout.isPlaced(i) ? found.bay[i] : -1;
            }
            listener.accept(found);
            first = false;
        } while (budget.step());
    }

    private Found found(Board board, Bays bays) {
        return found(board, bays, board.n);
    }

    private Found found(Board board, Bays bays, int n) {
        double end = 0;
        for (int i = 0; i < n; i++) {
            end = Math.max(end, board.right(i));
        }
        Found found = new Found(new int[n], new double[n], new double[n], new double[n], new int[bays.count()],
                end - bays.from(bays.last()));
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
