package saddlebar.stencil.tone;

import java.io.IOException;

import saddlebar.model.art.GrayBands;
import saddlebar.model.art.GrayCoding;

/** How often each code value occurs in a layer: measured in a first pass, so that its drawn range is known before it is screened. */
public final class GrayHistogram {
    private static final int ROWS_AT_ONCE = 64;

    private final GrayCoding coding;
    private final long[] counts = new long[256];

    public GrayHistogram(GrayCoding coding) {
        this.coding = coding;
    }

    /** Reads bands to their end and closes them. */
    public static GrayHistogram of(GrayBands bands) throws IOException {
        try (bands) {
            GrayHistogram histogram = new GrayHistogram(bands.coding());
            int rowsAtOnce = Math.min(ROWS_AT_ONCE, bands.heightPx());
            byte[] band = new byte[Math.multiplyExact(rowsAtOnce, bands.widthPx())];
            for (int rows = bands.read(band, rowsAtOnce); rows > 0; rows = bands.read(band, rowsAtOnce)) {
                histogram.add(band, 0, rows * bands.widthPx());
            }
            return histogram;
        }
    }

    public void add(byte[] codes, int from, int count) {
        for (int i = from; i < from + count; i++) {
            counts[codes[i] & 255]++;
        }
    }

    public GrayCoding coding() {
        return coding;
    }

    public long count(int code) {
        return counts[code];
    }

    /** Px that are not white paper. */
    public long drawnPx() {
        long drawn = 0;
        for (int code = 0; code < 255; code++) {
            drawn += counts[code];
        }
        return drawn;
    }

    /**
     * The darkness that the given share of the drawn px does not exceed; white paper is not drawn and does not count, so that a small drawing
     * on a large page has the same range as by itself. 1 if nothing is drawn.
     *
     * @param share above 0 to 1, for instance 0.995
     */
    public double drawnPercentile(double share) {
        long drawn = drawnPx();
        if (drawn == 0) {
            return 1;
        }
        double wanted = share * drawn;
        long soFar = 0;
        int code = 255;
        while (soFar < wanted && code > 0) {
            soFar += counts[--code];
        }
        return Darkness.of(code, coding);
    }
}
