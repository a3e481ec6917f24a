package saddlebar.production.make;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import saddlebar.artwork.Artwork;
import saddlebar.artwork.ArtworkReaders;
import saddlebar.artwork.ColourArea;
import saddlebar.artwork.LayerChoice;
import saddlebar.artwork.RasterRequest;
import saddlebar.artwork.ReadSettings;
import saddlebar.model.art.DrawnLine;
import saddlebar.model.art.GrayBands;
import saddlebar.model.art.GrayCoding;
import saddlebar.model.file.Hashes;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;
import saddlebar.production.facts.ArtFile;

/** The artworks of one making: each read once, only when something needs it, and let go at the end. Safe for several threads. */
final class OpenArtworks implements AutoCloseable {
    private final ArtworkReaders readers;
    private final Map<ArtFile, Opened> open = new ConcurrentHashMap<>();

    OpenArtworks(ArtworkReaders readers) {
        this.readers = readers;
    }

    /** @throws Refusal if the file is not the one that was brought, or has no such layer */
    List<DrawnLine> lines(ArtFile art, String layer) {
        Opened opened = opened(art);
        return opened.artwork.lines(opened.choice(layer), Artwork.CUT_FLATNESS_MM);
    }

    /** Filled areas of a layer in paint order. */
    List<ColourArea> areas(ArtFile art, String layer) {
        Opened opened = opened(art);
        return opened.artwork.areas(opened.choice(layer));
    }

    /** A layer in gray; the caller closes the bands. */
    GrayBands gray(ArtFile art, String layer, RasterPlace place, GrayCoding coding, Work work) {
        return gray(art, layer, new RasterRequest(place.originXMm(), place.originYMm(), place.widthPx(), place.heightPx(), place.dpi(), coding), work);
    }

    GrayBands gray(ArtFile art, String layer, RasterRequest request, Work work) {
        Opened opened = opened(art);
        return opened.artwork.gray(opened.choice(layer), request, work);
    }

    /** What the reader could not draw as it was meant. */
    List<Problem> warnings(ArtFile art) {
        return opened(art).artwork.warnings();
    }

    /** Height of its page in real mm. */
    double heightMm(ArtFile art) {
        return opened(art).artwork.heightMm();
    }

    private Opened opened(ArtFile art) {
        return open.computeIfAbsent(art, file -> {
            try {
                requireAsBrought(file);
                return new Opened(readers.read(file.path(), ReadSettings.ofWidth(file.widthMm()).onPage(file.page())));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    private record Opened(Artwork artwork) {
        LayerChoice choice(String name) {
            return LayerChoice.of(artwork.chosenLayer(name));
        }
    }

    /** What was made is recorded against the hash of the artwork, so a file that was changed in place must be brought again. */
    static void requireAsBrought(ArtFile art) throws IOException {
        if (!Files.exists(art.path())) {
            throw new Refusal(art.file(), "the artwork is not there any more", "put it back, or bring it again");
        }
        if (!Hashes.sha256(art.path()).equals(art.sha256())) {
            throw new Refusal(art.file(), "the artwork was changed since it was brought", "bring it again, so that pieces keep their numbers");
        }
    }

    @Override
    public void close() {
        open.values().forEach(opened -> opened.artwork.close());
        open.clear();
    }
}
