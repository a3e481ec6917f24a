package saddlebar.ui.dots;

import java.io.IOException;
import java.nio.file.Path;

import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Units;
import saddlebar.model.work.Work;
import saddlebar.stencil.code.BitonalTiff;
import saddlebar.stencil.code.TiffBits;

/** A made stencil as it lies in its file, whole in memory, a bit a device pixel: black is toner. Immutable. */
public final class StencilBits {
    /** Units of work that {@link #read} tells. */
    public static final int UNITS = 100;
    /** 64 MiB of bits: more than a sheet of 594 x 841 mm at 720 an inch. */
    private static final long MOST_PX = 1L << 29;
    private static final int PLACE_PX = 128;
    private static final int ROWS_AT_ONCE = 256;

    private final int widthPx;
    private final int heightPx;
    private final double pxPerMm;
    private final int wordsPerRow;
    private final long[] words;

    private StencilBits(int widthPx, int heightPx, double pxPerMm, long[] words) {
        this.widthPx = widthPx;
        this.heightPx = heightPx;
        this.pxPerMm = pxPerMm;
        this.wordsPerRow = (widthPx + 63) >> 6;
        this.words = words;
    }

    /**
     * Bits that were made just now.
     *
     * @param pxPerMm device pixels a mm
     * @param words   rows laid out as in {@link saddlebar.stencil.BitBands}, 1 is toner; kept, not copied
     */
    public static StencilBits of(int widthPx, int heightPx, double pxPerMm, long[] words) {
        if (words.length != Math.multiplyExact((widthPx + 63) >> 6, heightPx)) {
            throw new IllegalArgumentException(words.length + " words do not make " + widthPx + " x " + heightPx + " px");
        }
        return new StencilBits(widthPx, heightPx, pxPerMm, words);
    }

    /**
     * Reads a file.
     *
     * @param work tells {@link #UNITS} in all
     * @throws Refusal if it is no bitonal TIFF, damaged, without a resolution, or too large to be held
     */
    public static StencilBits read(Path file, Work work) throws IOException {
        try (TiffBits bits = BitonalTiff.read(file)) {
            if ((long) bits.widthPx() * bits.heightPx() > MOST_PX) {
                throw new Refusal(file.toString(), "has more than " + MOST_PX + " px", "look at it in parts");
            }
            if (!(bits.info().xDpi() > 0)) {
                throw new Refusal(file.toString(), "does not say how many px an inch it has", "make it again");
            }
            int perRow = bits.wordsPerRow();
            long[] all = new long[Math.multiplyExact(perRow, bits.heightPx())];
            long[] band = new long[perRow * ROWS_AT_ONCE];
            int done = 0;
            int told = 0;
            for (int rows = bits.read(band, ROWS_AT_ONCE); rows > 0; rows = bits.read(band, ROWS_AT_ONCE)) {
                work.checkpoint();
                System.arraycopy(band, 0, all, done * perRow, rows * perRow);
                done += rows;
                int now = (int) ((long) UNITS * done / bits.heightPx());
                work.advance(now - told);
                told = now;
            }
            return new StencilBits(bits.widthPx(), bits.heightPx(), bits.info().xDpi() / Units.MM_PER_INCH, all);
        }
    }

    public int widthPx() {
        return widthPx;
    }

    public int heightPx() {
        return heightPx;
    }

    /** Device pixels a mm. */
    public double pxPerMm() {
        return pxPerMm;
    }

    /** Whether toner lies there; none lies outside. */
    public boolean black(int x, int y) {
        return x >= 0 && y >= 0 && x < widthPx && y < heightPx && (words[y * wordsPerRow + (x >> 6)] >>> (63 - (x & 63)) & 1) != 0;
    }

    /** Middle of the place that is nearest to half covered, where there is most to see: x, y in px. */
    public int[] halfCovered() {
        int[] best = {widthPx / 2, heightPx / 2};
        double nearest = Math.abs(share(best[0] - PLACE_PX / 2, best[1] - PLACE_PX / 2, PLACE_PX, PLACE_PX) - 0.5) - 0.02; // the middle, if as good
        for (int y = 0; y + PLACE_PX <= heightPx; y += PLACE_PX) {
            for (int x = 0; x + PLACE_PX <= widthPx; x += PLACE_PX) {
                double off = Math.abs(share(x, y, PLACE_PX, PLACE_PX) - 0.5);
                if (off < nearest) {
                    nearest = off;
                    best = new int[] {x + PLACE_PX / 2, y + PLACE_PX / 2};
                }
            }
        }
        return best;
    }

    /** Share of black in a part, 0 to 1; what lies outside does not count, and a part outside altogether has none. */
    public double share(int left, int top, int width, int height) {
        int x0 = Math.max(0, left);
        int y0 = Math.max(0, top);
        int x1 = Math.min(widthPx, left + width);
        int y1 = Math.min(heightPx, top + height);
        long black = 0;
        for (int y = y0; y < y1; y++) {
            for (int x = x0; x < x1;) {
                if ((x & 63) == 0 && x + 64 <= x1) {
                    black += Long.bitCount(words[y * wordsPerRow + (x >> 6)]);
                    x += 64;
                } else {
                    black += black(x, y) ? 1 : 0;
                    x++;
                }
            }
        }
        long all = (long) Math.max(0, x1 - x0) * Math.max(0, y1 - y0);
        return all == 0 ? 0 : black / (double) all;
    }
}
