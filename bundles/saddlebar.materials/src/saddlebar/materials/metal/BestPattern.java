package saddlebar.materials.metal;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The pattern worth most at given worths of the lengths: an unbounded knapsack by depth first search, densest length first. Where the search is cut short, the
 * ceiling is that of the relaxation.
 */
final class BestPattern {
    private static final long NODES = 2_000_000;

    private final long[] lengths;
    private final double[] worth;
    private final int[] order;
    private final int[] now;
    private int[] best;
    private double bestWorth = -1;
    private long nodes = NODES;

    /**
     * @param column  counts in the caller's order of lengths
     * @param worth   of the column
     * @param ceiling no column is worth more
     */
    record Found(int[] column, double worth, double ceiling) {
    }

    private BestPattern(long[] lengths, double[] worth) {
        this.lengths = lengths;
        this.worth = worth;
        this.order = IntStream.range(0, lengths.length).boxed().sorted(Comparator.comparingDouble((Integer i) -> -worth[i] / lengths[i]))
                .mapToInt(Integer::intValue).toArray();
        this.now = new int[lengths.length];
        this.best = now.clone();
    }

    static Found of(long capacity, long[] lengths, double[] worth) {
        BestPattern search = new BestPattern(lengths, worth);
        search.from(0, capacity, 0);
        double worthFound = Math.max(0, search.bestWorth);
        double relaxed = capacity * worth[search.order[0]] / lengths[search.order[0]];
        return new Found(search.best, worthFound, search.nodes > 0 ? worthFound : Math.max(worthFound, relaxed));
    }

    private void from(int at, long left, double gained) {
        if (gained > bestWorth + 1e-12) {
            bestWorth = gained;
            best = now.clone();
        }
        if (at == order.length || --nodes <= 0) {
            return;
        }
        int length = order[at];
        if (gained + left * worth[length] / lengths[length] <= bestWorth + 1e-12) {
            return;
        }
        for (int count = (int) (left / lengths[length]); count >= 0; count--) {
            now[length] = count;
            from(at + 1, left - count * lengths[length], gained + count * worth[length]);
        }
        now[length] = 0;
    }
}
