package saddlebar.production.light;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

import saddlebar.colour.PaintFilm;
import saddlebar.colour.PrintedGlass;
import saddlebar.colour.Spectrum;
import saddlebar.colour.Srgb;
import saddlebar.colour.picture.OverlapColours;

/** The colours of every glass under the layers that are shown, in one light; each glass reckoned once. Safe for several threads. */
final class GlassTones {
    private final List<SceneLayer> layers;
    private final LightLook light;
    private final Optional<ColourShelf> shelf;
    private final Map<GlassLook, OverlapColours> known = new ConcurrentHashMap<>();

    /**
     * @param layers shown ones; what is more than {@value PrintedGlass#MOST_MATTS} is left out of the mixture
     * @param shelf  empty: by the screen's channels alone, whatever the light
     */
    GlassTones(List<SceneLayer> layers, LightLook light, Optional<ColourShelf> shelf) {
        this.layers = layers.subList(0, Math.min(PrintedGlass.MOST_MATTS, layers.size()));
        this.light = light;
        this.shelf = shelf;
    }

    List<SceneLayer> layers() {
        return layers;
    }

    OverlapColours of(GlassLook glass) {
        return known.computeIfAbsent(glass, this::reckoned);
    }

    /** Code values of the bare glass, 0xRRGGBB. */
    int bareRgb(GlassLook glass) {
        return bareRgb(of(glass));
    }

    static int bareRgb(OverlapColours colours) {
        Srgb bare = colours.bare();
        return ScreenLight.rgb(new float[] {(float) bare.red(), (float) bare.green(), (float) bare.blue()});
    }

    private OverlapColours reckoned(GlassLook look) {
        Optional<Spectrum> spectrum = shelf.flatMap(colours -> colours.glass(look));
        List<PaintFilm> films = new ArrayList<>();
        for (SceneLayer layer : layers) {
            shelf.flatMap(colours -> colours.film(layer.paint(), layer.film())).ifPresent(films::add);
        }
        if (spectrum.isPresent() && films.size() == layers.size()) {
            return OverlapColours.of(spectrum.get(), films, light.behind().light(), light.eyeIsUsed());
        }
        double[] bare = {ScreenLight.light((look.rgb() >> 16) / 255.0), ScreenLight.light((look.rgb() >> 8 & 0xff) / 255.0),
                ScreenLight.light((look.rgb() & 0xff) / 255.0)};
        return OverlapColours.ofChannels(bare, layers.stream().map(layer -> new double[] {layer.paint().red(), layer.paint().green(),
                layer.paint().blue()}).toList());
    }
}
