package saddlebar.stencil.method;

import java.util.Arrays;

import saddlebar.stencil.Screener;
import saddlebar.stencil.SpotFunction;
import saddlebar.stencil.tone.ToneTable;

/**
 * Thresholds of {@link HybridMethod}, made row by row. A px of rank r of N (q = (r + 1/2)/N) has the threshold q in the middle; below the share d of
 * the smallest dot, d (R + 1/2)/n^2 with R the rank of its cell, so that a whole dot comes at once; above 1 - d, likewise for the hole it lies in,
 * holes standing half a cell off in both directions.
 *
 * <p>A row repeats after the tile's period but for which cells it meets. So the middle is copied, and over it go the stretches of each dot and hole that
 * the row cuts, found once for a tile.
 */
final class HybridScreener implements Screener {
    private static final int SIDE = BlueNoiseMethod.SIDE;
    private static final int MASK = SIDE - 1;

    private final int widthPx;
    private final CellGrid grid;
    private final int period;
    private final byte[] middle;
    private final byte[] dotOfCell = new byte[SIDE * SIDE];
    private final byte[] holeOfCell = new byte[SIDE * SIDE];
    private final Stretch[][] stretches;
    private final byte[] thresholds;
    private int y;

    /**
     * Px of one dot or hole side by side in a row of the tile.
     *
     * @param u cell along v1 that a dot stands in, or the one whose first corner is the middle of a hole
     * @param v the same along v2
     */
    private record Stretch(int from, int to, boolean hole, int u, int v) {
    }

    HybridScreener(CellGrid grid, SpotFunction spot, double dotShare, ToneTable tone, int widthPx) {
        this.grid = grid;
        this.widthPx = widthPx;
        this.period = grid.brickPx();
        this.thresholds = new byte[widthPx + 8];
        int n = grid.area();
        RankedTile tile = RankedTile.of(grid, spot);
        this.middle = new byte[n];
        int[] ranks = tile.ranks();
        int smallest = (int) Math.round(dotShare * n);
        byte[] ofRank = new byte[n];
        for (int rank = 0; rank < n; rank++) {
            ofRank[rank] = (byte) tone.codesAbove((rank + 0.5) / n);
        }
        for (int i = 0; i < n; i++) {
            middle[i] = ofRank[ranks[i]];
        }
        this.stretches = new Stretch[grid.brickRows()][];
        for (int row = 0; row < stretches.length; row++) {
            stretches[row] = stretches(ranks, row, smallest);
        }
        double share = (double) smallest / n;
        int[] order = BlueNoiseRanks.of(SIDE);
        int cells = SIDE * SIDE;
        for (int cell = 0; cell < cells; cell++) {
            dotOfCell[cell] = (byte) tone.codesAbove(share * (order[cell] + 0.5) / cells);
            holeOfCell[cell] = (byte) tone.codesAbove(1 - share * (order[cell] + 0.5) / cells);
        }
    }

    private Stretch[] stretches(int[] ranks, int row, int smallest) {
        int n = grid.area();
        Stretch[] found = new Stretch[period];
        int count = 0;
        for (int x = 0; x < period; x++) {
            int rank = ranks[row * period + x];
            if (rank >= smallest && rank < n - smallest) {
                continue;
            }
            boolean hole = rank >= smallest;
            int u = cell(grid.a() * (2L * x + 1) + grid.b() * (2L * row + 1), hole);
            int v = cell(-grid.b() * (2L * x + 1) + grid.a() * (2L * row + 1), hole);
            Stretch last = count == 0 ? null : found[count - 1];
            if (last != null && last.to == x && last.hole == hole && last.u == u && last.v == v) {
                found[count - 1] = new Stretch(last.from, x + 1, hole, u, v);
            } else {
                found[count++] = new Stretch(x, x + 1, hole, u, v);
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** The cell of a coordinate in px of 2 N a tile, or the cell that begins at the nearest corner. */
    private int cell(long along, boolean nearestCorner) {
        long twoN = 2L * grid.area();
        return (int) Math.floorDiv(along * grid.cells() + (nearestCorner ? grid.area() : 0), twoN);
    }

    @Override
    public void screen(byte[] gray, int rows, long[] bits) {
        int words = (widthPx + 63) >> 6;
        for (int row = 0; row < rows; row++) {
            fill(y++);
            ThresholdScreener.compare(gray, row * widthPx, widthPx, thresholds, bits, row * words);
        }
    }

    private void fill(int row) {
        int course = row / grid.brickRows();
        int rowOfTile = row % grid.brickRows();
        int at = (int) ((long) course * grid.brickShift() % period);
        long n = grid.area();
        long dx = -at; // from the tile's own brick to the first that the row meets: a step of the lattice
        long dy = row - rowOfTile;
        int u = (int) (grid.cells() * (grid.a() * dx + grid.b() * dy) / n);
        int v = (int) (grid.cells() * (-grid.b() * dx + grid.a() * dy) / n);
        int uStep = (int) (grid.cells() * (long) grid.a() * period / n);
        int vStep = (int) (grid.cells() * (long) -grid.b() * period / n);
        for (int x = -at; x < widthPx; x += period) {
            int first = Math.max(0, x);
            System.arraycopy(middle, rowOfTile * period + first - x, thresholds, first, Math.min(widthPx, x + period) - first);
            for (Stretch stretch : stretches[rowOfTile]) {
                byte[] ofCell = stretch.hole ? holeOfCell : dotOfCell;
                byte code = ofCell[(stretch.v + v & MASK) * SIDE + (stretch.u + u & MASK)];
                int end = Math.min(widthPx, x + stretch.to);
                for (int px = Math.max(0, x + stretch.from); px < end; px++) {
                    thresholds[px] = code;
                }
            }
            u += uStep;
            v += vStep;
        }
    }
}
