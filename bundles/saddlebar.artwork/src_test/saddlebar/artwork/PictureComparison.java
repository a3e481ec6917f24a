package saddlebar.artwork;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Locale;

/**
 * How far two pictures of the same drawing lie apart, for a person who looks at them side by side. A pixel of one is found in the other if each of its three
 * colours lies within {@value #TOLERANCE} of 255 of what the nine pixels around the same place span there; the distance is the share of the pixels that are
 * not found, in the picture where that share is larger, so that both a thing that is missing and one too many count. Programs round edges to pixels in their
 * own ways, always by less than a pixel, and mix colours with an error of a few steps: neither is a difference of the drawing. A thing that is left out, moved
 * by more than a pixel or painted in another colour counts with its whole area.
 *
 * @param distance share of the pixels, 0 to 1
 * @param tone     greatest difference of the means of red, green and blue, as a share of white
 */
public record PictureComparison(double distance, double tone) {
    /** About a tenth of the way from black to white: less is not seen in a drawing. */
    static final int TOLERANCE = 24;

    public static PictureComparison of(BufferedImage ours, BufferedImage theirs) {
        int width = theirs.getWidth();
        int height = theirs.getHeight();
        if (ours.getWidth() != width || ours.getHeight() != height) {
            throw new IllegalArgumentException("pictures of different sizes");
        }
        int[] a = onWhite(ours);
        int[] b = onWhite(theirs);
        double tone = 0;
        for (int shift = 0; shift < 24; shift += 8) {
            long sum = 0;
            for (int i = 0; i < a.length; i++) {
                sum += (a[i] >> shift & 0xFF) - (b[i] >> shift & 0xFF);
            }
            tone = Math.max(tone, Math.abs((double) sum / a.length / 255));
        }
        return new PictureComparison(Math.max(notFound(a, b, width, height), notFound(b, a, width, height)), tone);
    }

    private static int[] onWhite(BufferedImage picture) {
        BufferedImage white = new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = white.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, white.getWidth(), white.getHeight());
        g.drawImage(picture, 0, 0, null);
        g.dispose();
        return white.getRGB(0, 0, white.getWidth(), white.getHeight(), null, 0, white.getWidth());
    }

    private static double notFound(int[] picture, int[] other, int width, int height) {
        int lost = 0;
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                lost += isFound(picture[y * width + x], other, x, y, width, height) ? 0 : 1;
            }
        }
        return (double) lost / picture.length;
    }

    private static boolean isFound(int rgb, int[] other, int x, int y, int width, int height) {
        for (int shift = 0; shift < 24; shift += 8) {
            int least = 255;
            int most = 0;
            for (int j = Math.max(0, y - 1); j <= Math.min(height - 1, y + 1); j++) {
                for (int i = Math.max(0, x - 1); i <= Math.min(width - 1, x + 1); i++) {
                    int value = other[j * width + i] >> shift & 0xFF;
                    least = Math.min(least, value);
                    most = Math.max(most, value);
                }
            }
            int own = rgb >> shift & 0xFF;
            if (own < least - TOLERANCE || own > most + TOLERANCE) {
                return false;
            }
        }
        return true;
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.2f %% of the pixels are not found, tone %.2f points apart", 100 * distance, 100 * tone);
    }
}
