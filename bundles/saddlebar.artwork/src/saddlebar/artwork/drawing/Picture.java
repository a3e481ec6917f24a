package saddlebar.artwork.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Pixels in memory, as small as they allow: gray, gray and alpha, colour, colour and alpha, 8 bit each, not premultiplied. Makes halved
 * copies of itself as they are needed, so that a picture shown small is a mean and not a sample.
 */
public final class Picture {
    private final int widthPx;
    private final int heightPx;
    private final int channels;
    private final byte[] data;
    private final List<Picture> halves = new ArrayList<>(); // guarded by this

    /**
     * @param channels 1 gray, 2 gray and alpha, 3 red green blue, 4 with alpha
     * @param data     row by row; kept, not copied
     */
    public Picture(int widthPx, int heightPx, int channels, byte[] data) {
        if (widthPx < 1 || heightPx < 1 || channels < 1 || channels > 4 || data.length < (long) widthPx * heightPx * channels) {
            throw new IllegalArgumentException("a picture of " + widthPx + " x " + heightPx + " px and " + channels + " channels needs more than "
                    + data.length + " bytes");
        }
        this.widthPx = widthPx;
        this.heightPx = heightPx;
        this.channels = channels;
        this.data = data;
    }

    public int widthPx() {
        return widthPx;
    }

    public int heightPx() {
        return heightPx;
    }

    public int channels() {
        return channels;
    }

    boolean opaque() {
        return channels % 2 != 0;
    }

    /** The pixel as 0xAARRGGBB; beyond the edge the nearest pixel of it. */
    public int argb(int x, int y) {
        int column = x < 0 ? 0 : Math.min(x, widthPx - 1);
        int row = y < 0 ? 0 : Math.min(y, heightPx - 1);
        int at = (row * widthPx + column) * channels; // fits: the array holds it
        int first = data[at] & 0xFF;
        return switch (channels) {
            case 1 -> 0xFF000000 | first * 0x010101;
            case 2 -> data[at + 1] << 24 | first * 0x010101;
            case 3 -> 0xFF000000 | first << 16 | (data[at + 1] & 0xFF) << 8 | data[at + 2] & 0xFF;
            default -> data[at + 3] << 24 | first << 16 | (data[at + 1] & 0xFF) << 8 | data[at + 2] & 0xFF;
        };
    }

    /** Copies the samples of one row. */
    public void row(int y, byte[] target) {
        System.arraycopy(data, y * widthPx * channels, target, 0, widthPx * channels);
    }

    /** This picture halved so many times, each pixel the mean of four (weighted by how opaque they are). */
    synchronized Picture halved(int times) {
        Picture picture = times > 0 && !halves.isEmpty() ? halves.get(Math.min(times, halves.size()) - 1) : this;
        for (int done = Math.min(times, halves.size()); done < times; done++) {
            if (picture.widthPx == 1 && picture.heightPx == 1) {
                return picture;
            }
            picture = picture.half();
            halves.add(picture);
        }
        return picture;
    }

    private Picture half() {
        int w = (widthPx + 1) / 2;
        int h = (heightPx + 1) / 2;
        byte[] small = new byte[w * h * channels];
        int colours = channels - (opaque() ? 0 : 1);
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                int to = (y * w + x) * channels;
                int[] at = {pixel(2 * x, 2 * y), pixel(2 * x + 1, 2 * y), pixel(2 * x, 2 * y + 1), pixel(2 * x + 1, 2 * y + 1)};
                int alpha = 0;
                for (int four : at) {
                    alpha += opaque() ? 255 : data[four + colours] & 0xFF;
                }
                for (int c = 0; c < colours; c++) {
                    long sum = 0;
                    for (int four : at) {
                        sum += (data[four + c] & 0xFF) * (opaque() ? 255 : data[four + colours] & 0xFF);
                    }
                    small[to + c] = (byte) (alpha == 0 ? 0 : (sum + alpha / 2) / alpha);
                }
                if (!opaque()) {
                    small[to + colours] = (byte) ((alpha + 2) / 4);
                }
            }
        }
        return new Picture(w, h, channels, small);
    }

    private int pixel(int x, int y) {
        return (Math.min(y, heightPx - 1) * widthPx + Math.min(x, widthPx - 1)) * channels;
    }
}
