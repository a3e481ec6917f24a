package saddlebar.production.light;

import java.util.Objects;

/**
 * What is known of a paint besides the colour of its solid.
 *
 * @param stain         a silver stain of which no colour is known
 * @param transmittance its measured spectrum as the studio's table has it, see {@link SpectrumText}; empty if none was measured
 */
public record FilmLook(boolean stain, String transmittance) {
    /** Its colour is all. */
    public static final FilmLook PLAIN = new FilmLook(false, "");

    public FilmLook {
        Objects.requireNonNull(transmittance, "transmittance");
    }
}
