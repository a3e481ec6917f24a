package saddlebar.colour;

import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * An approximation, for quick looks only: the thickness rule of {@link Glass} on the three linear values of a screen colour instead of on every
 * wavelength. Exact for neutral glass; deep colours come out too pure and turn in hue. Where a result is kept or told, use {@link Glass}.
 *
 * @param colour          linear light through the sheet, faces included, 0 to 1 each
 * @param thicknessMm     thickness at which the colour was taken, 0.1 to 100
 * @param refractiveIndex n, 1 to 2.5
 */
public record ChannelGlass(Srgb colour, double thicknessMm, double refractiveIndex) {
    public ChannelGlass {
        Objects.requireNonNull(colour, "colour");
        Require.within("red", colour.red(), 0, 1);
        Require.within("green", colour.green(), 0, 1);
        Require.within("blue", colour.blue(), 0, 1);
        Require.within("thicknessMm", thicknessMm, 0.1, 100);
        Require.within("refractiveIndex", refractiveIndex, 1, 2.5);
    }

    public Srgb atThickness(double mm) {
        Require.within("mm", mm, 0.1, 100);
        return new Srgb(at(colour.red(), mm), at(colour.green(), mm), at(colour.blue(), mm));
    }

    private double at(double share, double mm) {
        Glass oneChannel = new Glass("one channel", Spectrum.flat(share), thicknessMm, refractiveIndex);
        return oneChannel.atThickness(mm).transmittance().at(0);
    }
}
