package saddlebar.nesting.outline;

import java.util.Comparator;
import java.util.stream.IntStream;

import saddlebar.nesting.search.Budget;

/** The kinds of sheets at hand, as many of each as needed, and which to take. */
final class SheetKinds {
    private static final double SLACK = 1e-7;
    private final ShapeBook book;
    private final int[][] shapesOf;
    private final double[] widths;
    private final double[] heights;
    private final int[] smallFirst;

    SheetKinds(ShapeBook book, int[][] shapesOf, double[] widths, double[] heights) {
        this.book = book;
        this.shapesOf = shapesOf;
        this.widths = widths;
        this.heights = heights;
        smallFirst = IntStream.range(0, widths.length).boxed().sorted(Comparator.comparingDouble(this::area)).mapToInt(k -> k).toArray();
    }

    /** The largest kind that takes the entry. */
    boolean openFor(int entry, Bays bays) {
        for (int k = smallFirst.length - 1; k >= 0; k--) {
            int kind = smallFirst[k];
            for (int s : shapesOf[entry]) {
                if (book.shape(s).width() <= widths[kind] + SLACK && book.shape(s).height() <= heights[kind] + SLACK) {
                    bays.open(kind, widths[kind], heights[kind]);
                    return true;
                }
            }
        }
        throw new IllegalStateException("entry " + entry + " fits no sheet, which the checks should have seen");
    }

    /** No layout can have fewer sheets. */
    int fewest(double area) {
        return (int) Math.max(1, Math.ceil(area / area(smallFirst[smallFirst.length - 1]) - 1e-9));
    }

    /** The last sheet cannot be shorter, all others being full. */
    double leastLast(double area, Bays bays) {
        double left = area;
        for (int b = 0; b < bays.last(); b++) {
            left -= bays.area(b);
        }
        double narrowest = Double.POSITIVE_INFINITY;
        for (int s = 0; s < book.size(); s++) {
            narrowest = Math.min(narrowest, book.shape(s).width());
        }
        return Math.max(narrowest, left / bays.height(bays.last()));
    }

    /** Puts what lies on a sheet onto a smaller kind, where a first layout has room for it. */
    void takeSmaller(Board board, Bays bays, Budget budget) {
        for (int b = 0; b < bays.count(); b++) {
            int bay = b;
            int[] there = IntStream.range(0, board.n).filter(i -> bays.of((board.left(i) + board.right(i)) / 2) == bay).toArray();
            for (int kind : smallFirst) {
                if (area(kind) < bays.area(bay) * (1 - 1e-9) && onto(kind, there, board, bays, bay, budget)) {
                    break;
                }
            }
        }
    }

    private boolean onto(int kind, int[] there, Board board, Bays bays, int bay, Budget budget) {
        int[][] shapes = new int[there.length][];
        for (int k = 0; k < there.length; k++) {
            shapes[k] = shapesOf[there[k]];
        }
        Board some = new Board(book, there.length);
        Bays one = new Bays(0);
        one.open(kind, widths[kind], heights[kind]);
        if (widths[kind] > bays.width(bay) + SLACK || !new FirstLayout(some, one, shapes, entry -> false, budget).run()) {
            return false;
        }
        bays.replace(bay, kind, widths[kind], heights[kind]);
        for (int k = 0; k < there.length; k++) {
            board.put(there[k], some.shape[k], some.x[k] + bays.from(bay), some.y[k]);
        }
        return true;
    }

    private double area(int kind) {
        return widths[kind] * heights[kind];
    }
}
