package saddlebar.artwork.raster;

import java.io.IOException;

import saddlebar.artwork.drawing.Picture;
import saddlebar.model.problem.Refusal;

/** A picture whole in memory, and its rows turned as a camera's note wants. */
final class MemoryRows implements PictureRows {
    /** More pixels than this are not held at once. */
    static final long MOST_PX = 120_000_000;

    private final Picture picture;
    private int row;

    MemoryRows(Picture picture) {
        this.picture = picture;
    }

    /** Reads all rows. */
    static Picture whole(PictureRows rows, int orientation, String where) throws IOException {
        int w = rows.widthPx();
        int h = rows.heightPx();
        int n = rows.channels();
        if ((long) w * h > MOST_PX) {
            throw new Refusal(where, "the picture has " + w + " x " + h + " px, too many to be placed in a drawing or turned",
                    "save it smaller, or as PNG or TIFF by itself the right way up");
        }
        byte[] data;
        try {
            data = new byte[Math.multiplyExact(Math.multiplyExact(w, h), n)];
        } catch (ArithmeticException e) {
            throw new Refusal(where, "the picture has " + w + " x " + h + " px, too many to be held in memory", "save it smaller", e);
        }
        byte[] row = new byte[w * n];
        boolean lying = orientation >= 5;
        for (int y = 0; y < h; y++) {
            rows.next(row);
            if (orientation == 1) {
                System.arraycopy(row, 0, data, y * w * n, w * n);
                continue;
            }
            for (int x = 0; x < w; x++) {
                int toX = switch (orientation) {
                    case 2, 3 -> w - 1 - x;
                    case 4 -> x;
                    case 5, 8 -> y;
                    default -> h - 1 - y;
                };
                int toY = switch (orientation) {
                    case 2 -> y;
                    case 3, 4 -> h - 1 - y;
                    case 5, 6 -> x;
                    default -> w - 1 - x;
                };
                System.arraycopy(row, x * n, data, (toY * (lying ? h : w) + toX) * n, n);
            }
        }
        return new Picture(lying ? h : w, lying ? w : h, n, data);
    }

    @Override
    public int widthPx() {
        return picture.widthPx();
    }

    @Override
    public int heightPx() {
        return picture.heightPx();
    }

    @Override
    public int channels() {
        return picture.channels();
    }

    @Override
    public void next(byte[] target) {
        picture.row(row++, target);
    }

    @Override
    public void close() {
        // nothing is open
    }
}
