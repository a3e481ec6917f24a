package saddlebar.production.light;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

import saddlebar.colour.Glass;
import saddlebar.colour.PaintFilm;
import saddlebar.colour.PlausibleSpectrum;
import saddlebar.colour.SilverStain;
import saddlebar.colour.Spectrum;
import saddlebar.colour.Srgb;
import saddlebar.model.problem.Refusal;

/**
 * The spectra of the glasses and paints that have been looked at, each reckoned once. Where a spectrum was measured it is that one, else a plausible one of
 * the colour; where no glass can have the colour, or what was measured cannot be read, there is none, and the colour alone is shown. Safe for several
 * threads; a first look costs some milliseconds a colour, so ask on a thread of the background.
 */
public final class ColourShelf {
    /** More than any studio has; then all are forgotten and reckoned again when asked for. */
    private static final int MOST = 4096;
    /** Of one usual firing (studio setting, no source). */
    private static final double USUAL_STAIN_DENSITY = 1.1;

    private record FilmKey(PaintLook paint, FilmLook film) {
    }

    private final Map<GlassLook, Optional<Spectrum>> glasses = new ConcurrentHashMap<>();
    private final Map<FilmKey, Optional<PaintFilm>> films = new ConcurrentHashMap<>();

    /** What a sheet of it lets through, at its own thickness. */
    public Optional<Spectrum> glass(GlassLook look) {
        if (glasses.size() > MOST) {
            glasses.clear();
        }
        return glasses.computeIfAbsent(look, ColourShelf::reckoned);
    }

    /** What a solid of a paint lets through. */
    public Optional<PaintFilm> film(PaintLook paint, FilmLook film) {
        if (films.size() > MOST) {
            films.clear();
        }
        return films.computeIfAbsent(new FilmKey(paint, film), ColourShelf::reckoned);
    }

    private static Optional<Spectrum> reckoned(GlassLook look) {
        try {
            SheetLook sheet = look.sheet();
            String name = look.name().isEmpty() ? "glass" : look.name();
            Spectrum measured = sheet.transmittance().isBlank()
                    ? PlausibleSpectrum.of(name, Srgb.ofCodes(look.rgb() >> 16, look.rgb() >> 8 & 0xff, look.rgb() & 0xff))
                    : SpectrumText.read(name, sheet.transmittance());
            return Optional.of(Glass.measured(name, measured, sheet.measuredMm()).atThickness(sheet.thicknessMm()).transmittance());
        } catch (Refusal e) {
            return Optional.empty();
        }
    }

    private static Optional<PaintFilm> reckoned(FilmKey key) {
        try {
            if (!key.film().transmittance().isBlank()) {
                return Optional.of(new PaintFilm("paint", SpectrumText.read("paint", key.film().transmittance()), PaintFilm.USUAL_UM));
            }
            return Optional.of(key.film().stain()
                    ? SilverStain.ofDensity(USUAL_STAIN_DENSITY).film("stain")
                    : PaintFilm.coloured("paint", new Srgb(key.paint().red(), key.paint().green(), key.paint().blue())));
        } catch (Refusal e) {
            return Optional.empty();
        }
    }
}
