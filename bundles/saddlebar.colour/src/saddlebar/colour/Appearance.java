package saddlebar.colour;

import java.util.Objects;

/**
 * What glass looks like under a light to an eye that has got used to it.
 *
 * @param light   behind the glass
 * @param xyz     Y = 100 for the bare light
 * @param lab     CIELAB beside the bare light
 * @param screen  for an sRGB screen beside its white: the light's white is made the screen's by {@link Bradford}
 */
public record Appearance(Light light, Xyz xyz, Lab lab, ScreenColour screen) {
    public Appearance {
        Objects.requireNonNull(light, "light");
        Objects.requireNonNull(xyz, "xyz");
        Objects.requireNonNull(lab, "lab");
        Objects.requireNonNull(screen, "screen");
    }

    /** @param transmittance of all that stands before the light, 0 to 1 */
    public static Appearance of(Spectrum transmittance, Light light) {
        transmittance.requireShares("transmittance");
        Xyz white = light.white();
        Xyz xyz = light.through(transmittance);
        return new Appearance(light, xyz, Lab.of(xyz, white), ScreenColour.of(new Bradford(white, Srgb.WHITE).adapt(xyz)));
    }

    /** Luminous transmittance, 0 to 1. */
    public double transmittance() {
        return xyz.y() / 100;
    }

    /** For an eye still used to daylight that looks at this light: lamps show yellow, dusk shows blue. */
    public ScreenColour unadapted() {
        return ScreenColour.of(new Bradford(Light.D65.white(), Srgb.WHITE).adapt(xyz));
    }
}
