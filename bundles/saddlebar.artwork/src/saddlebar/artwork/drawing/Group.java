package saddlebar.artwork.drawing;

import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Items painted together, as one.
 *
 * @param origin   where it stands in the file
 * @param layerId  id by which it can be chosen, if it can
 * @param hidden   not painted unless chosen
 * @param children in paint order
 * @param opacity  0 to 1, for all together
 * @param clipMm   nothing is painted outside, if present
 * @param mask     nothing is painted where this is dark or clear, if present
 * @param effect   paints the children in its own way, if present
 * @param blend    how all together are laid over what is below
 * @param boundsMm all that it can touch
 */
public record Group(Origin origin, Optional<String> layerId, boolean hidden, List<Item> children, double opacity, Optional<Shape> clipMm,
        Optional<Mask> mask, Optional<Effect> effect, Blend blend, Rectangle2D boundsMm) implements Item {
    public Group {
        Objects.requireNonNull(origin, "origin");
        children = List.copyOf(children);
    }

    /** What makes a group more than a list. */
    public record Looks(double opacity, Optional<Shape> clipMm, Optional<Mask> mask, Optional<Effect> effect, Blend blend) {
        public static final Looks PLAIN = new Looks(1, Optional.empty(), Optional.empty(), Optional.empty());

        /** Laid over as usual. */
        public Looks(double opacity, Optional<Shape> clipMm, Optional<Mask> mask, Optional<Effect> effect) {
            this(opacity, clipMm, mask, effect, Blend.NORMAL);
        }

        /** Only faded. */
        public static Looks faded(double opacity) {
            return new Looks(opacity, Optional.empty(), Optional.empty(), Optional.empty());
        }

        /** The same, laid over in another way. */
        public Looks blended(Blend way) {
            return new Looks(opacity, clipMm, mask, effect, way);
        }
    }

    public static Group plain(Origin origin, List<Item> children) {
        return of(origin, Optional.empty(), false, children, Looks.PLAIN);
    }

    public static Group of(Origin origin, Optional<String> layerId, boolean hidden, List<Item> children, Looks looks) {
        Rectangle2D bounds = looks.effect.map(Effect::boundsMm).orElseGet(() -> union(children));
        if (looks.clipMm.isPresent()) {
            bounds = bounds.createIntersection(looks.clipMm.get().getBounds2D());
        }
        return new Group(origin, layerId, hidden, children, looks.opacity, looks.clipMm, looks.mask, looks.effect, looks.blend, bounds);
    }

    private static Rectangle2D union(List<Item> children) {
        Rectangle2D all = new Rectangle2D.Double(0, 0, -1, -1);
        for (Item child : children) {
            Rectangle2D bounds = child.boundsMm();
            if (bounds.getWidth() >= 0 && bounds.getHeight() >= 0) {
                if (all.getWidth() < 0) {
                    all.setRect(bounds);
                } else {
                    all.add(bounds);
                }
            }
        }
        return all;
    }

    /** Painted straight onto what is below. */
    boolean isPlain() {
        return opacity >= 1 && clipMm.isEmpty() && mask.isEmpty() && effect.isEmpty() && blend.isPlain();
    }

    Looks looks() {
        return new Looks(opacity, clipMm, mask, effect, blend);
    }

    /** This group with all its looks, but with only some things in it, and not hidden; an effect of the whole cannot be kept. */
    private Group around(List<Item> some) {
        return of(origin, layerId, false, some, new Looks(opacity, clipMm, mask, Optional.empty(), blend));
    }

    Group shown() {
        return new Group(origin, layerId, false, children, opacity, clipMm, mask, effect, blend, boundsMm);
    }

    /**
     * The same drawing with nothing in it but one layer, which may stand in several places, and the groups around that, whose opacity, clip
     * and mask go on to count.
     *
     * @throws IllegalArgumentException if there is no such layer
     */
    Group only(String id) {
        return find(this, id).orElseThrow(() -> new IllegalArgumentException("no layer has the id " + id));
    }

    private static Optional<Group> find(Group group, String id) {
        if (group.layerId.filter(id::equals).isPresent()) {
            return Optional.of(group.shown());
        }
        List<Item> found = new ArrayList<>();
        for (Item child : group.children) {
            if (child instanceof Group inner) {
                find(inner, id).ifPresent(found::add);
            }
        }
        return found.isEmpty() ? Optional.empty() : Optional.of(group.around(found));
    }
}
