package saddlebar.artwork.pdf;

import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import saddlebar.artwork.drawing.Group;
import saddlebar.artwork.drawing.Item;
import saddlebar.artwork.drawing.Origin;

/** Items as they come, each with the clip it was drawn under; what follows each other under the same clip becomes one group. */
final class Pile {
    private static final Origin CLIP = new Origin("clip", 0);

    private final List<Item> done = new ArrayList<>();
    private final List<Item> clipped = new ArrayList<>();
    private Area clip;

    void add(Item item) {
        flush();
        done.add(item);
    }

    /** @param clipMm not to be changed from now on; the same object as before for the same clip */
    void add(Item item, Area clipMm) {
        if (holds(clipMm, item.boundsMm())) {
            add(item);
            return;
        }
        if (clipMm != clip) {
            flush();
            clip = clipMm;
        }
        clipped.add(item);
    }

    private static boolean holds(Area clipMm, Rectangle2D bounds) {
        return clipMm.isRectangular() && (clipMm.getBounds2D().contains(bounds) || !(bounds.getWidth() >= 0));
    }

    private void flush() {
        if (!clipped.isEmpty()) {
            done.add(Group.of(CLIP, Optional.empty(), false, clipped, new Group.Looks(1, Optional.of(clip), Optional.empty(), Optional.empty())));
            clipped.clear();
        }
        clip = null;
    }

    /** All that lies on it. */
    List<Item> items() {
        flush();
        return done;
    }
}
