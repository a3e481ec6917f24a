package saddlebar.colour;

import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * Clear coloured glass: what a sheet of one thickness lets through, air to air, and from that any other thickness. Each face loses R =
 * ((n-1)/(n+1))^2 to reflection (Fresnel, light square to the face), both with their inter-reflections (1-R)/(1+R); between them T falls by Beer and
 * Lambert at every wavelength: T(d) = F tau^(d/d0), F = (1-R)/(1+R), tau = T(d0)/F.
 *
 * <p>Limits: opal and streaky glass scatter and do not follow Beer and Lambert; texture changes what is seen through, hardly the colour. A reading
 * brighter than F (a scanner's white, or rounding) is kept as it is at every thickness.
 *
 * @param name            as told to people
 * @param transmittance   0 to 1, measured at {@code thicknessMm}, faces included
 * @param thicknessMm     thickness of the measured sheet, 0.1 to 100
 * @param refractiveIndex n, 1 to 2.5; 1.52 for soda-lime glass
 */
public record Glass(String name, Spectrum transmittance, double thicknessMm, double refractiveIndex) {
    /** Soda-lime sheet glass. */
    public static final double SODA_LIME_INDEX = 1.52;

    public Glass {
        Require.text("name", name);
        Objects.requireNonNull(transmittance, "transmittance").requireShares("transmittance");
        Require.within("thicknessMm", thicknessMm, 0.1, 100);
        Require.within("refractiveIndex", refractiveIndex, 1, 2.5);
    }

    /** Soda-lime glass of a measured spectrum. */
    public static Glass measured(String name, Spectrum transmittance, double thicknessMm) {
        return new Glass(name, transmittance, thicknessMm, SODA_LIME_INDEX);
    }

    /**
     * Soda-lime glass of which only the colour in daylight (D65) is known: with a plausible spectrum of exactly that colour.
     *
     * @throws saddlebar.model.problem.Refusal if nothing that only takes light away can have the colour
     */
    public static Glass coloured(String name, Lab underD65, double thicknessMm) {
        return measured(name, PlausibleSpectrum.of(name, underD65.xyz(Light.D65.white())), thicknessMm);
    }

    /** As {@link #coloured(String, Lab, double)}, from the colour on a screen beside white. */
    public static Glass coloured(String name, Srgb onScreen, double thicknessMm) {
        return measured(name, PlausibleSpectrum.of(name, onScreen), thicknessMm);
    }

    /** Share of the light that one face reflects. */
    public double faceLoss() {
        double r = (refractiveIndex - 1) / (refractiveIndex + 1);
        return r * r;
    }

    /** The most that a sheet without any colour lets through: (1-R)/(1+R). */
    public double clearLimit() {
        return (1 - faceLoss()) / (1 + faceLoss());
    }

    /** What the body of the sheet lets through without its faces: tau. */
    public Spectrum internal() {
        double limit = clearLimit();
        return transmittance.map(t -> Math.min(1, t / limit));
    }

    /** The same glass as a sheet of another thickness. */
    public Glass atThickness(double mm) {
        Require.within("mm", mm, 0.1, 100);
        if (mm == thicknessMm) {
            return this;
        }
        double limit = clearLimit();
        double ratio = mm / thicknessMm;
        Spectrum other = transmittance.map(t -> t >= limit ? t : limit * StrictMath.pow(t / limit, ratio));
        return new Glass(name, other, mm, refractiveIndex);
    }
}
