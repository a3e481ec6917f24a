package saddlebar.colour.picture;

import saddlebar.colour.Srgb;

/**
 * How a picture looks to people who lack one kind of cone; about one man in twelve has a weak or lacking red-green sense. Matrices on linear sRGB,
 * full severity. Source: Machado, Oliveira, Fernandes, A physiologically-based model for simulation of color vision deficiency, IEEE Trans.
 * Visualization and Computer Graphics 15(6), 2009, 1291-1298, and its table of matrices; digits read in several public transcriptions. A help for
 * seeing what may be confused, no medical statement.
 */
public enum ColourVision {
    /** All three kinds of cone. */
    USUAL(1, 0, 0, 0, 1, 0, 0, 0, 1),
    /** No long-wave cones: red is dark. */
    PROTANOPE(0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998),
    /** No middle-wave cones. */
    DEUTERANOPE(0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
    /** No short-wave cones; rare. */
    TRITANOPE(1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900);

    private final double[] m;

    ColourVision(double... m) {
        this.m = m;
    }

    /** What this eye cannot tell from the colour, each value brought to 0 to 1. */
    public Srgb seen(Srgb colour) {
        return new Srgb(row(0, colour.red(), colour.green(), colour.blue()), row(3, colour.red(), colour.green(), colour.blue()),
                row(6, colour.red(), colour.green(), colour.blue())).clipped();
    }

    /** The whole picture; values above 1 stay so. The given picture is not changed. */
    public LinearPicture seen(LinearPicture picture) {
        float[] from = picture.rgb();
        float[] to = new float[from.length];
        for (int i = 0; i < from.length; i += 3) {
            for (int channel = 0; channel < 3; channel++) {
                to[i + channel] = (float) Math.max(0, row(3 * channel, from[i], from[i + 1], from[i + 2]));
            }
        }
        return new LinearPicture(picture.width(), picture.height(), to);
    }

    private double row(int first, double red, double green, double blue) {
        return m[first] * red + m[first + 1] * green + m[first + 2] * blue;
    }
}
