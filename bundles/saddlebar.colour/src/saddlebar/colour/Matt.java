package saddlebar.colour;

import java.util.Objects;
import java.util.OptionalDouble;

import saddlebar.model.units.Require;

/**
 * A paint printed in dots.
 *
 * @param film     what a solid of it lets through
 * @param coverage share of the glass that the fired paint truly covers, 0 to 1, after dot gain
 */
public record Matt(PaintFilm film, double coverage) {
    private static final double ROUNDING = 1e-12;

    public Matt {
        Objects.requireNonNull(film, "film");
        Require.within("coverage", coverage, 0, 1);
    }

    /**
     * What a nominal coverage truly covers if nothing was measured: a + 4 g a (1-a). Common practice, no source; print and measure a step wedge
     * instead.
     *
     * @param nominal    coverage of the stencil, 0 to 1
     * @param gainAtHalf g, gain at one half, -0.25 to 0.25 (steeper would not be monotone)
     */
    public static double gained(double nominal, double gainAtHalf) {
        Require.within("nominal", nominal, 0, 1);
        Require.within("gainAtHalf", gainAtHalf, -0.25, 0.25);
        return nominal + 4 * gainAtHalf * nominal * (1 - nominal);
    }

    /**
     * The true coverage at which a paint on a glass shows a luminous transmittance: a = (T0 - T)/(T0 - Ts), T0 bare, Ts solid, exact since light adds
     * up over the area.
     *
     * @param wanted T, 0 to 1
     * @return empty if the paint cannot go so dark on this glass, or the glass is not so light
     */
    public static OptionalDouble coverageFor(Spectrum plain, PaintFilm film, Light light, double wanted) {
        Require.within("wanted", wanted, 0, 1);
        double bare = light.luminousShare(plain);
        double solid = light.luminousShare(plain.times(film.transmittance()));
        boolean reached = wanted <= bare + ROUNDING && wanted >= solid - ROUNDING && bare - solid > ROUNDING;
        return reached ? OptionalDouble.of(Math.max(0, Math.min(1, (bare - wanted) / (bare - solid)))) : OptionalDouble.empty();
    }
}
