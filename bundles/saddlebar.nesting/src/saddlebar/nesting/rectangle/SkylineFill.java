package saddlebar.nesting.rectangle;

import java.util.List;

/**
 * Fills bins from an order of the shapes: always the lowest stretch of the front takes, of all shapes that still wait, the one that leaves the
 * least ragged front; of equals the first in the order. The last bin has no end but a goal: what reaches over the goal is counted, and the
 * goal also serves as a wall that shapes may end at exactly, which is what makes layouts without waste come out.
 *
 * <p>Source of the rule: Leung, S. C. H., Zhang, D., Sim, K. M. (2011). A two-stage intelligent search algorithm for the two-dimensional strip
 * packing problem. EJOR 215(1), 57-69; best fit on a skyline goes back to Burke, E. K., Kendall, G., Whitwell, G. (2004). A new placement
 * heuristic for the orthogonal stock-cutting problem. Oper. Res. 52(4), 655-671. The goal as a wall and the count over it are ours.
 *
 * <p>Cost: O(n * (n + stretches)), since each step looks at all that wait. Scratch space is used again: one object a thread.
 */
final class SkylineFill {
    private static final int PERFECT = 7;
    private static final double NOWHERE = 100; // a shape that fits no bin weighs as much as 100 of it over the goal

    final RectangleSet set;
    final int[] bin;
    final long[] across;
    final long[] along;
    final boolean[] turned;
    private final Skyline front;
    private final int[] next;
    private int first;
    private int waiting;
    private int[] order;
    private boolean[] preferTurned;
    private long end;
    private boolean bounded;

    private int chosen;
    private int beforeChosen;
    private boolean chosenTurned;

    private long lastLength;

    SkylineFill(RectangleSet set) {
        this.set = set;
        int n = set.size();
        bin = new int[n];
        across = new long[n];
        along = new long[n];
        turned = new boolean[n];
        front = new Skyline(n);
        next = new int[n];
    }

    /**
     * Places all shapes.
     *
     * @param order        permutation of the shapes
     * @param preferTurned of a shape that fits equally well both ways: turn it
     * @param bins         the last one has no end
     * @param goal         of the last bin
     * @return area over the goal; 0 if all shapes lie inside
     */
    double fill(int[] order, boolean[] preferTurned, List<Bin> bins, long goal) {
        this.order = order;
        this.preferTurned = preferTurned;
        waiting = order.length;
        first = 0;
        for (int k = 0; k < order.length; k++) {
            next[k] = k + 1;
        }
        double over = 0;
        lastLength = 0;
        for (int b = 0; b < bins.size() && waiting > 0; b++) {
            bounded = b < bins.size() - 1;
            end = bounded ? bins.get(b).along() : goal;
            over += fillBin(b, bins.get(b));
        }
        for (int k = first; k < order.length; k = next[k]) {
            bin[order[k]] = -1;
            over += NOWHERE * set.area(order[k]);
        }
        return over;
    }

    /** How far the last bin was filled; 0 if it stayed empty. */
    long lastLength() {
        return lastLength;
    }

    private double fillBin(int b, Bin it) {
        double over = 0;
        long furthest = 0;
        front.clear(it.across());
        while (waiting > 0) {
            int low = front.lowest();
            long level = front.level(low);
            if (!choose(low, it.upward())) {
                if (front.giveUp(low)) {
                    continue;
                }
                break;
            }
            int shape = order[chosen];
            boolean flat = chosenTurned == it.upward(); // does its drawn height lie across?
            long wide = flat ? set.height()[shape] : set.width()[shape];
            long high = flat ? set.width()[shape] : set.height()[shape];
            boolean atBeginning = atBeginning(low, high);
            bin[shape] = b;
            across[shape] = atBeginning ? front.from(low) : front.from(low) + front.width(low) - wide;
            along[shape] = level;
            turned[shape] = chosenTurned;
            front.raise(low, wide, high, atBeginning);
            takeChosen();
            furthest = Math.max(furthest, level + high);
            if (level + high > end) {
                over += (double) wide * (level + high - Math.max(end, level));
            }
        }
        if (!bounded) {
            lastLength = furthest;
        }
        return over;
    }

    /** Beside the higher wall; at the border rather than beside a neighbour, unless that makes the front level. */
    private boolean atBeginning(int low, long high) {
        long before = front.wallBefore(low, end);
        long after = front.wallAfter(low, end);
        return front.isFirst(low) && !front.isLast(low) ? high != after : before >= after;
    }

    private boolean choose(int low, boolean upward) {
        long gap = front.width(low);
        long room = bounded ? end - front.level(low) : Long.MAX_VALUE;
        long before = front.wallBefore(low, end);
        long after = front.wallAfter(low, end);
        long higher = Math.max(before, after);
        long lower = Math.min(before, after);
        int best = -1;
        int previous = -1;
        for (int k = first; k < order.length; k = next[k]) {
            int shape = order[k];
            long flatWide = upward ? set.width()[shape] : set.height()[shape]; // across, if it lies as drawn
            long flatHigh = upward ? set.height()[shape] : set.width()[shape];
            boolean better = false;
            if (set.mayStand()[shape] && flatWide <= gap && flatHigh <= room) {
                int score = score(gap, higher, lower, flatWide, flatHigh);
                if (score > best) {
                    best = score;
                    chosenTurned = false;
                    better = true;
                }
            }
            if (set.mayTurn()[shape] && flatHigh <= gap && flatWide <= room) {
                int score = score(gap, higher, lower, flatHigh, flatWide);
                if (score > best || better && score == best && preferTurned[shape]) {
                    best = score;
                    chosenTurned = true;
                    better = true;
                }
            }
            if (better) {
                chosen = k;
                beforeChosen = previous;
                if (best == PERFECT) {
                    break;
                }
            }
            previous = k;
        }
        return best >= 0;
    }

    /** How even the front becomes: a filled stretch level with both walls is best. */
    private static int score(long gap, long higher, long lower, long wide, long high) {
        if (wide == gap) {
            if (high == higher) {
                return high == lower ? PERFECT : 6;
            }
            if (high == lower) {
                return 5;
            }
            return high < higher ? 4 : 3;
        }
        if (high == higher) {
            return 2;
        }
        return high == lower ? 1 : 0;
    }

    private void takeChosen() {
        waiting--;
        if (beforeChosen < 0) {
            first = next[chosen];
        } else {
            next[beforeChosen] = next[chosen];
        }
    }
}
