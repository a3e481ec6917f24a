package saddlebar.ui.colourway;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import saddlebar.colour.Appearance;
import saddlebar.colour.Spectrum;
import saddlebar.production.light.BareColour;
import saddlebar.production.light.ColourShelf;
import saddlebar.production.light.EaselPainter;
import saddlebar.production.light.GlassLook;
import saddlebar.production.light.LightLook;

/**
 * How a glass looks in a light: reckoned on a thread of the background.
 *
 * @param colour  for its swatch
 * @param words   its colour in words
 * @param passes  luminous transmittance 0 to 1, empty if it has no spectrum
 */
record GlassReckoning(BareColour colour, String words, Optional<Double> passes) {

    static GlassReckoning of(GlassLook look, LightLook light, ColourShelf colours) {
        BareColour colour = EaselPainter.bare(look, light, colours);
        Optional<Spectrum> spectrum = colours.passed(look);
        Optional<Appearance> seen = spectrum.map(passed -> Appearance.of(passed, light.behind().light()));
        return new GlassReckoning(colour, seen.map(one -> ColourInWords.of(one.lab())).orElse(""), seen.map(Appearance::transmittance));
    }

    static List<GlassReckoning> all(List<GlassLook> looks, LightLook light, ColourShelf colours) {
        List<GlassReckoning> all = new ArrayList<>();
        looks.forEach(look -> all.add(of(look, light, colours)));
        return all;
    }
}
