package saddlebar.colour.picture;

import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * A picture in linear light: red, green, blue of sRGB primaries before any coding, 1 in full, above 1 where brighter than the screen.
 *
 * @param width  px, at least 1
 * @param height px, at least 1
 * @param rgb    rows top first, three values a px, finite and at least 0; not copied, since pictures are large: whoever hands it over no longer
 *               writes to it
 */
public record LinearPicture(int width, int height, float[] rgb) {
    public LinearPicture {
        Require.within("width", width, 1, 1 << 20);
        Require.within("height", height, 1, 1 << 20);
        Objects.requireNonNull(rgb, "rgb");
        if (rgb.length != 3L * width * height) {
            throw new IllegalArgumentException("rgb has " + rgb.length + " values for " + width + " x " + height + " px");
        }
    }

    public float at(int x, int y, int channel) {
        return rgb[3 * (y * width + x) + channel];
    }
}
