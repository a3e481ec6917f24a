package saddlebar.ui.easel;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Painted squares as the screen's own images, the least recently seen let go first. Lives on the screen's thread, within its owner's life. */
final class TileImages {
    private final long mostBytes;
    private final Map<TileKey, ScreenTile> images = new LinkedHashMap<>(64, 0.75f, true);
    private long bytes;

    TileImages(long mostBytes) {
        this.mostBytes = mostBytes;
    }

    Optional<ScreenTile> get(TileKey key) {
        return Optional.ofNullable(images.get(key));
    }

    boolean holds(TileKey key) {
        return images.containsKey(key);
    }

    /** Takes over a picture. */
    void put(TileKey key, ScreenTile picture) {
        ScreenTile old = images.put(key, picture);
        if (old != null) {
            bytes -= old.bytes();
            old.dispose();
        }
        bytes += picture.bytes();
        for (Iterator<ScreenTile> oldest = images.values().iterator(); bytes > mostBytes && images.size() > 1;) {
            ScreenTile gone = oldest.next();
            oldest.remove();
            bytes -= gone.bytes();
            gone.dispose();
        }
    }

    /** The squares of one edition and scale, for showing them stretched until better ones are ready. */
    List<TileKey> of(long edition, double ptPerMm) {
        List<TileKey> keys = new ArrayList<>();
        for (TileKey key : images.keySet()) {
            if (key.edition() == edition && key.ptPerMm() == ptPerMm) {
                keys.add(key);
            }
        }
        return keys;
    }

    void clear() {
        images.values().forEach(ScreenTile::dispose);
        images.clear();
        bytes = 0;
    }
}
