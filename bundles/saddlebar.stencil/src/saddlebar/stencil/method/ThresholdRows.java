package saddlebar.stencil.method;

/** Compares the coverage of dots with a square array of ranks, tiled: painted where coverage is above (rank + 1/2) / n^2. */
final class ThresholdRows implements RowDecider {
    private final int dots;
    private final int n;
    private final int[] thresholds;
    private int y;

    /** @param ranks n x n, each of 0 to n^2 - 1 once; n^2 at most 2^27, so that thresholds are exact */
    ThresholdRows(int dots, int n, int[] ranks) {
        this.dots = dots;
        this.n = n;
        this.thresholds = new int[ranks.length];
        for (int i = 0; i < ranks.length; i++) {
            thresholds[i] = (int) ((2L * ranks[i] + 1) * ONE / (2L * ranks.length));
        }
    }

    @Override
    public void decide(int[] coverage, long[] painted, int fromWord) {
        int row = y % n * n;
        y++;
        for (int word = 0, x = 0; x < dots; word++) {
            long packed = 0;
            for (int end = Math.min(dots, x + 64); x < end; x++) {
                packed = packed << 1 | (thresholds[row + x % n] - coverage[x]) >>> 31;
            }
            painted[fromWord + word] = packed << (-x & 63);
        }
    }
}
