package saddlebar.stencil.method;

import java.util.Arrays;

import saddlebar.stencil.SpotFunction;
import saddlebar.stencil.tone.ToneTable;

/**
 * The order in which the px of a tile turn to paint: a permutation of 0 to N - 1, laid out as a brick. Px i is painted where coverage is
 * above (rank + 1/2) / N, so that a flat coverage of k/N paints exactly k px.
 */
final class RankedTile {
    /** Spot values that agree to 2^-40 are ties: the sines of symmetric places differ in their last bits. */
    private static final double TIE = 0x1p40;
    private static final int INDEX_BITS = 20;

    private final int period;
    private final int rows;
    private final int shift;
    private final int[] ranks;

    /** @param ranks {@code rows * period} of them, each of 0 to N - 1 once; kept */
    RankedTile(int period, int rows, int shift, int[] ranks) {
        this.period = period;
        this.rows = rows;
        this.shift = shift;
        this.ranks = ranks;
    }

    /**
     * Ranks the px of a cell grid by a spot function, the highest value first. Ties are broken by a fixed hash of the place in the tile,
     * never by the order of scanning, which would lean all dots to one side. O(N log N); N up to 2^20.
     */
    static RankedTile of(CellGrid grid, SpotFunction spot) {
        int n = grid.area();
        int period = grid.brickPx();
        if (n > 1 << INDEX_BITS) {
            throw new IllegalArgumentException("a tile of " + n + " px is too large to rank");
        }
        long[] values = new long[n];
        long[] hashes = new long[n];
        double half = n;
        for (int i = 0; i < n; i++) {
            int x = i % period;
            int y = i / period;
            int along = grid.along(x, y);
            int across = grid.across(x, y);
            double u = ((long) along * grid.cells() % (2L * n) - n) / half;
            double w = ((long) across * grid.cells() % (2L * n) - n) / half;
            values[i] = -Math.round(spot.at(u, w) * TIE);
            hashes[i] = Hash.mix((long) along << 32 | across);
        }
        int[] byValue = denseRanks(values);
        int[] byHash = denseRanks(hashes);
        long[] keys = new long[n];
        for (int i = 0; i < n; i++) {
            keys[i] = ((long) byValue[i] << INDEX_BITS | byHash[i]) << INDEX_BITS | i;
        }
        Arrays.sort(keys);
        int[] ranks = new int[n];
        for (int rank = 0; rank < n; rank++) {
            ranks[(int) (keys[rank] & (1 << INDEX_BITS) - 1)] = rank;
        }
        return new RankedTile(period, grid.brickRows(), grid.brickShift(), ranks);
    }

    private static int[] denseRanks(long[] values) {
        long[] sorted = values.clone();
        Arrays.sort(sorted);
        int[] ranks = new int[values.length];
        for (int i = 0; i < values.length; i++) {
            ranks[i] = Arrays.binarySearch(sorted, values[i]); // any of the equal ones: binary search is the same for the same value
        }
        return ranks;
    }

    /** Rank of the px at (x, y) of the plane. */
    int rank(int x, int y) {
        long phase = Math.floorDiv(y, rows) * (long) shift;
        return ranks[Math.floorMod(y, rows) * period + (int) Math.floorMod(x + phase, (long) period)];
    }

    int size() {
        return ranks.length;
    }

    int[] ranks() {
        return ranks.clone();
    }

    /** For each px, how many codes from 0 on paint it. */
    ThresholdTile thresholds(ToneTable tone) {
        int n = ranks.length;
        byte[] ofRank = new byte[n];
        for (int rank = 0; rank < n; rank++) {
            ofRank[rank] = (byte) tone.codesAbove((rank + 0.5) / n);
        }
        byte[] thresholds = new byte[n];
        for (int i = 0; i < n; i++) {
            thresholds[i] = ofRank[ranks[i]];
        }
        return new ThresholdTile(period, rows, shift, thresholds);
    }
}
