package saddlebar.production.light;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * How much of the glass a layer covers, as a picture over a rectangle in mm: 0 bare, 255 covered wholly. It holds halved copies of itself, each
 * value the mean of four, so that a layer seen from far shows its mean tone and not a chance choice of its pixels. Immutable; one third more
 * memory than the picture.
 */
public final class Coverage {
    private record Level(int widthPx, int heightPx, byte[] covered) {
    }

    private final RectMm area;
    private final List<Level> levels = new ArrayList<>();

    /**
     * @param area     where the picture lies
     * @param widthPx  pixels across, at least 1
     * @param heightPx pixels down, at least 1
     * @param covered  row by row from the top, 0 bare to 255 covered; copied
     */
    public Coverage(RectMm area, int widthPx, int heightPx, byte[] covered) {
        this.area = Objects.requireNonNull(area, "area");
        Require.within("widthPx", widthPx, 1, 1 << 20);
        Require.within("heightPx", heightPx, 1, 1 << 20);
        if (covered.length != (long) widthPx * heightPx) {
            throw new IllegalArgumentException("covered must hold " + (long) widthPx * heightPx + " values but holds " + covered.length);
        }
        levels.add(new Level(widthPx, heightPx, covered.clone()));
        for (Level last = levels.get(0); last.widthPx > 1 || last.heightPx > 1; last = levels.get(levels.size() - 1)) {
            levels.add(halved(last));
        }
    }

    public RectMm area() {
        return area;
    }

    public int widthPx() {
        return levels.get(0).widthPx;
    }

    public int heightPx() {
        return levels.get(0).heightPx;
    }

    /** Covered share at a pixel of the picture itself, 0 to 255. */
    public int at(int xPx, int yPx) {
        Level whole = levels.get(0);
        return whole.covered[yPx * whole.widthPx + xPx] & 0xff;
    }

    /**
     * The level to sample when a device pixel is so large: its pixels are no smaller than half and no larger than one device pixel, where the
     * picture is fine enough.
     */
    int levelFor(double mmPerDevicePx) {
        double ownMm = Math.max(area.widthMm() / widthPx(), area.heightMm() / heightPx());
        int level = 0;
        while (level + 1 < levels.size() && ownMm * (2L << level) <= mmPerDevicePx * 1.0001) {
            level++;
        }
        return level;
    }

    /**
     * A row of covered shares, 0 to 255, for device pixels whose centres lie at {@code fromXMm + i * stepMm} on the line {@code yMm}; between
     * pixels of the picture the values go over linearly, outside its area they are 0.
     */
    void sampleRow(int level, double fromXMm, double stepMm, double yMm, int[] into, int count) {
        Level picture = levels.get(level);
        double y = (yMm - area.topMm()) / area.heightMm() * picture.heightPx - 0.5;
        if (!(y > -1 && y < picture.heightPx)) {
            Arrays.fill(into, 0, count, 0);
            return;
        }
        int y0 = (int) Math.floor(y);
        int down = (int) ((y - y0) * 256);
        int upper = Math.max(0, y0) * picture.widthPx;
        int lower = Math.min(picture.heightPx - 1, y0 + 1) * picture.widthPx;
        double step = stepMm / area.widthMm() * picture.widthPx;
        double x = (fromXMm - area.leftMm()) / area.widthMm() * picture.widthPx - 0.5;
        byte[] covered = picture.covered;
        int lastX = picture.widthPx - 1;
        for (int i = 0; i < count; i++, x += step) {
            if (!(x > -0.5 - 1e-9 && x < lastX + 0.5 + 1e-9)) {
                into[i] = 0;
                continue;
            }
            int x0 = (int) Math.floor(x);
            int across = (int) ((x - x0) * 256);
            int left = Math.max(0, x0);
            int right = Math.min(lastX, x0 + 1);
            int above = (covered[upper + left] & 0xff) * (256 - across) + (covered[upper + right] & 0xff) * across;
            int below = (covered[lower + left] & 0xff) * (256 - across) + (covered[lower + right] & 0xff) * across;
            into[i] = above * (256 - down) + below * down + (1 << 15) >> 16;
        }
    }

    private static Level halved(Level from) {
        int width = (from.widthPx + 1) / 2;
        int height = (from.heightPx + 1) / 2;
        byte[] half = new byte[width * height];
        for (int y = 0; y < height; y++) {
            int upper = 2 * y * from.widthPx;
            int lower = Math.min(2 * y + 1, from.heightPx - 1) * from.widthPx;
            for (int x = 0; x < width; x++) {
                int left = 2 * x;
                int right = Math.min(left + 1, from.widthPx - 1);
                int sum = (from.covered[upper + left] & 0xff) + (from.covered[upper + right] & 0xff) + (from.covered[lower + left] & 0xff)
                        + (from.covered[lower + right] & 0xff);
                half[y * width + x] = (byte) (sum + 2 >> 2);
            }
        }
        return new Level(width, height, half);
    }
}
