package saddlebar.artwork.drawing;

import java.awt.geom.AffineTransform;

/**
 * A picture as a paint: enlarged, its pixels run into each other (bilinear) or not; reduced, it is first halved until the rest is less than
 * about one and a half pixels a device pixel, and of that rest, which may differ across and down, the mean of several places in the device pixel is taken.
 */
final class PhotoPaint extends PixelPaint {
    private static final int MOST_PLACES = 8;

    private final Picture picture;
    private final AffineTransform back;
    private final boolean smooth;
    /** Places that are looked at in a device pixel, across and down. */
    private final int across;
    private final int down;

    /** @param back from device px to pixels of the picture */
    PhotoPaint(Picture whole, AffineTransform back, boolean smooth) {
        super(whole.opaque());
        double perPx = Math.sqrt(Math.abs(back.getDeterminant()));
        int halvings = perPx > 1 ? (int) Math.rint(Math.log(perPx) / Math.log(2)) : 0;
        Picture small = whole.halved(halvings);
        this.picture = small;
        this.back = AffineTransform.getScaleInstance((double) small.widthPx() / whole.widthPx(), (double) small.heightPx() / whole.heightPx());
        this.back.concatenate(back);
        double stepAcross = Math.hypot(this.back.getScaleX(), this.back.getShearY());
        double stepDown = Math.hypot(this.back.getShearX(), this.back.getScaleY());
        this.across = places(stepAcross);
        this.down = places(stepDown);
        this.smooth = smooth || halvings > 0 || across * down > 1;
    }

    private static int places(double step) {
        return step <= 1 + 1e-3 ? 1 : (int) Math.min(MOST_PLACES, Math.ceil(2 * step));
    }

    @Override
    void row(int x, int y, int[] argb, int from, int count) {
        double rowU = back.getShearX() * (y + 0.5) + back.getTranslateX();
        double rowV = back.getScaleY() * (y + 0.5) + back.getTranslateY();
        for (int i = 0; i < count; i++) {
            double u = rowU + back.getScaleX() * (x + i + 0.5);
            double v = rowV + back.getShearY() * (x + i + 0.5);
            if (across * down > 1) {
                argb[from + i] = mean(x + i, y);
                continue;
            }
            argb[from + i] = smooth ? between(u - 0.5, v - 0.5) : picture.argb((int) Math.floor(u), (int) Math.floor(v));
        }
    }

    private int mean(int x, int y) {
        long alpha = 0;
        long red = 0;
        long green = 0;
        long blue = 0;
        for (int j = 0; j < down; j++) {
            for (int i = 0; i < across; i++) {
                double px = x + (i + 0.5) / across;
                double py = y + (j + 0.5) / down;
                int colour = between(back.getScaleX() * px + back.getShearX() * py + back.getTranslateX() - 0.5,
                        back.getShearY() * px + back.getScaleY() * py + back.getTranslateY() - 0.5);
                int a = colour >>> 24;
                alpha += a;
                red += (long) a * (colour >> 16 & 0xFF);
                green += (long) a * (colour >> 8 & 0xFF);
                blue += (long) a * (colour & 0xFF);
            }
        }
        if (alpha == 0) {
            return 0;
        }
        int count = across * down;
        return (int) ((alpha + count / 2) / count) << 24 | (int) ((red + alpha / 2) / alpha) << 16 | (int) ((green + alpha / 2) / alpha) << 8
                | (int) ((blue + alpha / 2) / alpha);
    }

    private int between(double u, double v) {
        int x = (int) Math.floor(u);
        int y = (int) Math.floor(v);
        int right = (int) Math.rint((u - x) * 256);
        int down = (int) Math.rint((v - y) * 256);
        int a = picture.argb(x, y);
        if (right == 0 && down == 0) {
            return a;
        }
        int b = picture.argb(x + 1, y);
        int c = picture.argb(x, y + 1);
        int d = picture.argb(x + 1, y + 1);
        if (a == b && a == c && a == d) {
            return a;
        }
        int wa = (256 - right) * (256 - down);
        int wb = right * (256 - down);
        int wc = (256 - right) * down;
        int wd = right * down;
        if (picture.opaque()) {
            int mixed = 0xFF000000;
            for (int shift = 0; shift < 24; shift += 8) {
                int sum = wa * (a >>> shift & 0xFF) + wb * (b >>> shift & 0xFF) + wc * (c >>> shift & 0xFF) + wd * (d >>> shift & 0xFF);
                mixed |= (sum + 0x8000 >>> 16) << shift;
            }
            return mixed;
        }
        long aa = (long) wa * (a >>> 24);
        long ab = (long) wb * (b >>> 24);
        long ac = (long) wc * (c >>> 24);
        long ad = (long) wd * (d >>> 24);
        long alpha = aa + ab + ac + ad;
        if (alpha == 0) {
            return 0;
        }
        int mixed = (int) (alpha + 0x8000 >>> 16) << 24;
        for (int shift = 0; shift < 24; shift += 8) {
            long sum = aa * (a >>> shift & 0xFF) + ab * (b >>> shift & 0xFF) + ac * (c >>> shift & 0xFF) + ad * (d >>> shift & 0xFF);
            mixed |= (int) ((sum + alpha / 2) / alpha) << shift;
        }
        return mixed;
    }
}
