package saddlebar.colour;

import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * A solid of fired paint, enamel or stain: the share of the glass's light that it lets through.
 *
 * <p>Thicker films by Beer and Lambert at every wavelength. That holds for clear enamels; paint with scattering pigment darkens a little less than
 * told when thick, and coverage in real firings is uneven: measure a wedge where it matters.
 *
 * @param name          as told to people
 * @param transmittance of the solid over bare glass, 0 to 1: light through painted glass / light through bare glass
 * @param firedUm       fired thickness at which that was measured, 0.1 to 1000 um
 */
public record PaintFilm(String name, Spectrum transmittance, double firedUm) {
    /** Fired thickness taken where none is known. Studio setting, no source: only ratios to it matter. */
    public static final double USUAL_UM = 10;

    public PaintFilm {
        Require.text("name", name);
        Objects.requireNonNull(transmittance, "transmittance").requireShares("transmittance");
        Require.within("firedUm", firedUm, 0.1, 1000);
    }

    /**
     * A paint of which only the colour of a solid over clear glass in daylight (D65) is known; with a plausible spectrum.
     *
     * @throws saddlebar.model.problem.Refusal if nothing that only takes light away can have the colour
     */
    public static PaintFilm coloured(String name, Srgb onScreen) {
        return new PaintFilm(name, PlausibleSpectrum.of(name, onScreen), USUAL_UM);
    }

    public PaintFilm atThickness(double um) {
        Require.within("um", um, 0.1, 1000);
        double ratio = um / firedUm;
        return ratio == 1 ? this : new PaintFilm(name, transmittance.map(t -> StrictMath.pow(t, ratio)), um);
    }

    /** Visual density of the solid under a light: -log10 of its luminous transmittance; positive infinity where nothing passes. */
    public double density(Light light) {
        return -StrictMath.log10(light.luminousShare(transmittance));
    }
}
