package saddlebar.stencil.method;

import java.util.Arrays;

import saddlebar.model.units.Require;

/**
 * Thresholds that tile the plane in bricks: {@code rows} rows of {@code period} thresholds, each further course of bricks shifted along x.
 * A px is painted where its code value is below its threshold (unsigned), so 0 never paints and white, 255, never does.
 *
 * <p>Source of the brick form: Holladay, An optimum algorithm for halftone generation for displays and hard copies, Proc. SID 21(2), 1980.
 *
 * @param period     thresholds in a row of a brick
 * @param rows       rows of a brick
 * @param shift      the course that is {@code c} courses down starts at threshold {@code c * shift} mod period
 * @param thresholds {@code rows * period} bytes
 */
record ThresholdTile(int period, int rows, int shift, byte[] thresholds) {
    ThresholdTile {
        Require.within("period", period, 1, 1 << 28);
        Require.within("rows", rows, 1, 1 << 28);
        Require.within("shift", shift, 0, period - 1);
        if (thresholds.length != Math.multiplyExact(period, rows)) {
            throw new IllegalArgumentException("a tile of " + period + " x " + rows + " has " + thresholds.length + " thresholds");
        }
    }

    static ThresholdTile flat(byte threshold) {
        return new ThresholdTile(1, 1, 0, new byte[] {threshold});
    }

    /** Where in its row of thresholds the px at x = 0 of row y stands. */
    int phase(int y) {
        return (int) ((long) (y / rows) * shift % period);
    }

    /** Row {@code y} of the plane's thresholds, laid out from phase 0 over so many whole periods and then {@code extra} thresholds more. */
    byte[] row(int y, int periods, int extra) {
        byte[] row = new byte[periods * period + extra];
        int from = Math.floorMod(y, rows) * period;
        for (int x = 0; x < row.length; x += period) {
            System.arraycopy(thresholds, from, row, x, Math.min(period, row.length - x));
        }
        return row;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ThresholdTile that && that.period == period && that.rows == rows && that.shift == shift
                && Arrays.equals(that.thresholds, thresholds);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(thresholds);
    }
}
