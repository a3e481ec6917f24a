package saddlebar.nesting.rectangle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Stands up again what a layout turned without need: shapes that have room as drawn where they lie, and shapes that may be kept as drawn
 * while everything is filled anew from the same order. The result is never longer and never takes more bins. Each shape costs at most a few
 * fillings; how many in all is bounded by a count of steps, not by a clock.
 */
final class NeedlessTurns {
    private static final double MOST_STEPS = 4e8; // about a second

    private final RectangleSet set;
    private final int[] order;
    private final boolean[] preferTurned;
    private final Runnable checkpoint;
    private double stepsLeft = MOST_STEPS;
    private RectangleLayout best;

    /** @param checkpoint called now and then; may throw to stop */
    NeedlessTurns(RectangleSet set, int[] order, boolean[] preferTurned, Runnable checkpoint) {
        this.set = set;
        this.order = order;
        this.preferTurned = preferTurned;
        this.checkpoint = checkpoint;
    }

    /** A layout as good as the given one in all else and with fewer turns, if one is found. */
    Optional<RectangleLayout> fewer(RectangleLayout layout) {
        best = standUpInPlace(layout);
        int[] turned = needless(best);
        if (turned.length > 0) {
            fillAnew(turned, 0, turned.length, set.mayTurn().clone());
            best = standUpInPlace(best);
        }
        return best.turns() < layout.turns() ? Optional.of(best) : Optional.empty();
    }

    private int[] needless(RectangleLayout layout) {
        int[] some = new int[set.size()];
        int n = 0;
        for (int i = 0; i < some.length; i++) {
            if (layout.turned()[i] && set.mayStand()[i]) {
                some[n++] = i;
            }
        }
        return Arrays.copyOf(some, n);
    }

    /** Keeps a whole group as drawn, and if that costs length, one half of it, then the other. */
    private void fillAnew(int[] group, int from, int to, boolean[] mayTurn) {
        double steps = (double) set.size() * set.size();
        if (from >= to || stepsLeft < steps) {
            return;
        }
        stepsLeft -= steps;
        checkpoint.run();
        boolean[] tried = mayTurn.clone();
        for (int k = from; k < to; k++) {
            tried[group[k]] = false;
        }
        RectangleSet held = new RectangleSet(set.width(), set.height(), set.mayStand(), tried);
        List<Bin> closed = new ArrayList<>(best.bins());
        Bin last = closed.get(closed.size() - 1);
        if (last.upward()) {
            closed.add(RectangleSearch.NOTHING);
        }
        SkylineFill fill = new SkylineFill(held);
        if (fill.fill(order, preferTurned, closed, last.upward() ? 0 : best.lastLength()) == 0) {
            RectangleLayout found = RectangleLayout.of(fill, best.bins());
            if (RectangleSearch.BETTER.compare(found, best) < 0) {
                best = found;
                System.arraycopy(tried, 0, mayTurn, 0, tried.length);
                return;
            }
        }
        if (to - from > 1) {
            int middle = (from + to) / 2;
            fillAnew(group, from, middle, mayTurn);
            fillAnew(group, middle, to, mayTurn);
        }
    }

    private RectangleLayout standUpInPlace(RectangleLayout layout) {
        RectangleLayout now = layout;
        for (int i : needless(layout)) {
            if (hasRoomAsDrawn(now, i)) {
                now = now.stoodUp(i, set);
            }
        }
        return now;
    }

    private boolean hasRoomAsDrawn(RectangleLayout layout, int i) {
        int b = layout.bin()[i];
        Bin bin = layout.bins().get(b);
        long right = layout.x()[i] + set.width()[i];
        long bottom = layout.y()[i] + set.height()[i];
        if (right > (b == layout.bins().size() - 1 ? layout.lastLength() : bin.alongX()) || bottom > bin.alongY()) {
            return false;
        }
        for (int j = 0; j < set.size(); j++) {
            boolean turned = layout.turned()[j];
            if (j != i && layout.bin()[j] == b && layout.x()[j] < right && layout.y()[j] < bottom
                    && layout.x()[j] + (turned ? set.height()[j] : set.width()[j]) > layout.x()[i]
                    && layout.y()[j] + (turned ? set.width()[j] : set.height()[j]) > layout.y()[i]) {
                return false;
            }
        }
        return true;
    }
}
