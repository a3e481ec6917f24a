package saddlebar.materials.metal;

import java.util.Comparator;
import java.util.stream.IntStream;

/** The pattern worth most at given worths of the lengths: an unbounded knapsack by depth first search, densest length first. */
final class BestPattern {
    private final long[] lengths;
    private final double[] worth;
    private final int[] order;
    private final int[] now;
    private int[] best;
    private double bestWorth = -1;

    /** @param column counts in the caller's order of lengths */
    record Found(int[] column, double worth) {
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
        return new Found(search.best, Math.max(0, search.bestWorth));
    }

    private void from(int at, long left, double gained) {
        if (gained > bestWorth + 1e-12) {
            bestWorth = gained;
            best = now.clone();
        }
        if (at == order.length) {
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
