package saddlebar.nesting.outline;

/**
 * How deep two shapes overlap, for every place of the second relative to the first: the no-fit polygon of the two, kept as a grid of cells.
 * Whether they overlap is exact (to the gap's margin): a cell that the polygon's border crosses holds the half planes that decide inside it.
 * How deep is a measure for the search only: the distance to the nearest place without overlap, from the middles of the cells.
 *
 * <p>Sources: no-fit polygon as union of the Minkowski differences of convex parts: Bennell, J. A., Oliveira, J. F. (2008). The geometry of
 * nesting problems: a tutorial. EJOR 184(2), 397-415. Penetration depth as a map on a grid: Sato, A. K., Martins, T. C., Gomes, A. M., Tsuzuki,
 * M. S. G. (2019). Raster penetration map applied to the irregular packing problem. EJOR 279(2), 657-671. Keeping the exact half planes in the
 * cells is ours. Cost of a question: O(1), a few half planes. Memory: 8 bytes a cell and what the border needs.
 */
final class PairTable {
    static final int OUTSIDE = -1;
    static final int COVERED = -2;

    final double minX;
    final double minY;
    private final double perX;
    private final double perY;
    private final int columns;
    private final int rows;
    private final double cell;
    /** OUTSIDE, COVERED or where the cell's entry in {@link #entries} begins. */
    private final int[] codes;
    /** Number of clauses, then for each the number of its half planes and their numbers. Overlap if all of one clause hold. */
    private final int[] entries;
    private final double[] a;
    private final double[] b;
    private final double[] c;
    /** Made when a depth is first asked for; two threads may both make the same. */
    private DepthMap map;

    PairTable(double minX, double minY, double cell, int columns, int rows, int[] codes, int[] entries,
            double[][] halfPlanes) {
        this.minX = minX;
        this.minY = minY;
        this.cell = cell;
        perX = 1 / cell;
        perY = 1 / cell;
        this.columns = columns;
        this.rows = rows;
        this.codes = codes;
        this.entries = entries;
        a = halfPlanes[0];
        b = halfPlanes[1];
        c = halfPlanes[2];
    }

    /** Does the second shape overlap the first, or lie nearer than the gap, with its (0,0) at (x,y) from the first's? */
    boolean overlaps(double x, double y) {
        double u = (x - minX) * perX;
        double v = (y - minY) * perY;
        if (!(u >= 0 && v >= 0 && u < columns && v < rows)) {
            return false;
        }
        int code = codes[(int) v * columns + (int) u];
        return code == COVERED || code >= 0 && slack(code, x, y) > 0;
    }

    /** 0 if they do not overlap, else how far they are from it, more than 0. */
    double depth(double x, double y) {
        double u = (x - minX) * perX;
        double v = (y - minY) * perY;
        if (!(u >= 0 && v >= 0 && u < columns && v < rows)) {
            return 0;
        }
        int code = codes[(int) v * columns + (int) u];
        if (code == OUTSIDE) {
            return 0;
        }
        if (code == COVERED) {
            return smooth(u, v);
        }
        double slack = slack(code, x, y);
        return slack > 0 ? Math.max(slack, smooth(u, v) - cell) : 0;
    }

    /** By how much the best clause of a cell holds; not above 0 if none does. */
    private double slack(int code, double x, double y) {
        int at = code;
        double best = 0;
        for (int clause = entries[at++]; clause > 0; clause--) {
            double least = Double.POSITIVE_INFINITY;
            for (int k = entries[at++]; k > 0; k--) {
                int plane = entries[at++];
                least = Math.min(least, c[plane] - a[plane] * x - b[plane] * y);
            }
            best = Math.max(best, least);
        }
        return best;
    }

    private double smooth(double u, double v) {
        DepthMap known = map;
        if (known == null) {
            known = map = new DepthMap(depths());
        }
        float[] depths = known.depths;
        double su = u + 0.5;
        double sv = v + 0.5;
        int i = (int) su;
        int j = (int) sv;
        double p = su - i;
        double q = sv - j;
        int at = j * (columns + 2) + i;
        double top = depths[at] + p * (depths[at + 1] - depths[at]);
        double low = depths[at + columns + 2] + p * (depths[at + columns + 3] - depths[at + columns + 2]);
        return Math.max(top + q * (low - top), 1e-3 * cell);
    }

    private float[] depths() {
        boolean[] inside = new boolean[codes.length];
        for (int i = 0; i < inside.length; i++) {
            inside[i] = codes[i] == COVERED
                    || codes[i] >= 0 && slack(codes[i], minX + (i % columns + 0.5) * cell, minY + (i / columns + 0.5) * cell) > 0;
        }
        return DistanceMap.of(inside, columns, rows, cell);
    }

    /** Depth at the middles of the cells, with a frame of zeros. The field is final, so that another thread never sees it half made. */
    private static final class DepthMap {
        private final float[] depths;

        DepthMap(float[] depths) {
            this.depths = depths;
        }
    }
}
