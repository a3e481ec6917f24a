package saddlebar.artwork.raster;

import java.io.IOException;
import java.util.Arrays;

import saddlebar.artwork.RasterRequest;
import saddlebar.artwork.drawing.GrayCode;
import saddlebar.model.art.GrayBands;
import saddlebar.model.art.GrayCoding;
import saddlebar.model.units.Units;
import saddlebar.model.work.Work;

/** A picture as gray at device resolution, streamed; white paper beside it and behind what is clear. */
final class PictureGray implements GrayBands {
    /** Rows between two looks at whether to stop. */
    private static final int ROWS_A_LOOK = 64;

    private final RasterRequest request;
    private final Work work;
    private final PictureRows rows;
    private final RowScaler scaler;
    private final float[] line;
    private final byte[] stored;
    private int next;

    /** @param mmPerPxX width of a pixel of the picture on the page */
    PictureGray(PictureFile file, double mmPerPxX, double mmPerPxY, RasterRequest request, Work work) throws IOException {
        this.request = request;
        this.work = work;
        this.rows = file.rows();
        this.stored = new byte[rows.widthPx() * rows.channels()];
        double devicePxMm = Units.MM_PER_INCH / request.dpi();
        this.scaler = new RowScaler(this::grayRow,
                new RowScaler.Axis(request.originXMm() / mmPerPxX, devicePxMm / mmPerPxX, rows.widthPx(), request.widthPx()),
                new RowScaler.Axis(request.originYMm() / mmPerPxY, devicePxMm / mmPerPxY, rows.heightPx(), request.heightPx()), 1);
        this.line = new float[request.widthPx()];
    }

    private void grayRow(float[] gray) throws IOException {
        rows.next(stored);
        int n = rows.channels();
        for (int x = 0; x < gray.length; x++) {
            int at = x * n;
            int first = stored[at] & 0xFF;
            int value = n < 3 ? first : GrayCode.of(first << 16 | (stored[at + 1] & 0xFF) << 8 | stored[at + 2] & 0xFF, request.coding());
            if (n % 2 == 0) {
                int alpha = stored[at + n - 1] & 0xFF;
                gray[x] = 255 + (value - 255) * (alpha / 255f);
            } else {
                gray[x] = value;
            }
        }
    }

    @Override
    public int widthPx() {
        return request.widthPx();
    }

    @Override
    public int heightPx() {
        return request.heightPx();
    }

    @Override
    public GrayCoding coding() {
        return request.coding();
    }

    @Override
    public int read(byte[] target, int maxRows) throws IOException {
        if (maxRows < 1) {
            throw new IllegalArgumentException("maxRows must be at least 1 but is " + maxRows);
        }
        int count = Math.min(Math.min(maxRows, ROWS_A_LOOK), request.heightPx() - next);
        work.checkpoint();
        int width = request.widthPx();
        for (int row = 0; row < count; row++) {
            int to = row * width;
            if (!scaler.holds(next)) {
                Arrays.fill(target, to, to + width, (byte) 0xFF);
            } else {
                scaler.row(next, line);
                for (int x = 0; x < width; x++) {
                    target[to + x] = scaler.holdsColumn(x) ? (byte) (line[x] + 0.5f) : (byte) 0xFF;
                }
            }
            next++;
        }
        work.advance(count);
        return count;
    }

    @Override
    public void close() {
        try {
            rows.close();
        } catch (IOException e) {
            return; // a file that was only read: nothing is lost
        }
    }
}
