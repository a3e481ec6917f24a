package saddlebar.nesting.rectangle;

/** The front of what has been placed: stretches across the bin, each with the level that it is filled to. No two neighbours are level. */
final class Skyline {
    private final long[] from;
    private final long[] width;
    private final long[] level;
    private int n;

    /** @param most shapes that will be placed at most */
    Skyline(int most) {
        from = new long[most + 3];
        width = new long[most + 3];
        level = new long[most + 3];
    }

    void clear(long across) {
        n = 1;
        from[0] = 0;
        width[0] = across;
        level[0] = 0;
    }

    /** The stretch filled least, of these the first. */
    int lowest() {
        int low = 0;
        for (int i = 1; i < n; i++) {
            if (level[i] < level[low]) {
                low = i;
            }
        }
        return low;
    }

    long from(int i) {
        return from[i];
    }

    long width(int i) {
        return width[i];
    }

    long level(int i) {
        return level[i];
    }

    /** Is it at the border where places across begin? */
    boolean isFirst(int i) {
        return i == 0;
    }

    boolean isLast(int i) {
        return i == n - 1;
    }

    /** How far the stretch before rises over stretch {@code i}; to {@code end} at the border. */
    long wallBefore(int i, long end) {
        return (i > 0 ? level[i - 1] : end) - level[i];
    }

    long wallAfter(int i, long end) {
        return (i < n - 1 ? level[i + 1] : end) - level[i];
    }

    /** Gives up a stretch into which nothing fits: it becomes level with its lower neighbour. False if it has none. */
    boolean giveUp(int i) {
        if (n == 1) {
            return false;
        }
        long before = i > 0 ? level[i - 1] : Long.MAX_VALUE;
        long after = i < n - 1 ? level[i + 1] : Long.MAX_VALUE;
        level[i] = Math.min(before, after);
        joinNeighbours(i);
        return true;
    }

    /** Raises a part of stretch {@code i}, at its beginning or its end, by {@code high}. */
    void raise(int i, long wide, long high, boolean atBeginning) {
        int raised = i;
        if (wide < width[i]) {
            open(i);
            long rest = width[i] - wide;
            width[i] = atBeginning ? wide : rest;
            width[i + 1] = atBeginning ? rest : wide;
            from[i + 1] = from[i] + width[i];
            raised = atBeginning ? i : i + 1;
        }
        level[raised] += high;
        joinNeighbours(raised);
    }

    private void joinNeighbours(int i) {
        int at = i;
        if (at > 0 && level[at - 1] == level[at]) {
            width[at - 1] += width[at];
            close(at);
            at--;
        }
        if (at < n - 1 && level[at + 1] == level[at]) {
            width[at] += width[at + 1];
            close(at + 1);
        }
    }

    private void open(int i) {
        System.arraycopy(from, i, from, i + 1, n - i);
        System.arraycopy(width, i, width, i + 1, n - i);
        System.arraycopy(level, i, level, i + 1, n - i);
        n++;
    }

    private void close(int i) {
        n--;
        System.arraycopy(from, i + 1, from, i, n - i);
        System.arraycopy(width, i + 1, width, i, n - i);
        System.arraycopy(level, i + 1, level, i, n - i);
    }
}
