package saddlebar.nesting.outline;

import java.util.Arrays;

/** Makes one {@link PairTable}: O(parts of both * cells under them), about a millisecond for usual shapes. */
final class PairTableBuilder {
    private static final int NO_NODE = -1;
    private static final double REACH = 0.5 * (1 + 1e-9); // a hair more than the cell, for the rounding of which cell a place is in
    private static final double FLAT = 1e-9;
    private final double minX;
    private final double minY;
    private final double cell;
    private final int columns;
    private final int rows;
    private final int[] heads; // COVERED, or the first node of the cell's list, or NO_NODE
    private int[] nodes = new int[1024]; // next node, number of half planes, their numbers
    private int nodesUsed;
    private double[][] halfPlanes = new double[3][64];
    private int halfPlanesUsed;

    private PairTableBuilder(double minX, double minY, double cell, int columns, int rows) {
        this.minX = minX;
        this.minY = minY;
        this.cell = cell;
        this.columns = columns;
        this.rows = rows;
        heads = new int[columns * rows];
        Arrays.fill(heads, NO_NODE);
    }

    /**
     * @param gap  least distance
     * @param fine cells along the longer side of the table
     */
    static PairTable build(Shape still, Shape moved, double gap, int fine) {
        HalfPlanes[] sums = new HalfPlanes[still.parts.length * moved.parts.length];
        int n = 0;
        double minX = Double.POSITIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        double maxX = Double.NEGATIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        for (double[] p : still.parts) {
            for (double[] q : moved.parts) {
                HalfPlanes sum = HalfPlanes.of(p, q, gap);
                sums[n++] = sum;
                minX = Math.min(minX, sum.minX);
                minY = Math.min(minY, sum.minY);
                maxX = Math.max(maxX, sum.maxX);
                maxY = Math.max(maxY, sum.maxY);
            }
        }
        double cell = Math.max(maxX - minX, maxY - minY) / (fine - 0.5); // the rim falls inside the last cell
        int columns = (int) Math.floor((maxX - minX) / cell) + 1;
        int rows = (int) Math.floor((maxY - minY) / cell) + 1;
        PairTableBuilder builder = new PairTableBuilder(minX, minY, cell, columns, rows);
        for (HalfPlanes sum : sums) {
            builder.add(sum);
        }
        return builder.table();
    }

    private void add(HalfPlanes sum) {
        int first = halfPlanesUsed;
        for (int i = 0; i < sum.a.length; i++) {
            if (halfPlanesUsed == halfPlanes[0].length) {
                for (int k = 0; k < 3; k++) {
                    halfPlanes[k] = Arrays.copyOf(halfPlanes[k], 2 * halfPlanesUsed);
                }
            }
            halfPlanes[0][halfPlanesUsed] = sum.a[i];
            halfPlanes[1][halfPlanesUsed] = sum.b[i];
            halfPlanes[2][halfPlanesUsed++] = sum.c[i];
        }
        int fromColumn = Math.max(0, (int) Math.floor((sum.minX - minX) / cell - 1e-6));
        int toColumn = Math.min(columns - 1, (int) Math.floor((sum.maxX - minX) / cell + 1e-6));
        int fromRow = Math.max(0, (int) Math.floor((sum.minY - minY) / cell - 1e-6));
        int toRow = Math.min(rows - 1, (int) Math.floor((sum.maxY - minY) / cell + 1e-6));
        int[] crossing = new int[sum.a.length];
        for (int row = fromRow; row <= toRow; row++) {
            addRow(sum, first, row, fromColumn, toColumn, crossing);
        }
    }

    /** Finds the run of cells that the part touches and in it the run that it covers; only what is between needs a closer look. */
    private void addRow(HalfPlanes sum, int first, int row, int fromColumn, int toColumn, int[] crossing) {
        double y = minY + (row + 0.5) * cell;
        double touchedFrom = minX + fromColumn * cell;
        double touchedTo = minX + (toColumn + 1) * cell;
        double coveredFrom = Double.NEGATIVE_INFINITY;
        double coveredTo = Double.POSITIVE_INFINITY;
        for (int i = 0; i < sum.a.length; i++) {
            double swing = (Math.abs(sum.a[i]) + Math.abs(sum.b[i])) * REACH * cell;
            double rest = sum.c[i] - sum.b[i] * y;
            if (sum.a[i] > FLAT) {
                touchedTo = Math.min(touchedTo, (rest + swing) / sum.a[i]);
                coveredTo = Math.min(coveredTo, (rest - swing) / sum.a[i]);
            } else if (sum.a[i] < -FLAT) {
                touchedFrom = Math.max(touchedFrom, (rest + swing) / sum.a[i]);
                coveredFrom = Math.max(coveredFrom, (rest - swing) / sum.a[i]);
            } else if (rest + swing <= 0) {
                return;
            } else if (rest - swing < 0) {
                coveredTo = Double.NEGATIVE_INFINITY;
            }
        }
        int from = Math.max(fromColumn, (int) Math.floor((touchedFrom - minX) / cell - 0.5));
        int to = Math.min(toColumn, (int) Math.ceil((touchedTo - minX) / cell - 0.5));
        for (int column = from; column <= to; column++) {
            double x = minX + (column + 0.5) * cell;
            int at = row * columns + column;
            if (x > coveredFrom && x < coveredTo) {
                heads[at] = PairTable.COVERED;
            } else if (heads[at] != PairTable.COVERED) {
                mark(at, sum, first, x, y, crossing);
            }
        }
    }

    private void mark(int at, HalfPlanes sum, int first, double x, double y, int[] crossing) {
        int n = 0;
        double reach = REACH * cell;
        for (int i = 0; i < sum.a.length; i++) {
            double over = sum.a[i] * x + sum.b[i] * y - sum.c[i];
            double swing = (Math.abs(sum.a[i]) + Math.abs(sum.b[i])) * reach;
            if (over >= swing) {
                return; // the cell lies beyond this half plane
            }
            if (over > -swing) {
                crossing[n++] = first + i;
            }
        }
        if (n == 0) {
            heads[at] = PairTable.COVERED;
            return;
        }
        if (nodesUsed + 2 + n > nodes.length) {
            nodes = Arrays.copyOf(nodes, 2 * nodes.length + n);
        }
        int node = nodesUsed;
        nodes[nodesUsed++] = heads[at];
        nodes[nodesUsed++] = n;
        for (int k = 0; k < n; k++) {
            nodes[nodesUsed++] = crossing[k];
        }
        heads[at] = node;
    }

    private PairTable table() {
        int[] codes = new int[heads.length];
        int[] entries = new int[nodesUsed + heads.length];
        int used = 0;
        for (int i = 0; i < heads.length; i++) {
            if (heads[i] == PairTable.COVERED) {
                codes[i] = PairTable.COVERED;
            } else if (heads[i] == NO_NODE) {
                codes[i] = PairTable.OUTSIDE;
            } else {
                codes[i] = used;
                int count = used++;
                for (int node = heads[i]; node != NO_NODE; node = nodes[node]) {
                    entries[count]++;
                    int planes = nodes[node + 1];
                    System.arraycopy(nodes, node + 1, entries, used, planes + 1);
                    used += planes + 1;
                }
            }
        }
        double[][] planes = new double[3][];
        for (int k = 0; k < 3; k++) {
            planes[k] = Arrays.copyOf(halfPlanes[k], halfPlanesUsed);
        }
        return new PairTable(minX, minY, cell, columns, rows, codes, Arrays.copyOf(entries, used), planes);
    }
}
