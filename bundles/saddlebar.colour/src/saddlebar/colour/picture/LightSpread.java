package saddlebar.colour.picture;

import saddlebar.model.units.Require;
import saddlebar.model.work.Work;

/**
 * Light that spreads round bright glass in the eye and the air, so that strong colours eat into lead and paint: for the picture only, no measure of
 * anything. A share of each channel's light is laid round its place, half of it near (radius s), half of it far (3 s), as bell curves each made of
 * three running means (Wells, Efficient synthesis of Gaussian filters by cascaded uniform filters, IEEE Trans. PAMI 8, 1986). No light is lost: at
 * the edge of the picture it is thrown back. That blue glass spreads more than red is an old observation of glaziers; the shares are settings of the
 * studio, without a source.
 *
 * @param redShare   share of the red light that spreads, 0 to 1
 * @param greenShare of the green
 * @param blueShare  of the blue
 * @param radiusPx   standard deviation of the near part in px, 0 to 1000
 */
public record LightSpread(double redShare, double greenShare, double blueShare, double radiusPx) {
    public static final LightSpread NONE = new LightSpread(0, 0, 0, 0);
    private static final int PASSES = 3;
    private static final double FAR = 3;

    public LightSpread {
        Require.within("redShare", redShare, 0, 1);
        Require.within("greenShare", greenShare, 0, 1);
        Require.within("blueShare", blueShare, 0, 1);
        Require.within("radiusPx", radiusPx, 0, 1000);
    }

    /** Blue spreads most, red least; at a share of 0.1 a lead line of two radii stays dark. */
    public static LightSpread usual(double radiusPx) {
        return new LightSpread(0.06, 0.08, 0.12, radiusPx);
    }

    /** The same picture with its light spread; one thread; the given picture is not changed. Asks {@code work} whether to stop, tells it no units. */
    public LinearPicture spread(LinearPicture picture, Work work) {
        float[] rgb = picture.rgb().clone();
        double[] shares = {redShare, greenShare, blueShare};
        for (int channel = 0; channel < 3; channel++) {
            if (shares[channel] > 0 && radiusPx > 0) {
                float[] near = channel(picture, channel);
                float[] far = near.clone();
                blur(near, picture.width(), picture.height(), radiusPx, work);
                blur(far, picture.width(), picture.height(), FAR * radiusPx, work);
                for (int i = 0; i < near.length; i++) {
                    int at = 3 * i + channel;
                    rgb[at] = (float) ((1 - shares[channel]) * rgb[at] + shares[channel] / 2 * (near[i] + (double) far[i]));
                }
            }
        }
        return new LinearPicture(picture.width(), picture.height(), rgb);
    }

    private static float[] channel(LinearPicture picture, int channel) {
        float[] values = new float[picture.width() * picture.height()];
        for (int i = 0; i < values.length; i++) {
            values[i] = picture.rgb()[3 * i + channel];
        }
        return values;
    }

    private static void blur(float[] values, int width, int height, double deviation, Work work) {
        int[] halves = halfWidths(deviation);
        for (int y = 0; y < height; y++) {
            work.checkpoint();
            for (int half : halves) {
                mean(values, y * width, 1, width, half);
            }
        }
        for (int x = 0; x < width; x++) {
            work.checkpoint();
            for (int half : halves) {
                mean(values, x, width, height, half);
            }
        }
    }

    /** Three odd means whose variances add up as nearly as whole px allow: a mean over 2 h + 1 has the variance h (h + 1) / 3. */
    static int[] halfWidths(double deviation) {
        int[] halves = new int[PASSES];
        double left = 3 * deviation * deviation;
        for (int pass = 0; pass < PASSES; pass++) {
            double wanted = Math.max(0, left / (PASSES - pass));
            halves[pass] = (int) Math.rint((Math.sqrt(1 + 4 * wanted) - 1) / 2);
            left -= halves[pass] * (halves[pass] + 1.0);
        }
        return halves;
    }

    /** Running mean along a row or column, mirrored at the ends as often as it takes: every px gives away exactly what it has. */
    private static void mean(float[] values, int from, int step, int count, int half) {
        if (half == 0) {
            return;
        }
        float[] line = new float[count];
        for (int i = 0; i < count; i++) {
            line[i] = values[from + i * step];
        }
        double sum = 0;
        for (int i = -half; i <= half; i++) {
            sum += line[mirrored(i, count)];
        }
        for (int i = 0; i < count; i++) {
            values[from + i * step] = (float) Math.max(0, sum / (2 * half + 1));
            sum += line[mirrored(i + half + 1, count)] - (double) line[mirrored(i - half, count)];
        }
    }

    /** The px beyond the edge is the edge px again, and so on back. */
    private static int mirrored(int i, int count) {
        int round = Math.floorMod(i, 2 * count);
        return round < count ? round : 2 * count - 1 - round;
    }
}
