package saddlebar.materials.metal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import saddlebar.model.work.Work;

/**
 * Branch and bound over stock lengths, for few pieces: each stock takes the longest piece left and then, fullest first, whatever fits beside it; a branch is
 * left when the open lengths cannot hold what remains. Orders that were found hopeless are remembered. Stops at its node budget, and then says nothing.
 */
final class StockFilling {
    private static final int REMEMBERED = 200_000;

    private final long capacity;
    private final long[] lengths;
    private final Work work;
    private final Set<Key> hopeless = new HashSet<>();
    private long nodes;

    private record Key(List<Integer> left, int stocks) {
    }

    StockFilling(long capacity, long[] lengths, long nodes, Work work) {
        this.capacity = capacity;
        this.lengths = lengths;
        this.nodes = nodes;
        this.work = work;
    }

    /** Whether the answer "no" is a proof. */
    boolean exhausted() {
        return nodes > 0;
    }

    /** Fills at most so many stocks with the whole demand; null if it cannot be done or the budget ran out. */
    List<int[]> within(int stocks, int[] demand) {
        List<int[]> filled = new ArrayList<>();
        return fill(demand.clone(), stocks, filled) ? filled : null;
    }

    private boolean fill(int[] left, int stocks, List<int[]> filled) {
        long total = 0;
        int longest = -1;
        for (int i = left.length - 1; i >= 0; i--) {
            total += left[i] * lengths[i];
            longest = left[i] > 0 ? i : longest;
        }
        if (longest < 0) {
            return true;
        }
        if (stocks * capacity < total || nodes <= 0) {
            return false;
        }
        Key key = new Key(Arrays.stream(left).boxed().toList(), stocks);
        if (hopeless.contains(key)) {
            return false;
        }
        int[] pattern = new int[left.length];
        pattern[longest] = 1;
        left[longest]--;
        boolean done = extend(left, stocks, filled, pattern, longest, capacity - lengths[longest], stocks * capacity - total);
        left[longest]++;
        if (!done && nodes > 0 && hopeless.size() < REMEMBERED) {
            hopeless.add(key);
        }
        return done;
    }

    /** @param spare waste that all stocks together may still have */
    private boolean extend(int[] left, int stocks, List<int[]> filled, int[] pattern, int from, long room, long spare) {
        if (--nodes <= 0) {
            return false;
        }
        if ((nodes & 0xFFF) == 0) {
            work.checkpoint();
        }
        boolean full = true;
        for (int i = from; i < lengths.length; i++) {
            if (left[i] > 0 && lengths[i] <= room) {
                full = false;
                left[i]--;
                pattern[i]++;
                boolean done = extend(left, stocks, filled, pattern, i, room - lengths[i], spare);
                left[i]++;
                pattern[i]--;
                if (done) {
                    return true;
                }
            }
        }
        if (room > spare) {
            return false;
        }
        if (!full && anyFits(left, room)) {
            return false; // a pattern that still holds a piece is never better than one that takes it
        }
        filled.add(pattern.clone());
        if (fill(left, stocks - 1, filled)) {
            return true;
        }
        filled.remove(filled.size() - 1);
        return false;
    }

    private boolean anyFits(int[] left, long room) {
        for (int i = 0; i < lengths.length; i++) {
            if (left[i] > 0 && lengths[i] <= room) {
                return true;
            }
        }
        return false;
    }
}
