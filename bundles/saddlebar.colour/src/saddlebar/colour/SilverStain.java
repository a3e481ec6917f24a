package saddlebar.colour;

import saddlebar.model.units.Require;

/**
 * Silver stain as an absorption of its own: tiny silver particles in the skin of the glass take away violet and blue, more of it with every firing,
 * so that the colour runs from lemon to amber to orange. One band in photon energy E = 1239.84/nm eV: density D = D0 (w/2)^2 / ((E - E0)^2 + (w/2)^2)
 * (the shape of a small metal sphere's resonance: Kreibig and Vollmer, Optical Properties of Metal Clusters, 1995; from memory).
 *
 * <p>Sources for the place of the band: about 410 nm in silver-exchanged and annealed soda-lime-silica glass, 425 nm after exchange in nitrate
 * (abstracts of published measurements); deep stains on float glass measured to 450. Width and density of a stain are studio settings
 * without a source. Where a stained sample was measured, use its colour or spectrum as a {@link PaintFilm} instead.
 *
 * @param peakNm  middle of the band, 390 to 460 nm
 * @param widthEv full width at half height in eV, 0.2 to 1.5
 * @param density density at the middle, 0 to 6
 */
public record SilverStain(double peakNm, double widthEv, double density) {
    private static final double NM_EV = 1239.84;

    public SilverStain {
        Require.within("peakNm", peakNm, 390, 460);
        Require.within("widthEv", widthEv, 0.2, 1.5);
        Require.within("density", density, 0, 6);
    }

    /** A stain of the usual band and a density. */
    public static SilverStain ofDensity(double density) {
        return new SilverStain(420, 0.7, density);
    }

    /** One solid of it. */
    public PaintFilm film(String name) {
        double middle = NM_EV / peakNm;
        double half = widthEv / 2;
        return new PaintFilm(name, Spectrum.each(band -> {
            double off = NM_EV / Spectrum.nmOf(band) - middle;
            return StrictMath.pow(10, -density * half * half / (off * off + half * half));
        }), PaintFilm.USUAL_UM);
    }
}
