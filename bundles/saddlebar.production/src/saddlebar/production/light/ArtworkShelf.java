package saddlebar.production.light;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.CancellationException;

import saddlebar.artwork.Artwork;
import saddlebar.artwork.ArtworkReaders;
import saddlebar.artwork.ReadSettings;
import saddlebar.production.light.WindowSketch.ArtPlace;

/** The artworks of an open commission, each read once and kept until the commission is closed. Safe for several threads. */
public final class ArtworkShelf implements AutoCloseable {
    private record Kept(Artwork artwork, FileTime changed, long bytes) {
    }

    private final ArtworkReaders readers;
    private final Map<ArtPlace, Kept> kept = new HashMap<>();
    private boolean closed;

    public ArtworkShelf(ArtworkReaders readers) {
        this.readers = readers;
    }

    /**
     * The artwork, read now or before.
     *
     * @throws saddlebar.model.problem.Refusal if it cannot be read
     * @throws CancellationException           if the commission was closed meanwhile
     */
    public synchronized Artwork artwork(ArtPlace place) throws IOException {
        requireOpen();
        Path file = place.file();
        FileTime changed = Files.exists(file) ? Files.getLastModifiedTime(file) : FileTime.fromMillis(0);
        long bytes = Files.exists(file) ? Files.size(file) : 0;
        Kept known = kept.get(place);
        if (known != null && known.changed.equals(changed) && known.bytes == bytes) {
            return known.artwork;
        }
        Artwork read = readers.read(file, place.widthMm() > 0 ? ReadSettings.ofWidth(place.widthMm()) : ReadSettings.asDrawn());
        Kept old = kept.put(place, new Kept(read, changed, bytes));
        if (old != null) {
            old.artwork.close();
        }
        return read;
    }

    /** Asked by whoever keeps an artwork for longer than a moment. */
    synchronized void requireOpen() {
        if (closed) {
            throw new CancellationException("the commission was closed");
        }
    }

    @Override
    public synchronized void close() {
        closed = true;
        kept.values().forEach(art -> art.artwork.close());
        kept.clear();
    }
}
