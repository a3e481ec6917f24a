package saddlebar.artwork.drawing;

import java.awt.Color;
import java.awt.Paint;
import java.awt.geom.AffineTransform;

/** What an area or a stroke is painted with. */
public sealed interface Tint permits Tint.Flat, Ramp.Linear, Ramp.Radial, Tiles {
    /** One colour for the whole, 0xAARRGGBB; of a ramp or tiles a mean. */
    int meanArgb();

    /** A single colour, 0xAARRGGBB, not premultiplied. */
    record Flat(int argb) implements Tint {
        @Override
        public int meanArgb() {
            return argb;
        }

        Paint paint() {
            return new Color(argb, true);
        }
    }

    /** The same in a drawing that is scaled or moved. */
    static AffineTransform joined(AffineTransform outer, AffineTransform inner) {
        AffineTransform both = new AffineTransform(outer);
        both.concatenate(inner);
        return both;
    }
}
