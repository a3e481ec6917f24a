package saddlebar.artwork.drawing;

import java.awt.geom.Rectangle2D;

/** Something that is painted. Coordinates of groups and bounds are mm of the page; later items cover earlier ones. */
public sealed interface Item permits Group, Figure, Photo {
    /** All that it can touch, mm, strokes included; empty (width or height below 0) if nothing. Not to be changed. */
    Rectangle2D boundsMm();
}
