package saddlebar.stencil.method;

import saddlebar.stencil.Screener;
import saddlebar.stencil.SpotFunction;
import saddlebar.stencil.tone.ToneTable;

/**
 * Thresholds of {@link HybridMethod}, made row by row. A px of rank r of N (q = (r + 1/2)/N) has the threshold q in the middle; below the share d of
 * the smallest dot, d (R + 1/2)/n^2 with R the rank of its cell, so that a whole dot comes at once; above 1 - d, likewise for the hole it lies in,
 * holes standing half a cell off in both directions.
 */
final class HybridScreener implements Screener {
    private static final int SIDE = BlueNoiseMethod.SIDE;
    private static final byte DOT = 0;
    private static final byte MIDDLE = 1;
    private static final byte HOLE = 2;

    private final int widthPx;
    private final CellGrid grid;
    private final int period;
    private final byte[] kind;
    private final byte[] middle;
    private final byte[] dotOfCell = new byte[SIDE * SIDE];
    private final byte[] holeOfCell = new byte[SIDE * SIDE];
    private final byte[] thresholds;
    private int y;

    HybridScreener(CellGrid grid, SpotFunction spot, double dotShare, ToneTable tone, int widthPx) {
        this.grid = grid;
        this.widthPx = widthPx;
        this.period = grid.brickPx();
        this.thresholds = new byte[widthPx + 8];
        int n = grid.area();
        RankedTile tile = RankedTile.of(grid, spot);
        this.kind = new byte[n];
        this.middle = new byte[n];
        int[] ranks = tile.ranks();
        int smallest = (int) Math.round(dotShare * n);
        for (int i = 0; i < n; i++) {
            kind[i] = ranks[i] < smallest ? DOT : ranks[i] >= n - smallest ? HOLE : MIDDLE;
            middle[i] = (byte) tone.codesAbove((ranks[i] + 0.5) / n);
        }
        double share = (double) smallest / n;
        int[] order = BlueNoiseMethod.ranks(SIDE);
        int cells = SIDE * SIDE;
        for (int cell = 0; cell < cells; cell++) {
            dotOfCell[cell] = (byte) tone.codesAbove(share * (order[cell] + 0.5) / cells);
            holeOfCell[cell] = (byte) tone.codesAbove(1 - share * (order[cell] + 0.5) / cells);
        }
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
        int from = row % grid.brickRows() * period;
        int at = (int) ((long) course * grid.brickShift() % period);
        long twoN = 2L * grid.area();
        Walk u = new Walk(grid.cells() * (grid.a() + grid.b() * (2L * row + 1)), 2L * grid.a() * grid.cells(), twoN);
        Walk v = new Walk(grid.cells() * (-grid.b() + grid.a() * (2L * row + 1)), -2L * grid.b() * grid.cells(), twoN);
        for (int x = 0; x < widthPx; x++) {
            int i = from + at;
            thresholds[x] = switch (kind[i]) {
                case MIDDLE -> middle[i];
                case DOT -> dotOfCell[(v.cell & SIDE - 1) * SIDE + (u.cell & SIDE - 1)];
                default -> holeOfCell[(v.nearestCorner() & SIDE - 1) * SIDE + (u.nearestCorner() & SIDE - 1)];
            };
            u.step();
            v.step();
            at++;
            if (at == period) {
                at = 0;
            }
        }
    }

    /** A cell coordinate along a row without a division a px. */
    private static final class Walk {
        private final long step;
        private final long unit;
        private long rest;
        private int cell;

        Walk(long start, long step, long unit) {
            this.step = step;
            this.unit = unit;
            this.cell = (int) Math.floorDiv(start, unit);
            this.rest = Math.floorMod(start, unit);
        }

        void step() {
            rest += step;
            while (rest >= unit) {
                rest -= unit;
                cell++;
            }
            while (rest < 0) {
                rest += unit;
                cell--;
            }
        }

        int nearestCorner() {
            return 2 * rest >= unit ? cell + 1 : cell;
        }
    }
}
