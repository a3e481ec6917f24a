package saddlebar.stencil.quality;

import java.util.Objects;

/**
 * One tone of a recipe, measured.
 *
 * @param asked   coverage asked for
 * @param painted coverage that came
 * @param quality its measures
 * @param radial  power of each annulus, as {@link Spectrum#radial}
 */
public record PatchQuality(double asked, double painted, ToneQuality quality, double[] radial) {
    public PatchQuality {
        Objects.requireNonNull(quality, "quality");
        radial = radial.clone();
    }

    @Override
    public double[] radial() {
        return radial.clone();
    }
}
