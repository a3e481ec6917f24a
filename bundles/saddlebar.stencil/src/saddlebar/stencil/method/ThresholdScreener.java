package saddlebar.stencil.method;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

import saddlebar.stencil.Screener;

/**
 * Compares code values with tiled thresholds, eight px at a time in one {@code long} without a branch. With x a code value and t a
 * threshold in each byte, {@code (x | 0x80) - (t & 0x7f)} keeps its high bit where the low seven bits of x reach those of t, and borrows
 * from no neighbour; x is below t where t has the high bit and x has not, or where the high bits agree and the low ones do not reach.
 */
final class ThresholdScreener implements Screener {
    private static final VarHandle EIGHT = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.BIG_ENDIAN);
    private static final long HIGH = 0x8080808080808080L;
    /** Multiplying eight bits that stand 8 apart by this gathers them, first byte highest, in the top byte. */
    private static final long GATHER = 0x0102040810204080L;
    private static final int LEAST_RUN = 1024;

    private final int widthPx;
    private final ThresholdTile tile;
    private final int run;
    private final byte[][] rowsOfTile;
    private int y;

    ThresholdScreener(ThresholdTile tile, int widthPx) {
        this.tile = tile;
        this.widthPx = widthPx;
        int periods = (LEAST_RUN + tile.period() - 1) / tile.period();
        this.run = periods * tile.period();
        this.rowsOfTile = new byte[tile.rows()][];
        for (int row = 0; row < tile.rows(); row++) {
            rowsOfTile[row] = tile.row(row, periods, 64); // 64 more: a word may begin at any phase
        }
    }

    @Override
    public void screen(byte[] gray, int rows, long[] bits) {
        int words = (widthPx + 63) >> 6;
        for (int row = 0; row < rows; row++) {
            screenRow(gray, row * widthPx, rowsOfTile[y % tile.rows()], tile.phase(y), bits, row * words);
            y++;
        }
    }

    private void screenRow(byte[] gray, int from, byte[] thresholds, int phase, long[] bits, int word) {
        int fullWords = widthPx >> 6;
        int at = phase;
        int px = from;
        for (int w = 0; w < fullWords; w++) {
            long packed = 0;
            for (int eight = 0; eight < 64; eight += 8) {
                packed = packed << 8 | below((long) EIGHT.get(gray, px + eight), (long) EIGHT.get(thresholds, at + eight));
            }
            bits[word + w] = packed;
            px += 64;
            at += 64;
            if (at >= run) {
                at -= run;
            }
        }
        int rest = widthPx & 63;
        if (rest > 0) {
            long packed = 0;
            for (int i = 0; i < rest; i++) {
                packed |= ((gray[px + i] & 255) < (thresholds[at + i] & 255) ? 1L : 0) << 63 - i;
            }
            bits[word + fullWords] = packed;
        }
    }

    /**
     * A row of code values against as many thresholds of its own.
     *
     * @param thresholds at least {@code widthPx}
     */
    static void compare(byte[] gray, int from, int widthPx, byte[] thresholds, long[] bits, int word) {
        int fullWords = widthPx >> 6;
        for (int w = 0; w < fullWords; w++) {
            long packed = 0;
            for (int eight = 64 * w; eight < 64 * w + 64; eight += 8) {
                packed = packed << 8 | below((long) EIGHT.get(gray, from + eight), (long) EIGHT.get(thresholds, eight));
            }
            bits[word + w] = packed;
        }
        if ((widthPx & 63) > 0) {
            long packed = 0;
            for (int x = fullWords << 6; x < widthPx; x++) {
                packed |= ((gray[from + x] & 255) < (thresholds[x] & 255) ? 1L : 0) << 63 - (x & 63);
            }
            bits[word + fullWords] = packed;
        }
    }

    /** Eight bits, the first byte's highest: 1 where the byte of x is below that of t. */
    private static long below(long x, long t) {
        long reaches = (x | HIGH) - (t & ~HIGH);
        long less = (~x & t | ~(x ^ t) & ~reaches) & HIGH;
        return (less >>> 7) * GATHER >>> 56;
    }
}
